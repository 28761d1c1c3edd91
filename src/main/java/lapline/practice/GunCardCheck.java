package lapline.practice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lapline.trade.measure.SpokenUnits;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.UnitSystem;

/** What keeps a gun card from being understood, told field by field and all at once. */
final class GunCardCheck {
  private static final int LONGEST_NAME = 120;

  private final UnitSystem units;

  GunCardCheck(UnitSystem units) {
    this.units = units;
  }

  /**
   * @param others the cards in use beside this one
   */
  List<FieldProblem> problems(String name, GunCard.Ranges ranges, List<GunCard> others) {
    List<FieldProblem> problems = new ArrayList<>();
    name(name.strip(), others).ifPresent(problems::add);
    Map<String, String> typed = ranges.byName();
    if (typed.isEmpty()) {
      problems.add(new FieldProblem("distance", "targets.wrong.card-empty", List.of()));
    }
    for (GunFigure figure : GunFigure.values()) {
      Optional.ofNullable(typed.get(figure.id()))
          .flatMap(text -> problem(figure, text.strip()))
          .ifPresent(problems::add);
    }
    return problems;
  }

  /** The figures with the units that were meant, so that they mean the same to every reader. */
  static GunCard.Ranges withUnits(GunCard.Ranges ranges, UnitSystem units) {
    Map<String, String> whole = new LinkedHashMap<>(ranges.byName());
    for (GunFigure figure : GunFigure.values()) {
      whole.computeIfPresent(
          figure.id(), (id, text) -> TargetText.withUnit(text, figure.dimension(), units));
    }
    return GunCard.Ranges.of(whole);
  }

  private static Optional<FieldProblem> name(String name, List<GunCard> others) {
    if (name.isEmpty() || name.length() > LONGEST_NAME) {
      return Optional.of(
          new FieldProblem("name", "targets.wrong.card-name", List.of("" + LONGEST_NAME)));
    }
    return others.stream().anyMatch(c -> c.name().equalsIgnoreCase(name))
        ? Optional.of(new FieldProblem("name", "targets.wrong.card-twice", List.of(name)))
        : Optional.empty();
  }

  private Optional<FieldProblem> problem(GunFigure figure, String text) {
    return unitless(figure, text)
        .or(
            () ->
                PossibleTarget.problem(
                    figure.id(),
                    text,
                    figure.possible(),
                    SpokenUnits.usual(figure.dimension()),
                    units));
  }

  /** A figure that would be odd in the unit it was taken for was meant in another. */
  private Optional<FieldProblem> unitless(GunFigure figure, String text) {
    Optional<TargetRange> range = TargetText.read(text, figure.dimension(), units);
    boolean odd = TargetText.isBare(text) && range.isPresent() && !figure.isUsual(range.get());
    return odd
        ? Optional.of(
            new FieldProblem(
                figure.id(),
                "targets.wrong.card-unit",
                List.of(text, TargetText.withUnit(text, figure.dimension(), units))))
        : Optional.empty();
  }
}
