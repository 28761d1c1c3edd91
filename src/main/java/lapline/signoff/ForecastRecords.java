package lapline.signoff;

import java.util.Collection;
import java.util.List;
import java.util.UUID;

/** What is kept of forecasts, and the panels they are made from. */
public interface ForecastRecords {

  /**
   * A scored panel, as far as forecasts ask.
   *
   * @param counts good by its numbers, and no instructor sent it back
   */
  record Done(UUID attempt, UUID person, String task, boolean counts) {}

  /** All scored panels of these people towards a skill, each person's first one first. */
  List<Done> panels(UUID workshop, String skill, Collection<UUID> people);

  /** Who has come on towards a skill most lately. */
  List<UUID> learners(UUID workshop, String skill, int most);

  /**
   * Every forecast of a person's skill of which it is not known what came of it, first one first.
   */
  List<SkillForecast> open(UUID person, String skill);

  /** The forecast in force for each skill of a person that has one. */
  List<SkillForecast> inForce(UUID person);

  void keep(SkillForecast forecast);

  void remove(SkillForecast forecast);

  /** What came of all forecasts with two ends. */
  ForecastRecord record(UUID workshop);
}
