package lapline.judgement.progress;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How many further panels a person will need until their rule is met: a middle, and the shortest
 * interval that holds the number with {@value #COVERAGE}, or more as far as panels are whole. It
 * counts panels alone: what an instructor, an exam or time still ask for comes on top.
 *
 * @param middle as likely more as less; empty where that is further off than is looked
 * @param least 1 to one more than {@value #FURTHEST}
 * @param most empty where it is further off than {@value #FURTHEST}
 * @param held by the model itself, the probability of the interval, 0 to 1
 */
public record PanelsNeeded(OptionalInt middle, int least, OptionalInt most, double held) {
  /** What the interval holds of all cases at the least. */
  public static final double COVERAGE = 0.8;

  /** So many panels have to be there before anything is said. */
  public static final int FEWEST = 3;

  /** A number of panels beyond this says only that it is far. */
  public static final int FURTHEST = 30;

  /** What is left of a sum of probabilities by rounding. */
  private static final double ROUNDING = 1e-9;

  /**
   * @param before what is believed of a learner before their first panel
   * @param panels whether each panel of the person was accepted, first one first
   * @param young how many of the latest are young enough to count for the rule, 0 to all; older
   *     ones still say how the person learns
   * @return empty where the rule is met, or where there are fewer than {@value #FEWEST} panels
   */
  public static Optional<PanelsNeeded> of(
      LearnerBelief before, PanelRule rule, List<Boolean> panels, int young) {
    List<Boolean> counting = counting(panels, young);
    if (panels.size() < FEWEST || rule.isMetBy(counting)) {
      return Optional.empty();
    }
    double[] met = before.after(panels).firstMet(rule, counting, FURTHEST);
    double[] by = new double[FURTHEST + 1];
    for (int k = 1; k <= FURTHEST; k++) {
      by[k] = by[k - 1] + met[k - 1];
    }
    return Optional.of(by[FURTHEST] < COVERAGE - ROUNDING ? open(by) : closed(by));
  }

  private static List<Boolean> counting(List<Boolean> panels, int young) {
    if (young < 0 || young > panels.size()) {
      throw new IllegalArgumentException(
          "young is " + young + "; it must be 0 to as many as panels, " + panels.size());
    }
    List<Boolean> counting = new ArrayList<>(panels);
    counting.subList(0, panels.size() - young).replaceAll(tooOld -> false);
    return counting;
  }

  /** The shortest stretch that holds enough; of equally short ones the one that holds most. */
  private static PanelsNeeded closed(double[] by) {
    int least = 1;
    int most = FURTHEST;
    for (int from = 1; from <= FURTHEST; from++) {
      int to = reached(by, by[from - 1] + COVERAGE - ROUNDING).orElse(FURTHEST + from);
      boolean shorter = to - from < most - least;
      boolean fuller = to - from == most - least && held(by, from, to) > held(by, least, most);
      if (shorter || fuller) {
        least = from;
        most = to;
      }
    }
    return new PanelsNeeded(reached(by, 0.5), least, OptionalInt.of(most), held(by, least, most));
  }

  /** Too far off for two ends: only how many it takes at the least. */
  private static PanelsNeeded open(double[] by) {
    int least = reached(by, 1 - COVERAGE + ROUNDING).orElse(FURTHEST + 1);
    return new PanelsNeeded(reached(by, 0.5), least, OptionalInt.empty(), 1 - by[least - 1]);
  }

  private static double held(double[] by, int from, int to) {
    return by[to] - by[from - 1];
  }

  /** With which panel the chance of having met the rule comes to so much. */
  private static OptionalInt reached(double[] by, double share) {
    for (int k = 1; k < by.length; k++) {
      if (by[k] >= share) {
        return OptionalInt.of(k);
      }
    }
    return OptionalInt.empty();
  }

  /** Whether there is an interval with two ends. */
  public boolean hasEnds() {
    return most.isPresent();
  }
}
