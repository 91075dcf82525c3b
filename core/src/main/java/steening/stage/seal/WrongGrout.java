package steening.stage.seal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.journal.Moment;
import steening.language.Phrase;
import steening.quantity.Density;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.well.Fill;
import steening.well.GroundLog;
import steening.well.Material;
import steening.well.MudSeen;
import steening.well.Stratum;
import steening.well.Well;

/** Grout that does not suit the hole: mud as heavy as it, rock against bentonite. */
final class WrongGrout {
  private static final List<Material> ROCK =
      List.of(Material.LIMESTONE, Material.SANDSTONE, Material.SHALE, Material.GRANITE);

  private WrongGrout() {}

  static List<Finding> of(Well well, Sealing sealing) {
    List<Finding> findings = new ArrayList<>();
    heavyMud(well, sealing).ifPresent(findings::add);
    if (sealing.recipe().material() != DryGrout.BENTONITE) return findings;
    rock(well, sealing).ifPresent(findings::add);
    return findings;
  }

  private static Optional<Finding> heavyMud(Well well, Sealing sealing) {
    Optional<Outcome> mix = Outcome.ifReckonable(() -> GroutMix.of(sealing.recipe()));
    Optional<MudSeen> mud = well.get(MudSeen.PART).filter(m -> isBefore(m.at(), sealing.grout()));
    if (mix.isEmpty() || mud.isEmpty()) return Optional.empty();
    Density grout = (Density) mix.get().quantity(GroutMix.DENSITY.name());
    if (GroutDilution.isLight(mud.get().weight(), grout, MixFindings.BALANCE)) return Optional.empty();
    Figure weighs = new Figure(mud.get().weight(), Scale.DENSITY);
    return Optional.of(Finding.of("seal.heavy-mud", Weight.LOOK, SealStage.NAME, Phrase.of(
            "The mud weighs {0}, the grout {1}.", "El lodo pesa {0}, la lechada {1}.",
            weighs, mix.get().figure(GroutMix.DENSITY.name())))
        .comparing(weighs, mix.get().figure(GroutMix.DENSITY.name()))
        .because(Phrase.of(
            "Grout that is not heavier does not push the mud out; it channels.",
            "La lechada que no pesa más no desplaza el lodo; se canaliza."))
        .so(Phrase.of(
            "Thin the mud below the weight of the grout first (COMAR 26.04.04.20), and weigh it again. Not while it"
                + " holds back a flow.",
            "Primero adelgace el lodo hasta que pese menos que la lechada (COMAR 26.04.04.20) y péselo otra vez. No"
                + " mientras contenga un flujo."))
        .shownBy(mix.get()).from(List.of(mud.get().entry())));
  }

  private static boolean isBefore(Moment at, Fill grout) {
    return grout.pours().isEmpty() || !at.isAfter(grout.pours().get(0).at());
  }

  private static Optional<Finding> rock(Well well, Sealing sealing) {
    List<Stratum> rock = well.get(GroundLog.PART).between(sealing.top(), sealing.bottom()).stream()
        .filter(s -> ROCK.contains(s.material())).toList();
    if (rock.isEmpty()) return Optional.empty();
    Stratum first = rock.get(0);
    return Optional.of(Finding.of("seal.bentonite-in-rock", Weight.NOTE, SealStage.NAME, Phrase.of(
            "Bentonite grout against {0} at {1}.", "Lechada de bentonita contra {0} a {1}.",
            first.material().label(), new Figure(first.from(), Scale.DEPTH)))
        .so(Phrase.of(
            "Some rules keep bentonite to loose ground (Minn. 4725.3050); see yours before it is pumped.",
            "Algunas normas limitan la bentonita a material suelto (Minn. 4725.3050); vea la suya antes de bombear."))
        .from(List.of(first.entry())));
  }
}
