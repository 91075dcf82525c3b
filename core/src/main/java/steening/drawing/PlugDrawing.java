package steening.drawing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import steening.bore.Reach;
import steening.quantity.Length;

/** The plugs of a hole that is closed: as wide as the hole, or as the inside of a casing that stays. */
final class PlugDrawing {
  private final Svg svg;
  private final Frame frame;
  private final AsBuilt well;

  PlugDrawing(Svg svg, Frame frame, AsBuilt well) {
    this.svg = svg;
    this.frame = frame;
    this.well = well;
  }

  /** Each material once. */
  void patterns() {
    Map<String, PlugReach> materials = new LinkedHashMap<>();
    for (PlugReach plug : well.plugs()) materials.putIfAbsent(plug.patternId(), plug);
    materials.forEach((id, plug) ->
        plug.tile().define(svg, frame.style().prefix() + WellColumn.BUILT + id, Ink.INK, frame.middle(),
            frame.surface()));
  }

  void draw() {
    for (int i = 0; i < well.plugs().size(); i++) {
      PlugReach plug = well.plugs().get(i);
      List<Reach> reaches = reaches(plug);
      svg.open("g").with("id", frame.style().prefix() + "plug-" + (i + 1));
      WellColumn.fill(svg, frame, reaches, WellColumn.BUILT + plug.patternId());
      double y = frame.y(plug.top());
      double half = frame.half(reaches.get(0));
      svg.line(Path.at(frame.middle() - half, y).across(frame.middle() + half), Ink.INK, WellColumn.TOP).close();
      svg.close();
    }
  }

  private List<Reach> reaches(PlugReach plug) {
    if (well.pipe().isEmpty()) return well.holeBetween(plug.top(), plug.bottom());
    Length outside = well.pipe().reaches().get(0).diameter();
    Length inside = well.string().inside().orElse(outside).min(outside);
    return List.of(new Reach(plug.top(), plug.bottom(), inside));
  }
}
