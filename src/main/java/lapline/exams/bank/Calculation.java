package lapline.exams.bank;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import lapline.trade.film.VolumeSolids;
import lapline.trade.measure.Dimension;
import lapline.trade.spray.Overlap;

/**
 * A small piece of shop arithmetic that an exam can ask for, with the values it needs by name. All
 * values and results are in SI. Those that the science rooms hold are taken from there; the wrong
 * ways that people take are here too, so that a slip can be told from a guess.
 */
public enum Calculation {
  /** Dry film of one coat. */
  DRY_FROM_WET(Dimension.FILM, v -> v.solids().dryFrom(v.of("wet")), "wet", "solids"),
  /** Wet film that dries to a given one; a slip where the dry film is asked. */
  WET_FOR_DRY(Dimension.FILM, v -> v.solids().wetFor(v.of("wet")), "wet", "solids"),
  DRY_OF_COATS(
      Dimension.FILM,
      v -> v.of("coats") * v.solids().dryFrom(v.of("wet")),
      "wet",
      "solids",
      "coats"),
  WET_OF_COATS(Dimension.FILM, v -> v.of("coats") * v.of("wet"), "wet", "coats"),
  FILM_TAKEN_OFF(Dimension.FILM, v -> v.of("before") - v.of("after"), "before", "after"),

  /** From the middle of one pass to the middle of the next. */
  STEP_FROM_OVERLAP(
      Dimension.LENGTH, v -> Overlap.spacing(v.of("overlap"), v.of("fan")), "fan", "overlap"),
  OVERLAPPED_WIDTH(Dimension.LENGTH, v -> v.of("overlap") * v.of("fan"), "fan", "overlap"),
  HALF_OF_FAN(Dimension.LENGTH, v -> v.of("fan") / 2, "fan"),

  TIME_OF_ONE(Dimension.DURATION, v -> v.of("time") / v.of("strokes"), "time", "strokes"),
  SPEED_OF_STROKES(
      Dimension.SPEED,
      v -> v.of("length") * v.of("strokes") / v.of("time"),
      "length",
      "time",
      "strokes"),
  SPEED_OF_ONE_IN_ALL(Dimension.SPEED, v -> v.of("length") / v.of("time"), "length", "time"),

  /** Paths of a sanding disc over a field, each covering a share of the one before. */
  PATHS_TO_COVER(Dimension.NUMBER, v -> 1 + further(v), "disc", "field", "overlap"),
  FURTHER_PATHS(Dimension.NUMBER, Calculation::further, "disc", "field", "overlap"),
  PATHS_SIDE_BY_SIDE(Dimension.NUMBER, v -> wholeUp(v.of("field") / v.of("disc")), "disc", "field"),

  SHARE_OF_LENGTH(Dimension.SHARE, v -> v.of("bleed") / v.of("border"), "bleed", "border"),
  SHARE_CLEAN(Dimension.SHARE, v -> 1 - v.of("bleed") / v.of("border"), "bleed", "border"),
  WITH_OVERHANG(Dimension.LENGTH, v -> v.of("opening") + 2 * v.of("beyond"), "opening", "beyond"),
  WITH_OVERHANG_ONCE(Dimension.LENGTH, v -> v.of("opening") + v.of("beyond"), "opening", "beyond"),

  /** Room between the last colour and the panel's edge. */
  ROOM_LEFT(
      Dimension.LENGTH,
      v -> v.of("room") - v.of("second") - v.of("third"),
      "room",
      "second",
      "third"),
  ROOM_AFTER_LAST_STEP(Dimension.LENGTH, v -> v.of("room") - v.of("third"), "room", "third"),

  DEW_MARGIN(Dimension.TEMPERATURE_DIFFERENCE, v -> v.of("panel") - v.of("dew"), "panel", "dew");

  private static final double ROUNDING = 1e-9;

  private final Dimension result;
  private final ToDoubleFunction<Values> formula;
  private final List<String> needs;

  Calculation(Dimension result, ToDoubleFunction<Values> formula, String... needs) {
    this.result = result;
    this.formula = formula;
    this.needs = List.of(needs);
  }

  /** As it is written in a bank: {@code dry-from-wet}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public Dimension result() {
    return result;
  }

  /** Names of the values it needs. */
  public List<String> needs() {
    return needs;
  }

  /**
   * The result in SI.
   *
   * @param values by name, in SI; all that {@link #needs()} names
   */
  public double of(Map<String, Double> values) {
    return formula.applyAsDouble(new Values(values));
  }

  static Optional<Calculation> named(String word) {
    return Arrays.stream(values()).filter(c -> c.word().equals(word)).findFirst();
  }

  static List<String> words() {
    return Arrays.stream(values()).map(Calculation::word).toList();
  }

  private static double further(Values v) {
    double step = Overlap.spacing(v.of("overlap"), v.of("disc"));
    return wholeUp((v.of("field") - v.of("disc")) / step);
  }

  private static double wholeUp(double paths) {
    return Math.ceil(paths - ROUNDING);
  }

  private record Values(Map<String, Double> byName) {
    double of(String name) {
      return byName.get(name);
    }

    VolumeSolids solids() {
      return new VolumeSolids(of("solids"));
    }
  }
}
