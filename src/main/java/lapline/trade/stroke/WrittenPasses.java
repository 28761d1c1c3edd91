package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;
import lapline.trade.stroke.PassPlan.Coat;
import lapline.trade.stroke.StrokeRecord.Way;

/**
 * The steps between passes as far as somebody wrote them down, and how the passes of a panel may
 * lie by that.
 *
 * <p>Steps are written from pass to pass, and where the first one lay may be written as well. Where
 * it is not it may lie anywhere about the upper edge; before the first and after the last written
 * step the passes go on evenly.
 *
 * @param width of the panel along the strokes, metres, more than 0
 * @param height of the panel across them, metres, more than 0, at most 10
 * @param fanWidth metres, value and uncertainty more than 0
 * @param meantStep that the hand was to keep, metres, 0.001 or more
 * @param steps of each coat, by the number of the pass that they lead to, counted from the upper
 *     edge; metres, each 0.001 or more; that to pass 1 leads from the edge, down where it is more
 *     than 0, and no further off it than the panel is high; empty for a coat of which nothing was
 *     written; 1 coat or more
 */
public record WrittenPasses(
    double width,
    double height,
    Estimate fanWidth,
    double meantStep,
    List<Map<Integer, Estimate>> steps) {

  /** Shape of the fans of refinish guns, between a parabola (2) and a bell (3); from memory. */
  public static final Estimate BETA = Estimate.of(2.2, 0.35);

  /** A coat with so many written steps is taken as it was written; with fewer, as even. */
  private static final int STEPS_A_COAT = 2;

  /** Metres; smaller ones would make more passes than anybody could mean. */
  private static final double LEAST_STEP = 0.001;

  private static final double MOST_SIZE = 10;

  private static final int FIRST = 1;

  /** A hand makes no more passes than this. */
  private static final int MOST_PASSES = 200;

  /** How well the mean of written steps is known, as a share of it; course assumption. */
  private static final double WRITTEN = 0.03;

  /** How well a hand keeps the step it means to, as a share of it; course assumption. */
  private static final double MEANT = 0.08;

  /** Steps that are tried where none was written down, as shares of the fan. */
  private static final double[] TRIED = {0.2, 0.25, 0.3, 0.36, 0.43, 0.51, 0.6, 0.7, 0.81, 0.93};

  /** No tape is read more closely than this, metres. */
  private static final double LEAST_EACH = 0.001;

  /** Two steps that differ by less, as a share, are the same one. */
  private static final double SAME = 0.1;

  /**
   * Shorter steps, as shares of the fan, leave no stripes to speak of: 5 % of a parabola's film.
   */
  private static final double STRIPED = 0.42;

  /** A phase that may be anything lies within half a step: uniform. */
  private static final double ANYWHERE = 1 / Math.sqrt(12);

  /**
   * A first pass that nobody wrote down lies a fifth of a step above the upper edge to a whole step
   * below it, since some count from the pass that was aimed at the edge and some from the first one
   * over the panel: its middle and how many steps that are.
   */
  private static final double AIMED = 0.4;

  private static final double WITHIN = 1.2;

  /**
   * Steps are counted from the upper edge, as the sheet asks; how often somebody counts from below
   * for one who does as asked; course assumption.
   */
  private static final double UPWARDS = 0.03;

  /**
   * How often somebody writes down steps that are too wide and keeps the meant one, for one who
   * writes what was measured; course assumption.
   */
  private static final double MISWRITTEN = 0.02;

  /** Steps that differ by more than this make it matter which way the hand went, metres. */
  private static final double UNEVEN = 0.012;

  public WrittenPasses {
    Valid.positive("width", width);
    Valid.positive("height", height);
    Valid.positive("fanWidth", fanWidth.value());
    Valid.positive("fanWidth uncertainty", fanWidth.standardUncertainty());
    Valid.between("meantStep", meantStep, LEAST_STEP, MOST_SIZE);
    Valid.between("height", height, 0, MOST_SIZE);
    Valid.positive("coats", steps.size());
    steps = steps.stream().map(Map::copyOf).toList();
    for (Map<Integer, Estimate> coat : steps) {
      check(coat, height);
    }
  }

  private static void check(Map<Integer, Estimate> coat, double height) {
    coat.forEach(
        (pass, step) -> {
          if (pass == FIRST) {
            Valid.between("first pass", step.value(), -height, height);
            Valid.positive("first pass uncertainty", step.standardUncertainty());
          } else {
            Valid.between("step", step.value(), LEAST_STEP, MOST_SIZE);
          }
          if (pass < FIRST || pass > MOST_PASSES) {
            throw new MeasureException("pass", pass, FIRST + " to " + MOST_PASSES);
          }
        });
  }

  private static Optional<Estimate> first(Map<Integer, Estimate> coat) {
    return Optional.ofNullable(coat.get(FIRST));
  }

  private static Stream<Estimate> between(Map<Integer, Estimate> coat) {
    return coat.entrySet().stream().filter(s -> s.getKey() > FIRST).map(Map.Entry::getValue);
  }

  /**
   * @param leastOverlap see {@link StrokeRecord}
   * @param bow see there
   */
  public StrokeRecord record(double leastOverlap, Optional<Estimate> bow) {
    OptionalDouble usual = usualWritten();
    return new StrokeRecord(
        usual.isPresent() ? written(usual.getAsDouble(), leastOverlap) : meant(),
        usual.isPresent(),
        leastOverlap,
        bow);
  }

  /** Whether any step was written down. */
  public boolean anyWritten() {
    return usualWritten().isPresent();
  }

  /**
   * The step that was written down, metres: over all coats, their median, since one step that went
   * wrong says nothing of the others; empty where none was.
   */
  public OptionalDouble usualWritten() {
    return usual(steps.stream().flatMap(WrittenPasses::between));
  }

  private static OptionalDouble usual(Stream<Estimate> steps) {
    double[] sorted = steps.mapToDouble(Estimate::value).sorted().toArray();
    int n = sorted.length;
    return n == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of((sorted[(n - 1) / 2] + sorted[n / 2]) / 2);
  }

  /** Even passes at the step that was meant. */
  public PassPlan asMeant() {
    return even(meantStep);
  }

  /** Steps that would leave stripes: those written down, or any that a hand may have made. */
  public double[] stripedSteps() {
    DoubleStream may =
        anyWritten()
            ? DoubleStream.of(usualWritten().orElseThrow())
            : DoubleStream.of(TRIED).map(share -> share * fanWidth.value());
    return may.filter(step -> step >= STRIPED * fanWidth.value()).toArray();
  }

  private List<Way> written(double usual, double leastOverlap) {
    List<Way> ways = new ArrayList<>(List.of(new Way(written(usual, true), 1)));
    if (isUneven(usual)) {
      ways.add(new Way(written(usual, false), UPWARDS));
    }
    if (1 - usual / fanWidth.value() < leastOverlap) {
      ways.add(new Way(even(meantStep), MISWRITTEN));
    }
    return ways;
  }

  private boolean isUneven(double usual) {
    return steps.stream()
        .flatMap(WrittenPasses::between)
        .anyMatch(step -> Math.abs(step.value() - usual) > UNEVEN);
  }

  private PassPlan written(double usual, boolean downwards) {
    return plan(
        steps.stream()
            .map(s -> between(s).count() < STEPS_A_COAT ? evenCoat(usual, s) : coat(s, downwards))
            .toList());
  }

  /** The step that was meant has as much weight as all others together. */
  private List<Way> meant() {
    double[] others =
        DoubleStream.of(TRIED)
            .map(share -> share * fanWidth.value())
            .filter(step -> Math.abs(Math.log(step / meantStep)) > SAME)
            .toArray();
    List<Way> ways = new ArrayList<>(List.of(new Way(even(meantStep), others.length)));
    for (double step : others) {
      ways.add(new Way(even(step), 1));
    }
    return ways;
  }

  private PassPlan even(double step) {
    return plan(steps.stream().map(s -> evenCoat(step, s)).toList());
  }

  private PassPlan plan(List<Coat> coats) {
    return new PassPlan(width, height, coats, fanWidth, BETA);
  }

  private Coat evenCoat(double step, Map<Integer, Estimate> written) {
    Estimate first = first(written).orElse(Estimate.of(0, ANYWHERE * step));
    return Coat.even(
        height - first.value(),
        step,
        fanWidth.value(),
        height,
        Coat.STEADY,
        MEANT,
        first.standardUncertainty());
  }

  /** Counted from the first pass; evenly beyond both edges as far as a fan still reaches in. */
  private Coat coat(Map<Integer, Estimate> written, boolean downwards) {
    double usual = usual(between(written)).orElseThrow();
    int last = written.keySet().stream().mapToInt(p -> p).max().orElseThrow();
    Estimate first = first(written).orElse(Estimate.of(AIMED * usual, WITHIN * ANYWHERE * usual));
    double reach = fanWidth.value() / 2 + usual;
    int before = Math.max(0, (int) Math.floor((reach + first.value()) / usual));
    double way = first.value() - before * usual;
    List<Double> lines = new ArrayList<>(List.of(way));
    List<Double> each = new ArrayList<>();
    for (int pass = FIRST + 1 - before; pass <= last || way + usual <= height + reach; pass++) {
      Estimate step =
          pass > FIRST && written.containsKey(pass)
              ? written.get(pass)
              : Estimate.of(usual, Coat.STEADY);
      way += step.value();
      lines.add(way);
      each.add(Math.max(step.standardUncertainty(), LEAST_EACH));
    }
    if (downwards) {
      lines.replaceAll(w -> height - w);
      Collections.reverse(lines);
      Collections.reverse(each);
    }
    return new Coat(lines, each, WRITTEN, first.standardUncertainty());
  }
}
