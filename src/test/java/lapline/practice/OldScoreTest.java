package lapline.practice;

import static lapline.practice.WrittenPanel.criterion;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lapline.content.Json;
import lapline.practice.PanelScore.Result;
import org.junit.jupiter.api.Test;

/** A score that an earlier version kept is read as what it said then. */
class OldScoreTest {
  private final PanelScore score =
      WrittenPanel.against(
              criterion(
                  "it",
                  "film-build",
                  "50 to 65 um",
                  "judged: mean, critical: yes, weight: 1, fade: 6 um"))
          .putAtPlaces("film-before", 0, 0, 0)
          .putAtPlaces("film-after", 57, 63, 60)
          .score();

  @Test
  void without_degrees_of_freedom_the_uncertainty_is_taken_as_known() {
    String now = Json.write(score);
    String then = now.replaceAll("\"degreesOfFreedom\":[^,}]*,", "");
    assertThat(then).isNotEqualTo(now).doesNotContain("degreesOfFreedom");

    Result result = Json.read(then, PanelScore.class).results().get(0);
    assertThat(result.estimate().expandedUncertainty() / result.standardUncertainty())
        .as("the coverage factor that was shown then")
        .isCloseTo(2, within(1e-9));
    assertThat(result.instances()).allSatisfy(i -> assertThat(i.degreesOfFreedom()).isNull());
    Result asJudged = score.results().get(0);
    assertThat(result.value()).isEqualTo(asJudged.value());
    assertThat(result.verdict()).isEqualTo(asJudged.verdict());
    assertThat(asJudged.estimate().expandedUncertainty())
        .isGreaterThan(2.2 * asJudged.standardUncertainty());
  }

  @Test
  void what_is_kept_now_comes_back_whole() {
    assertThat(Json.read(Json.write(score), PanelScore.class)).isEqualTo(score);
  }
}
