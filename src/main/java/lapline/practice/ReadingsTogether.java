package lapline.practice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.QuantityWriter;
import lapline.trade.measure.UnitSystem;

/** What cannot be true of readings taken together, though each could be by itself. */
final class ReadingsTogether {
  /** A step between passes as wide as the fan leaves bare metal; nobody means to. */
  private static final String FAN = "fan-width";

  private static final String SPACING = "pass-spacing";
  private static final String FIRST_PASS = "first-pass";
  private static final String BEFORE = "film-before";
  private static final String AFTER = "film-after";
  private static final String START = "coat-start";
  private static final String BLACK = "luminance-black";
  private static final String WHITE = "luminance-white";

  /** Differences within what two gauge readings may differ by chance are let pass. */
  private static final double COVERAGE = 3;

  private final PanelOutline panel;
  private final PanelEntry entry;
  private final UnitSystem units;
  private final List<FieldProblem> problems = new ArrayList<>();

  ReadingsTogether(PanelOutline panel, PanelEntry entry, UnitSystem units) {
    this.panel = panel;
    this.entry = entry;
    this.units = units;
  }

  List<FieldProblem> problems() {
    spacingWiderThanFan();
    firstPassBelowPanel();
    filmLost();
    coatsBackwards();
    waitsTooLong();
    blackBrighterThanWhite();
    return problems;
  }

  private void spacingWiderThanFan() {
    entry
        .at(Cell.panel(FAN))
        .ifPresent(
            fan ->
                entry.of(SPACING).stream()
                    .filter(s -> clearlyMore(s, fan))
                    .forEach(s -> tell(s, "entry.together.spacing", Dimension.LENGTH, s, fan)));
  }

  private void firstPassBelowPanel() {
    entry.of(FIRST_PASS).stream()
        .filter(first -> first.value() > panel.height())
        .forEach(
            first ->
                tell(
                    first.cell(),
                    "entry.together.first-pass",
                    Dimension.LENGTH,
                    first.value(),
                    panel.height()));
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

  /** A later coat begins later. */
  private void coatsBackwards() {
    List<Reading> starts = entry.of(START);
    for (int i = 1; i < starts.size(); i++) {
      if (CoatTimes.between(starts.get(i - 1), starts.get(i)).value() < 0) {
        tell(
            starts.get(i),
            "entry.together.coats",
            Dimension.CLOCK,
            starts.get(i),
            starts.get(i - 1));
      }
    }
  }

  /** A wait ends where its coat begins, and began when the coat before it was done. */
  private void waitsTooLong() {
    for (Reading wait : entry.of("flash")) {
      betweenStarts(wait.cell().coat())
          .filter(between -> between.value() >= 0)
          .filter(between -> clearlyMore(wait.estimate(), between))
          .ifPresent(
              between ->
                  tell(
                      wait.cell(),
                      "entry.together.wait",
                      Dimension.DURATION,
                      wait.value(),
                      between.value()));
    }
  }

  private Optional<Estimate> betweenStarts(int coat) {
    Optional<Reading> start = entry.at(Cell.coat(START, coat));
    return entry
        .at(Cell.coat(START, coat - 1))
        .flatMap(former -> start.map(s -> CoatTimes.between(former, s)));
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
    return clearlyMore(a.estimate(), b.estimate());
  }

  private static boolean clearlyMore(Estimate a, Estimate b) {
    double chance = Math.hypot(a.standardUncertainty(), b.standardUncertainty());
    return a.value() - b.value() > COVERAGE * chance;
  }

  private void tell(Reading at, String key, Dimension dimension, Reading said, Reading other) {
    tell(at.cell(), key, dimension, said.value(), other.value());
  }

  private void tell(Cell at, String key, Dimension dimension, double... said) {
    List<String> args =
        Arrays.stream(said).mapToObj(v -> QuantityWriter.write(v, dimension, units)).toList();
    problems.add(new FieldProblem(at.key(), key, args));
  }
}
