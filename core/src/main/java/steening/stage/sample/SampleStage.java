package steening.stage.sample;

import java.util.List;
import java.util.Optional;
import steening.field.Kind;
import steening.finding.Finding;
import steening.journal.Body;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.reckoning.Reckoning;
import steening.stage.Load;
import steening.stage.Progress;
import steening.stage.Sheet;
import steening.stage.Stage;
import steening.well.Plan;
import steening.well.Residual;
import steening.well.Well;

/** The water sample, from the tap to the laboratory's answer. */
public final class SampleStage implements Stage {
  static final String NAME = "sample";

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Phrase title() {
    return Phrase.of("Water sample", "Muestra de agua");
  }

  @Override
  public List<Kind> kinds() {
    return List.of(SampleEntries.SAMPLE, SampleEntries.RECEIVED, SampleEntries.RESULT);
  }

  @Override
  public List<Reckoning> reckonings() {
    return List.of(Hardness.RECKONING, LangelierIndex.RECKONING, ShareToRemove.RECKONING);
  }

  @Override
  public Well fold(Well well, Entry entry) {
    return well.with(Samples.PART, fold(well.get(Samples.PART), well.get(Residual.PART), entry));
  }

  private static Samples fold(Samples samples, Residual residual, Entry entry) {
    Body body = entry.body();
    if (entry.kind().equals(SampleEntries.SAMPLE.name())) {
      return samples.with(new Sample(
          SampleEntries.BOTTLE.text(body).orElse(""),
          SampleEntries.LABORATORY.text(body),
          SampleEntries.TEMPERATURE.in(body),
          entry.happenedAt(),
          residual.standing(),
          Optional.empty(),
          Optional.empty(),
          entry.id()));
    }
    Optional<String> bottle = SampleEntries.WHICH.text(body);
    if (entry.kind().equals(SampleEntries.RECEIVED.name())) {
      Sample.Receipt receipt = new Sample.Receipt(entry.happenedAt(), entry.id());
      return samples.changing(bottle, entry.id(), s -> s.with(receipt));
    }
    boolean present = SampleEntries.COLIFORM.in(body).equals(Optional.of(SampleEntries.PRESENT));
    Sample.Result result =
        new Sample.Result(present, SampleEntries.NITRATE.in(body), body, entry.happenedAt(), entry.id());
    return samples.changing(bottle, entry.id(), s -> s.with(result));
  }

  @Override
  public List<Finding> findings(Well well) {
    return SampleFindings.of(well.get(Samples.PART), well.get(Residual.PART));
  }

  @Override
  public Progress progress(Well well) {
    Optional<Sample> last = well.get(Samples.PART).last();
    if (last.isEmpty()) return Progress.NOT_BEGUN;
    boolean clean = last.get().result().isPresent() && !last.get().result().get().coliformPresent();
    return clean ? Progress.DONE : Progress.UNDER_WAY;
  }

  @Override
  public String nextKind(Well well) {
    Optional<Sample> last = well.get(Samples.PART).last();
    if (last.isEmpty() || last.get().result().isPresent()) return SampleEntries.SAMPLE.name();
    return last.get().received().isPresent() ? SampleEntries.RESULT.name() : SampleEntries.RECEIVED.name();
  }

  @Override
  public Sheet sheet(Well well) {
    return SampleSheet.of(well.get(Samples.PART));
  }

  @Override
  public List<Load> loads(Well well) {
    if (!well.get(Plan.PART).isMade()) return List.of();
    return List.of(
        new Load(Phrase.of("sterile sample bottle", "frasco estéril"), Phrase.same("1"), Optional.empty()),
        new Load(Phrase.of("box of wet ice for it", "caja con hielo"), Phrase.same("1"), Optional.empty()),
        new Load(Phrase.of("chlorine test kit", "equipo para medir cloro"), Phrase.same("1"), Optional.empty()));
  }
}
