package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Prints, for faults that were made on simulated panels, which fault is named first: the confusion
 * table of {@code DEVELOPERS.md}. Arguments: panels a row, places a panel.
 *
 * <p>Panels are sprayed with equations of their own (SprayedPanel), a gauge of 1.5 µm, a texture of
 * 1 µm, steps that stray by 6 mm and passes uneven by 3 %. A learner writes down the steps over the
 * panel and where the first pass lay, the steps alone, or nothing. Places are those of the reading
 * plan for the coats and the overlap that were meant, as on a task's sheet: two of 70 % where
 * nothing else is said.
 */
public final class StrokeTable {
  private static final Set<Fault> ANY_STEP = EnumSet.of(Fault.STEPS_UNEVEN, Fault.ONE_STEP);

  private static final double UNSURE = 0.03;

  private final int panels;
  private final int places;
  private final Map<PassPlan, List<Spot>> sheets = new ConcurrentHashMap<>();

  private StrokeTable(int panels, int places) {
    this.panels = panels;
    this.places = places;
  }

  private List<Spot> sheet(SprayedPanel panel) {
    return sheets.computeIfAbsent(panel.asMeant(), p -> ReadingPlan.of(p, places, UNSURE));
  }

  /** What a learner writes down about the passes. */
  private enum Written {
    ALL("steps and first pass"),
    STEPS("steps"),
    NOTHING("nothing");

    private final String name;

    Written(String name) {
      this.name = name;
    }
  }

  /** What was done, and what may be named first for it; nothing for an even hand. */
  private record Scenario(String name, Set<Fault> right, Consumer<SprayedPanel> hand) {}

  private static Scenario made(String name, Fault right, Consumer<SprayedPanel> hand) {
    return new Scenario(name, EnumSet.of(right), hand);
  }

  private static List<Scenario> scenarios() {
    return List.of(
        new Scenario("even, 70 % overlap", Set.of(), p -> {}),
        new Scenario("even, steps stray by 8 mm", Set.of(), p -> p.jitter = 0.008),
        made("steps wide, 50 % overlap for 70 %, one coat", Fault.STEPS_WIDE, p -> oneCoat(p, 0.5)),
        made("steps wide, 40 % overlap, one coat", Fault.STEPS_WIDE, p -> oneCoat(p, 0.4)),
        made("steps wide, 40 % overlap, two coats", Fault.STEPS_WIDE, p -> p.overlap = 0.4),
        new Scenario("one step 60 mm wider", ANY_STEP, StrokeTable::oneStep),
        made("arcing, 32 % missing at the ends", Fault.ARCING, p -> p.wrist = 0.5),
        made("arcing, 15 % missing", Fault.ARCING, p -> p.wrist = 0.8),
        made("lingering, 50 % more", Fault.LINGERING, p -> p.linger = 0.5),
        made("trigger early, 40 % less", Fault.TRIGGER_EARLY, p -> p.linger = -0.4),
        made("drift along, 25 %", Fault.DRIFT_ALONG, p -> p.along = 0.25),
        made("drift across, 30 %", Fault.DRIFT_ACROSS, p -> p.across = 0.3),
        made("drift across, 45 %", Fault.DRIFT_ACROSS, p -> p.across = 0.45),
        made("pass missing along an edge", Fault.EDGES_THIN, p -> p.lowest = 0.02),
        made("edge sprayed twice", Fault.EDGES_HEAVY, p -> p.twiceBelow = 0.02),
        made("heeled gun, one coat, 33 %", Fault.TILT, StrokeTable::heeled),
        new Scenario(
            "arcing with steps wide",
            EnumSet.of(Fault.ARCING, Fault.STEPS_WIDE),
            p -> {
              p.wrist = 0.5;
              p.overlap = 0.4;
            }),
        new Scenario(
            "drift along with lingering",
            EnumSet.of(Fault.DRIFT_ALONG, Fault.LINGERING),
            p -> {
              p.along = 0.3;
              p.linger = 0.5;
            }));
  }

  private static void oneStep(SprayedPanel p) {
    p.gapAt = 0.2;
    p.gapBy = 0.06;
  }

  private static void oneCoat(SprayedPanel p, double overlap) {
    p.coats = 1;
    p.overlap = overlap;
  }

  private static void heeled(SprayedPanel p) {
    oneCoat(p, 0.33);
    p.meantOverlap = 0.33;
    p.lean = 0.5;
  }

