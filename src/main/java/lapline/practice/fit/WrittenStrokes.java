package lapline.practice.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import lapline.practice.PanelEntry;
import lapline.practice.PracticeTask;
import lapline.practice.Reading;
import lapline.trade.measure.Estimate;
import lapline.trade.stroke.PassPlan;
import lapline.trade.stroke.PassPlan.Coat;
import lapline.trade.stroke.StrokeRecord;

/**
 * How the passes of a panel may lie, from what was written down about them; the rest from the
 * task's targets, and last from common practice.
 *
 * <p>Steps are written from pass to pass, and nobody writes where the first one lay. It is taken to
 * be aimed at the upper edge, as the lessons have it, but may lie anywhere within a step; before
 * the first and after the last written step the passes go on evenly.
 */
final class WrittenStrokes {
  /** A coat with so many written steps is taken as it was written; with fewer, as even. */
  private static final int STEPS_A_COAT = 2;

  /** How well the mean of written steps is known, as a share of it; course assumption. */
  private static final double WRITTEN = 0.03;

  /** How well a hand keeps the step it means to, as a share of it; course assumption. */
  private static final double MEANT = 0.08;

  /** Steps from this share of the fan on are tried where none was written down. */
  private static final double[] TRIED = {0.2, 0.25, 0.3, 0.36, 0.43, 0.51, 0.6, 0.7, 0.81, 0.93};

  /** No tape is read more closely than this, metres. */
  private static final double LEAST_EACH = 0.001;

  /** Two steps that differ by less, as a share, are the same one. */
  private static final double SAME = 0.1;

  /**
   * Shorter steps leave no stripes to speak of, as a share of the fan: a parabola's ripple is 5 %.
   */
  private static final double STRIPED = 0.42;

  /** A phase that may be anything lies within half a step: uniform. */
  private static final double ANYWHERE = 1 / Math.sqrt(12);

  /** Steps that differ by more than this make it matter which way the hand went, metres. */
  private static final double UNEVEN = 0.012;

  /** Shape of the fans of refinish guns, between a parabola (2) and a bell (3); from memory. */
  private static final Estimate BETA = Estimate.of(2.2, 0.35);

  private final PracticeTask task;
  private final Technique technique;
  private final List<Map<Integer, Reading>> steps;

  private WrittenStrokes(PracticeTask task, PanelEntry entry) {
    this.task = task;
    this.technique = Technique.of(task, entry);
    this.steps =
        IntStream.rangeClosed(1, Math.max(1, task.coats()))
            .mapToObj(coat -> steps(entry, coat))
            .toList();
  }

  static WrittenStrokes of(PracticeTask task, PanelEntry entry) {
    return new WrittenStrokes(task, entry);
  }

  StrokeRecord record() {
    return new StrokeRecord(plans(), technique.leastOverlap(), technique.bow());
  }

  Technique technique() {
    return technique;
  }

  boolean stepsWritten() {
    return steps.stream().anyMatch(s -> !s.isEmpty());
  }

  /** Steps that would leave stripes: those written down, or any that a hand may have made. */
  double[] stripedSteps() {
    double fan = technique.fanWidth().value();
    double[] steps =
        stepsWritten()
            ? new double[] {meanWritten().orElseThrow()}
            : DoubleStream.of(TRIED).map(share -> share * fan).toArray();
    return DoubleStream.of(steps).filter(step -> step >= STRIPED * fan).toArray();
  }

  /** Even passes at the step that the task asks for. */
  PassPlan asMeant() {
    return even(technique.meantStep());
  }

  /** By the number of the pass that the step leads to. */
  private static Map<Integer, Reading> steps(PanelEntry entry, int coat) {
    Map<Integer, Reading> steps = new TreeMap<>();
    entry.of(Technique.SPACING).stream()
        .filter(r -> r.cell().coat() == coat && r.cell().pass() > 1 && r.value() > 0)
        .forEach(r -> steps.put(r.cell().pass(), r));
    return steps;
  }

  private List<PassPlan> plans() {
    OptionalDouble mean = meanWritten();
    return mean.isPresent() ? written(mean.getAsDouble()) : meant();
  }

  private OptionalDouble meanWritten() {
    return steps.stream().flatMap(s -> s.values().stream()).mapToDouble(Reading::value).average();
  }

  private List<PassPlan> written(double mean) {
    List<PassPlan> plans = new ArrayList<>(List.of(written(mean, true)));
    if (isUneven(mean)) {
      plans.add(written(mean, false));
    }
    if (1 - mean / technique.fanWidth().value() < technique.leastOverlap()) {
      plans.add(even(technique.meantStep()));
    }
    return plans;
  }

  private boolean isUneven(double mean) {
    return steps.stream()
        .flatMap(s -> s.values().stream())
        .anyMatch(r -> Math.abs(r.value() - mean) > UNEVEN);
  }

  private PassPlan written(double mean, boolean downwards) {
    return plan(
        steps.stream()
            .map(s -> s.size() < STEPS_A_COAT ? evenCoat(mean, MEANT) : coat(s, mean, downwards))
            .toList());
  }

  private List<PassPlan> meant() {
    double meant = technique.meantStep();
    return DoubleStream.concat(
            DoubleStream.of(meant),
            DoubleStream.of(TRIED)
                .map(share -> share * technique.fanWidth().value())
                .filter(step -> Math.abs(Math.log(step / meant)) > SAME))
        .mapToObj(this::even)
        .toList();
  }

  private PassPlan even(double step) {
    return plan(steps.stream().map(s -> evenCoat(step, MEANT)).toList());
  }

  private PassPlan plan(List<Coat> coats) {
    return new PassPlan(
        task.panel().width(), task.panel().height(), coats, technique.fanWidth(), BETA);
  }

  private Coat evenCoat(double step, double all) {
    double height = task.panel().height();
    return Coat.even(
        height, step, technique.fanWidth().value(), height, Coat.STEADY, all, ANYWHERE * step);
  }

  private Coat coat(Map<Integer, Reading> written, double otherwise, boolean downwards) {
    int last = written.keySet().stream().mapToInt(p -> p).max().orElseThrow();
    double mean = written.values().stream().mapToDouble(Reading::value).average().orElse(otherwise);
    double height = task.panel().height();
    List<Double> way = new ArrayList<>(List.of(0.0));
    for (int pass = 2; pass <= last; pass++) {
      double step = Optional.ofNullable(written.get(pass)).map(Reading::value).orElse(mean);
      way.add(way.get(way.size() - 1) + step);
    }
    goOn(way, mean, height);
    List<Double> lines = way.stream().map(w -> downwards ? height - w : w).sorted().toList();
    double each =
        written.values().stream().mapToDouble(Reading::standardUncertainty).max().orElse(0);
    return new Coat(lines, Math.max(each, LEAST_EACH), WRITTEN, ANYWHERE * mean);
  }

  /** Evenly beyond both edges as far as a fan still reaches in. */
  private void goOn(List<Double> way, double step, double height) {
    double reach = technique.fanWidth().value() / 2 + step;
    for (double w = -step; w >= -reach; w -= step) {
      way.add(w);
    }
    double last = way.stream().mapToDouble(w -> w).max().orElseThrow();
    for (double w = last + step; w <= height + reach; w += step) {
      way.add(w);
    }
  }
}
