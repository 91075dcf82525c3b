package steening.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.eclipsesource.json.JsonArray;
import com.eclipsesource.json.JsonObject;
import org.junit.jupiter.api.Test;
import steening.job.JobInSteps;
import steening.language.Reader;
import steening.stage.EverydayWell;

class JobJsonTest {
  /** What a page shows beside the work, a program is told too; of work that is done, neither. */
  @Test
  void cautionsAreThoseOfTheWorkAhead() {
    assertThat(cautions(EverydayWell.planned(), "drilling").toString()).contains("Power lines: keep mast");
    assertThat(cautions(EverydayWell.planned(), "plan")).isEmpty();
    assertThat(cautions(EverydayWell.cased(), "drilling")).isEmpty();
  }

  private static JsonArray cautions(JobInSteps steps, String stage) {
    JsonObject well = JobJson.of(steps.job(), Reader.US_ENGLISH).get("well").asObject();
    return well.get("stages").asObject().get(stage).asObject().get("cautions").asArray();
  }
}