  private static Map<String, Consumer<SprayedPanel>> troubles() {
    Map<String, Consumer<SprayedPanel>> troubles = new TreeMap<>();
    troubles.put("5 % gross strays", p -> p.grossStrays = 0.05);
    troubles.put("places off by 10 mm", p -> p.misplaced = 0.01);
    troubles.put("fan written 10 % too wide", p -> p.fanWritten = 1.1 * SprayedPanel.FAN);
    troubles.put("a fifth of the places missing", p -> p.missing = 0.2);
    return troubles;
  }

  private StrokeReading read(
      Scenario one, Consumer<SprayedPanel> trouble, Written written, int seed) {
    Random chance = new Random(seed);
    SprayedPanel panel = new SprayedPanel();
    one.hand.accept(panel);
    trouble.accept(panel);
    panel.firstWritten = written == Written.ALL;
    PassPlan plan = panel.spray(chance);
    List<Spot> sheet = sheet(panel);
    List<FilmAt> readings = panel.read(sheet, chance);
    // with fewer nothing is read, and nobody is told anything
    List<FilmAt> enough =
        readings.size() < StrokeReading.LEAST_PLACES ? panel.read(sheet, chance) : readings;
    return StrokeReading.of(panel.writtenDown(plan, written != Written.NOTHING), enough);
  }

  private Map<String, Long> firsts(Scenario one, Consumer<SprayedPanel> trouble, Written written) {
    return IntStream.range(0, panels)
        .parallel()
        .mapToObj(seed -> first(read(one, trouble, written, seed)))
        .collect(Collectors.groupingBy(f -> f, TreeMap::new, Collectors.counting()));
  }

  private static String first(StrokeReading reading) {
    return reading.faults().isEmpty() ? "none" : reading.faults().get(0).fault().name();
  }

  private long right(Scenario one, Map<String, Long> firsts) {
    return one.right.isEmpty()
        ? firsts.getOrDefault("none", 0L)
        : one.right.stream().mapToLong(f -> firsts.getOrDefault(f.name(), 0L)).sum();
  }

  private String percent(double count, int of) {
    return String.format(Locale.ROOT, "%.0f", 100 * count / of);
  }

  private void row(Scenario one, Written written) {
    Map<String, Long> firsts = firsts(one, p -> {}, written);
    List<String> others = new ArrayList<>();
    firsts.forEach(
        (name, count) -> {
          boolean isRight =
              one.right.isEmpty()
                  ? name.equals("none")
                  : one.right.stream().anyMatch(f -> f.name().equals(name));
          if (!isRight) {
            others.add(
                name.toLowerCase(Locale.ROOT).replace('_', ' ') + " " + percent(count, panels));
          }
        });
    System.out.printf(
        "| %s | %s | %s | %s |%n",
        one.name, written.name, percent(right(one, firsts), panels), String.join(", ", others));
  }

  private void trouble(String name, Consumer<SprayedPanel> trouble) {
    double right = 0;
    double none = 0;
    List<Scenario> with = scenarios().stream().filter(s -> !s.right.isEmpty()).toList();
    for (Scenario one : with) {
      Map<String, Long> firsts = firsts(one, trouble, Written.STEPS);
      right += right(one, firsts);
      none += firsts.getOrDefault("none", 0L);
    }
    int all = with.size() * panels;
    Map<String, Long> even = firsts(scenarios().get(0), trouble, Written.STEPS);
    System.out.printf(
        "| %s | %s | %s | %s | %s |%n",
        name,
        percent(right, all),
        percent(none, all),
        percent(all - right - none, all),
        percent(even.getOrDefault("none", 0L), panels));
  }

  public static void main(String[] arguments) {
    StrokeTable table =
        new StrokeTable(Integer.parseInt(arguments[0]), Integer.parseInt(arguments[1]));
    System.out.printf("%n%d panels a row, %d places, in 100:%n%n", table.panels, table.places);
    System.out.println("| made | written down | named first | else |");
    System.out.println("|---|---|---|---|");
    for (Scenario one : scenarios()) {
      for (Written written : Written.values()) {
        table.row(one, written);
      }
    }
    System.out.println("\n| trouble, steps written | right | none | wrong | even hand: none |");
    System.out.println("|---|---|---|---|---|");
    troubles().forEach(table::trouble);
  }
}
