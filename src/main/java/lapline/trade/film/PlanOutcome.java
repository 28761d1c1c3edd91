package lapline.trade.film;

import java.util.ArrayList;
import java.util.List;

/**
 * What an acceptance plan says of a set of readings, with each of its rules and the number it was
 * decided on; no sentence, so that any page may word it.
 *
 * @param checks in the order of the standard, broken or kept
 */
public record PlanOutcome(Plan plan, Result result, List<Check> checks) {

  public PlanOutcome {
    checks = List.copyOf(checks);
  }

  /** The published plan that was followed. */
  public enum Plan {
    SSPC_PA_2(ScopeNote.METAL_UNDER_MAGNETIC_OR_EDDY_CURRENT_GAUGE, ScopeNote.MEANS_NOT_READINGS),
    ISO_19840(ScopeNote.WRITTEN_FOR_BLASTED_STEEL, ScopeNote.NOMINAL_FROM_40_MICROMETRES);

    private final List<ScopeNote> scope;

    Plan(ScopeNote... scope) {
      this.scope = List.of(scope);
    }

    /** What the plan was written for, to be shown beside its result. */
    public List<ScopeNote> scope() {
      return scope;
    }
  }

  /** A bound of what a plan covers. */
  public enum ScopeNote {
    METAL_UNDER_MAGNETIC_OR_EDDY_CURRENT_GAUGE,
    MEANS_NOT_READINGS,
    WRITTEN_FOR_BLASTED_STEEL,
    NOMINAL_FROM_40_MICROMETRES
  }

  /** How it came out. */
  public enum Result {
    ACCEPTED,
    REJECTED,
    /** Fewer readings than the plan's sampling asks for: nothing may be claimed. */
    TOO_FEW_READINGS,
    /** The plan does not cover such a film. */
    OUT_OF_SCOPE,
    /** The gauge did not agree with its standards: its readings say nothing yet. */
    GAUGE_IN_DOUBT
  }

  /** A rule of a plan. */
  public enum Rule {
    GAUGE_VERIFIED,
    NOMINAL_IN_SCOPE,
    AREAS_ENOUGH,
    SPOTS_ENOUGH,
    SPOT_READINGS_ENOUGH,
    READINGS_ENOUGH,
    FEW_REPEATED,
    SPOT_NOT_BELOW,
    SPOT_NOT_ABOVE,
    AREA_NOT_BELOW,
    AREA_NOT_ABOVE,
    MEAN_NOT_BELOW_NOMINAL,
    READING_NOT_BELOW,
    FEW_BELOW_NOMINAL,
    READING_NOT_ABOVE
  }

  /**
   * One rule and the value that comes nearest to breaking it, or breaks it furthest.
   *
   * @param found metres, a count or a share, as the rule has it
   * @param limit in the same unit
   * @param area number of the area it was found in, from 1; 0 where it concerns all
   * @param spot number of the spot or reading within it, from 1; 0 where it concerns all
   */
  public record Check(Rule rule, boolean kept, double found, double limit, int area, int spot) {

    static Check ofAll(Rule rule, boolean kept, double found, double limit) {
      return new Check(rule, kept, found, limit, 0, 0);
    }
  }

  /**
   * The same outcome with the gauge's verification before and after as its first rule; both plans
   * ask for one. Without it, nothing is accepted or rejected.
   */
  public PlanOutcome readBy(GaugeVerification before, GaugeVerification after) {
    boolean sound = before.until(after) == GaugeVerification.Standing.SOUND;
    double worst = Math.max(before.worst(), after.worst());
    List<Check> all = new ArrayList<>();
    all.add(Check.ofAll(Rule.GAUGE_VERIFIED, sound, worst, 1));
    all.addAll(checks);
    return new PlanOutcome(plan, sound ? result : Result.GAUGE_IN_DOUBT, all);
  }

  /** Whether all rules were kept and enough was read, within the plan's scope. */
  public boolean accepted() {
    return result == Result.ACCEPTED;
  }

  /** The rules that were broken. */
  public List<Check> broken() {
    return checks.stream().filter(c -> !c.kept()).toList();
  }
}
