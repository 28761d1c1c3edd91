package lapline.signoff;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import lapline.judgement.progress.PanelsNeeded;

/**
 * How many more panels were foretold after one panel, and what came of it.
 *
 * @param attempt the panel after which it was in force
 * @param tried how many panels of the skill had been scored then
 * @param state whether it came true, as far as that is known
 * @param needed the true number; null while it is not known
 */
public record SkillForecast(
    UUID attempt,
    UUID workshop,
    UUID person,
    String skill,
    String ruleVersion,
    int tried,
    Instant made,
    PanelsNeeded panels,
    State state,
    Integer needed) {

  /** What is known of a forecast. */
  public enum State {
    OPEN,
    /** The true number lay in its interval. */
    HELD,
    /** It did not, or has not come although the interval has passed. */
    MISSED
  }

  /** Without two ends it says too little to be held against what came. */
  boolean counts() {
    return panels.hasEnds();
  }

  /**
   * What is known after more panels, none of which was enough. One that has passed its end is a
   * miss at once: if it waited until the rule is met, those who never meet it would not be counted.
   *
   * @param triedNow how many panels are scored by now
   */
  SkillForecast notYet(int triedNow) {
    return counts() && triedNow - tried >= panels.most().getAsInt() ? as(State.MISSED, null) : this;
  }

  /**
   * What is known once the rule is met; empty where it says too little to be counted.
   *
   * @param triedNow with which panel it is met
   */
  Optional<SkillForecast> met(int triedNow) {
    if (!counts()) {
      return Optional.empty();
    }
    int took = triedNow - tried;
    boolean held = took >= panels.least() && took <= panels.most().getAsInt();
    return Optional.of(as(held ? State.HELD : State.MISSED, took));
  }

  private SkillForecast as(State known, Integer took) {
    return new SkillForecast(
        attempt, workshop, person, skill, ruleVersion, tried, made, panels, known, took);
  }

  /** Whether it is too far off for an upper end. */
  public boolean isFar() {
    return !panels.hasEnds();
  }

  public int least() {
    return panels.least();
  }

  /** The most panels as a number for pages; null where there is no upper end. */
  public Integer most() {
    return boxed(panels.most());
  }

  /** The middle as a number for pages; null where it is too far off. */
  public Integer middle() {
    return boxed(panels.middle());
  }

  private static Integer boxed(OptionalInt number) {
    return number.isPresent() ? number.getAsInt() : null;
  }
}
