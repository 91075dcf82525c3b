package steening.office.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import steening.field.Field;
import steening.field.Kind;
import steening.field.Reading;
import steening.finding.Finding;
import steening.job.Job;
import steening.job.Stages;
import steening.journal.Codec;
import steening.journal.Entry;
import steening.journal.Journal;
import steening.journal.JournalFile;
import steening.language.Language;
import steening.language.Phrase;
import steening.language.Reader;
import steening.language.UnitSystem;

/** The slips of {@link Mistake}: each is asked about in the form, or found with both numbers, or both. */
class EntryMistakesTest {
  static final List<Mistake> ASKED = Mistake.ALL.stream().filter(Mistake::isAsked).toList();
  static final List<Mistake> FOUND = Mistake.ALL.stream().filter(Mistake::isFound).toList();
  private static final List<Entry> EVERYDAY = DemoFirm.well("everyday-well");

  @Test
  void withoutASlipNothingStandsOutButTheSlowMud() {
    assertThat(findings(EVERYDAY)).extracting(Finding::code).containsExactly("drilling.up-hole-velocity");
  }

  @Test
  void noSlipGoesUnnoticed() {
    assertThat(Mistake.ALL).allMatch(mistake -> mistake.isAsked() || mistake.isFound());
  }

  @ParameterizedTest
  @FieldSource("ASKED")
  void theFormOffersWhatWasMeant(Mistake mistake) {
    Kind declared = Stages.kind(mistake.kind()).orElseThrow();
    Field field = declared.field(mistake.field()).orElseThrow();
    Reading reading = declared.read(Map.of(mistake.field(), mistake.typed()), Reader.US_ENGLISH).get(field);
    assertThat(reading).isInstanceOf(Reading.Asked.class);
    assertThat(((Reading.Asked) reading).meanings()).containsAll(mistake.offers());
  }

  @ParameterizedTest
  @FieldSource("FOUND")
  void asAJournalFileItIsFoundWithItsFigures(Mistake mistake) {
    StringBuilder file = new StringBuilder();
    for (Entry entry : mistake.in(EVERYDAY)) file.append(Codec.write(entry)).append('\n');
    JournalFile read = JournalFile.read(file.toString(), Stages::faults);
    assertThat(read.isSound()).isTrue();
    Finding finding = found(mistake, findings(read.entries()));
    assertThat(said(finding, Reader.US_ENGLISH)).contains(mistake.figures());
    assertThat(said(finding, new Reader(Language.SPANISH, UnitSystem.METRIC)))
        .isNotEqualTo(said(finding, Reader.US_ENGLISH));
  }

  private static Finding found(Mistake mistake, List<Finding> findings) {
    return findings.stream().filter(f -> f.code().equals(mistake.finding())).findFirst()
        .orElseThrow(() -> new AssertionError(mistake.finding() + " is not among " + findings));
  }

  private static String said(Finding finding, Reader reader) {
    StringBuilder said = new StringBuilder(finding.text().shownTo(reader));
    for (Phrase more : List.of(finding.cause(), finding.next()).stream().flatMap(p -> p.stream()).toList()) {
      said.append(' ').append(more.shownTo(reader));
    }
    return said.toString();
  }

  private static List<Finding> findings(List<Entry> entries) {
    return Job.of(entries.get(0).well(), Journal.of(entries)).findings();
  }
}
