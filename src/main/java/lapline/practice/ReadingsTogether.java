package lapline.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.QuantityWriter;
import lapline.trade.measure.UnitSystem;

/** What cannot be true of readings taken together, though each could be by itself. */
final class ReadingsTogether {
  /** A step between passes as wide as the fan leaves bare metal; nobody means to. */
  private static final String FAN = "fan-width";

  private static final String SPACING = "pass-spacing";
  private static final String BEFORE = "film-before";
  private static final String AFTER = "film-after";
  private static final String BLACK = "luminance-black";
  private static final String WHITE = "luminance-white";

  /** Differences within what two gauge readings may differ by chance are let pass. */
  private static final double COVERAGE = 3;

  private final PanelEntry entry;
  private final UnitSystem units;
  private final List<FieldProblem> problems = new ArrayList<>();

  ReadingsTogether(PanelEntry entry, UnitSystem units) {
    this.entry = entry;
    this.units = units;
  }

  List<FieldProblem> problems() {
    spacingWiderThanFan();
    filmLost();
    coatsBackwards();
    blackBrighterThanWhite();
    return problems;
  }

  private void spacingWiderThanFan() {
    entry
        .at(Cell.panel(FAN))
        .ifPresent(
            fan ->
                entry.of(SPACING).stream()
                    .filter(s -> s.cell().pass() > 1)
                    .filter(s -> clearlyMore(s, fan))
                    .forEach(s -> tell(s, "entry.together.spacing", Dimension.LENGTH, s, fan)));
  }

  private void filmLost() {
    Map<Integer, Reading> before = entry.byPlace(BEFORE, 0);
    for (Reading after : entry.of(AFTER)) {
      Reading first = before.get(after.cell().place());
      if (first != null && clearlyMore(first, after)) {
        tell(after, "entry.together.film", Dimension.FILM, after, first);
      }
    }
  }

  /** A later coat begins later, unless midnight came between: then the step back is a long one. */
  private void coatsBackwards() {
    List<Reading> starts = entry.of("coat-start");
    for (int i = 1; i < starts.size(); i++) {
      double back = starts.get(i - 1).value() - starts.get(i).value();
      if (back > 0 && back < 12 * 3600) {
        tell(
            starts.get(i),
            "entry.together.coats",
            Dimension.CLOCK,
            starts.get(i),
            starts.get(i - 1));
      }
    }
  }

  private void blackBrighterThanWhite() {
    for (Reading black : entry.of(BLACK)) {
      entry
          .at(Cell.coat(WHITE, black.cell().coat()))
          .filter(white -> clearlyMore(black, white))
          .ifPresent(
              white -> tell(black, "entry.together.luminance", Dimension.SHARE, black, white));
    }
  }

  private static boolean clearlyMore(Reading a, Reading b) {
    double chance = Math.hypot(a.standardUncertainty(), b.standardUncertainty());
    return a.value() - b.value() > COVERAGE * chance;
  }

  private void tell(Reading at, String key, Dimension dimension, Reading... said) {
    List<String> args = new ArrayList<>();
    for (Reading reading : said) {
      args.add(QuantityWriter.write(reading.value(), dimension, units));
    }
    problems.add(new FieldProblem(at.cell().key(), key, args));
  }
}
