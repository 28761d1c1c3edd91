package lapline.practice;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lapline.practice.quantity.PanelQuantities;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Verdict;
import lapline.trade.stroke.StrokeFilm;

/**
 * What the numbers of one panel say: a verdict on each criterion, whether the panel counts for
 * sign-off, a practice score that moves smoothly, and the likely causes. Rubric and defect marks
 * are not part of it.
 *
 * @param practiceScore 0 to 100, in whole points rounded down
 * @param accepted every critical criterion is met, and nothing required was left unread
 * @param standing the criteria that keep it from being accepted
 * @param film the dry film as a field; null where the task measures none
 * @param stroke the film as the findings have it, to be sprayed again with one thing changed; null
 *     where it was not read, or by an earlier version
 * @param scorer version of the scoring rules
 */
public record PanelScore(
    double practiceScore,
    boolean accepted,
    List<String> standing,
    List<Result> results,
    List<Finding> findings,
    FilmField film,
    StrokeFilm stroke,
    String scorer) {

  /**
   * One criterion's answer.
   *
   * @param criterion as it was applied, with any override of its target
   * @param judged false where something was not measured; then only {@code missing} says more
   * @param conformance probability that the true value lies in the target
   * @param value best value in SI, with its standard uncertainty
   * @param degreesOfFreedom of that uncertainty; null where it is taken as known, and of a panel
   *     that was judged before they were kept
   * @param points 0 to 1, what it gave of its weight in the practice score
   * @param instances the separate values, where there are several
   * @param missing keys of the {@link Cell}s that were wanted and not given, without place or coat
   *     where nothing was read at all; empty where the criterion does not apply to this panel
   * @param advice what would settle a doubtful verdict, or to read again what strays where the
   *     verdict hangs on it; null otherwise
   */
  public record Result(
      Criterion criterion,
      boolean judged,
      Verdict verdict,
      double conformance,
      double value,
      double standardUncertainty,
      Double degreesOfFreedom,
      double points,
      List<Instance> instances,
      Working working,
      List<String> missing,
      Phrase advice) {

    /** The advice where the verdict would be better without readings that stray. */
    static final String HANGS_ON_STRAYS = "score.advice.stray";

    /** Whether it would be better without the readings that fit nothing around them. */
    public boolean hangsOnStrays() {
      return advice != null && HANGS_ON_STRAYS.equals(advice.key());
    }

    /** The same with this advice. */
    Result advised(Phrase otherAdvice) {
      return new Result(
          criterion,
          judged,
          verdict,
          conformance,
          value,
          standardUncertainty,
          degreesOfFreedom,
          points,
          instances,
          working,
          missing,
          otherAdvice);
    }

    /** Whether the panel is held against it at all. */
    public boolean applies() {
      return judged || !missing.isEmpty();
    }

    public TargetRange target() {
      return criterion.target();
    }

    /** Whether the ends of its interval stand with the film, since they lie unevenly about it. */
    public boolean shareOfArea() {
      return criterion.quantity().equals(PanelQuantities.FILM_SHARE);
    }

    /** Best value in SI with all that is known of its uncertainty. */
    public Estimate estimate() {
      return Estimate.of(value, standardUncertainty, degreesOfFreedom);
    }

    /**
     * Four standard uncertainties over the width of the target: 1 over the measurement capability
     * index of JCGM 106:2012, 7.6.3. Empty where nothing was judged or the target has one limit.
     */
    public Optional<Double> uncertaintyShare() {
      double width = target().most() - target().least();
      return judged && Double.isFinite(width) && width > 0
          ? Optional.of(4 * standardUncertainty / width)
          : Optional.empty();
    }
  }

  /** One value among several: {@code where} names it, such as coat 2, pass 3 or place 7. */
  public record Instance(
      Cell where,
      double value,
      double standardUncertainty,
      Double degreesOfFreedom,
      double conformance) {

    static Instance of(Cell where, Estimate estimate, double conformance) {
      return new Instance(
          where,
          estimate.value(),
          estimate.standardUncertainty(),
          estimate.keptDegreesOfFreedom(),
          conformance);
    }

    public Estimate estimate() {
      return Estimate.of(value, standardUncertainty, degreesOfFreedom);
    }
  }

  /** How a number came about: the formula, where it is published, and what went in. */
  public record Working(String formula, String source, List<Input> inputs) {}

  public record Input(
      String name,
      double value,
      double standardUncertainty,
      Double degreesOfFreedom,
      Dimension dimension) {

    public static Input of(String name, Estimate estimate, Dimension dimension) {
      return new Input(
          name,
          estimate.value(),
          estimate.standardUncertainty(),
          estimate.keptDegreesOfFreedom(),
          dimension);
    }

    public Estimate estimate() {
      return Estimate.of(value, standardUncertainty, degreesOfFreedom);
    }
  }

  /**
   * A likely cause read from the numbers, or a doubt that they leave.
   *
   * @param id stable key, for counting
   * @param support 0 to 1, how much of the evidence goes to it among the rivals
   * @param change the one thing to change next
   * @param estimate how large the fault is; null where the cause has no size, or was read by an
   *     earlier version
   * @param nextPlaces where further readings would tell rivals apart; may be empty
   * @param off how far it put the panel out, 0 or more: film up or down, or outside a target; null
   *     where that has no size, or was read by an earlier version
   */
  public record Finding(
      String id,
      double support,
      Phrase cause,
      List<Phrase> evidence,
      List<Rival> rivals,
      Phrase change,
      Size estimate,
      List<NextPlace> nextPlaces,
      Off off) {
    public static final String DOUBT = ".doubt";
    public static final String BLIND = ".blind";

    /** The doubt that the film fits no pattern that is known here. */
    public static final String NO_PATTERN = "no-pattern" + DOUBT;

    /** The doubt that one or more readings fit nothing around them. */
    public static final String STRAY = "stray" + DOUBT;

    /** Begins the keys of what each reading that strays should have been. */
    public static final String STRAY_EVIDENCE = "cause.stray.evidence";

    /** Begins the keys of the sentences that a cause cannot be told from its rivals. */
    public static final String UNDECIDED = "cause.undecided";

    public Finding(
        String id,
        double support,
        Phrase cause,
        List<Phrase> evidence,
        List<Rival> rivals,
        Phrase change,
        Size estimate,
        List<NextPlace> nextPlaces) {
      this(id, support, cause, evidence, rivals, change, estimate, nextPlaces, null);
    }

    /** The same with how far it put the panel out. */
    public Finding puttingOut(Off by) {
      return new Finding(id, support, cause, evidence, rivals, change, estimate, nextPlaces, by);
    }

    /** Whether nothing is surely wrong, and {@code change} only settles the doubt. */
    public boolean doubtful() {
      return id.endsWith(DOUBT) || blind();
    }

    /** Whether the numbers cannot tell it from a rival, so that this is to be settled first. */
    public boolean undecided() {
      return evidence.stream().anyMatch(e -> e.key().startsWith(UNDECIDED));
    }

    /** Whether something is to be changed for it. */
    public boolean decided() {
      return !doubtful() && !undecided();
    }

    /** Whether it says that the readings cannot show what they are asked about. */
    public boolean blind() {
      return id.endsWith(BLIND);
    }

    /** Whether it says that no stroke explains the film, so that the panel is to be looked at. */
    public boolean fitsNoPattern() {
      return id.equals(NO_PATTERN);
    }

    /** Whether it says that a reading fits nothing around it, and is to be read again. */
    public boolean strays() {
      return id.equals(STRAY);
    }

    /** The same with one more piece of evidence. */
    Finding with(Phrase more) {
      List<Phrase> all = Stream.concat(evidence.stream(), Stream.of(more)).toList();
      return new Finding(id, support, cause, all, rivals, change, estimate, nextPlaces, off);
    }

    /** The same without the evidence whose key begins like this. */
    public Finding without(String key) {
      List<Phrase> others = evidence.stream().filter(e -> !e.key().startsWith(key)).toList();
      return new Finding(id, support, cause, others, rivals, change, estimate, nextPlaces);
    }

    /** Whether it is about this criterion: a cause in the task's own words, or its doubt. */
    public boolean isAbout(Result result) {
      return id.startsWith(result.criterion().id() + ".");
    }
  }

  /** How large a fault is: what the number is of, and the number in SI. */
  public record Size(
      Phrase what,
      double value,
      double standardUncertainty,
      Double degreesOfFreedom,
      Dimension dimension) {

    public static Size of(Phrase what, Estimate estimate, Dimension dimension) {
      return new Size(
          what,
          estimate.value(),
          estimate.standardUncertainty(),
          estimate.keptDegreesOfFreedom(),
          dimension);
    }

    public Estimate estimate() {
      return Estimate.of(value, standardUncertainty, degreesOfFreedom);
    }
  }

  /** How far a panel is out, in SI. */
  public record Off(
      double value, double standardUncertainty, Double degreesOfFreedom, Dimension dimension) {

    /**
     * @param by the distance
     * @param like as sure as the distance is
     */
    public static Off of(double by, Estimate like, Dimension dimension) {
      return new Off(by, like.standardUncertainty(), like.keptDegreesOfFreedom(), dimension);
    }
  }

  /**
   * Where one more reading is worth taking, metres from the panel's lower left corner.
   *
   * @param ifSo film there if this is the cause, metres; null where that is not foretold, or the
   *     panel was judged by an earlier version
   * @param ifNot film there if it is not
   */
  public record NextPlace(double x, double y, Double ifSo, Double ifNot) {
    public static NextPlace of(double x, double y) {
      return new NextPlace(x, y, null, null);
    }
  }

  /** Another explanation the numbers leave open. */
  public record Rival(String id, double support, Phrase cause) {}

  /** Whether no stroke explains the film. */
  public boolean fitsNoPattern() {
    return findings.stream().anyMatch(Finding::fitsNoPattern);
  }

  /** That readings fit nothing around them; empty where all do. */
  public Optional<Finding> strays() {
    return findings.stream().filter(Finding::strays).findFirst();
  }

  public Optional<Result> result(String criterionId) {
    return results.stream().filter(r -> r.criterion().id().equals(criterionId)).findFirst();
  }
}
