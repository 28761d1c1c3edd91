package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import lapline.Samples;
import lapline.content.Json;
import lapline.practice.PanelScore.Result;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** What holds for any sheet at all, filled in by no painter: every task of the course. */
class AnyPanelProperties {
  private static final PracticeTasks COURSE = WrittenPanel.COURSE;

  @Test
  void any_possible_readings_are_scored_without_a_stumble() {
    Samples.each(
        150,
        chance -> {
          PracticeTask task = COURSE.all().get(chance.nextInt(COURSE.all().size()));
          PanelScore score = PanelScorer.score(task, anything(task, chance));
          assertThat(score.practiceScore()).as(task.id()).isBetween(0.0, 100.0);
          assertThat(score.accepted()).isEqualTo(score.standing().isEmpty() && judged(score));
          assertThat(score.results()).hasSameSizeAs(task.criteria()).allMatch(this::isSound);
          assertThat(score.findings()).allMatch(f -> f.support() >= 0 && f.support() <= 1);
        });
  }

  @Test
  void a_score_is_kept_as_json_and_read_back_the_same() {
    Samples.each(
        25,
        chance -> {
          PracticeTask task = COURSE.all().get(chance.nextInt(COURSE.all().size()));
          PanelScore score = PanelScorer.score(task, anything(task, chance));
          assertThat(Json.read(Json.write(score), PanelScore.class)).isEqualTo(score);
        });
  }

  private static boolean judged(PanelScore score) {
    return score.results().stream().anyMatch(Result::judged);
  }

  private boolean isSound(Result r) {
    return r.conformance() >= 0
        && r.conformance() <= 1
        && r.points() >= 0
        && r.points() <= 1
        && Double.isFinite(r.value())
        && Double.isFinite(r.standardUncertainty())
        && (r.judged() || r.advice() == null);
  }

  /** Some cells of the sheet, each with a value that is possible by itself. */
  private static PanelEntry anything(PracticeTask task, RandomGenerator chance) {
    Map<String, String> typed = new TreeMap<>();
    double filled = chance.nextDouble();
    for (Cell cell : PanelCells.of(task, COURSE.measurands())) {
      if (chance.nextDouble() < filled) {
        typed.put(cell.key(), value(COURSE.measurands().require(cell.measurand()), chance));
      }
    }
    return PanelReader.read(task, COURSE.measurands(), typed, UnitSystem.METRIC).entry();
  }

  /** Often an end of what is possible, since that is where things break. */
  private static String value(Measurand m, RandomGenerator chance) {
    if (m.dimension() == Dimension.CHOICE) {
      return m.options().get(chance.nextInt(m.options().size())).label();
    }
    if (m.dimension() == Dimension.CLOCK) {
      return "%02d:%02d".formatted(chance.nextInt(24), chance.nextInt(60));
    }
    double share = Samples.oneOf(chance, 0.0, 1.0, chance.nextDouble(), chance.nextDouble());
    return written(m, m.possibleLeast() + share * (m.possibleMost() - m.possibleLeast()));
  }

  private static String written(Measurand m, double si) {
    return switch (m.dimension()) {
      case COUNT, GRIT -> String.valueOf(Math.round(si));
      case DURATION -> Math.round(si * 10) / 10.0 + " s";
      case SHARE -> 100 * si + " %";
      case PRESSURE -> si / 1000 + " kPa";
      case FILM -> 1e6 * si + " um";
      case LENGTH -> 1e3 * si + " mm";
      case VOLUME -> 1e6 * si + " mL";
      default -> String.valueOf(si);
    };
  }
}
