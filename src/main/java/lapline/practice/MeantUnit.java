package lapline.practice;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Unit;
import lapline.trade.measure.UnitSystem;

/**
 * The unit that a number typed without one was more likely meant in than in its field's: the other
 * system's before all others, and none that is hardly ever written beside a gun.
 */
final class MeantUnit {
  private static final Set<Unit> SELDOM_WRITTEN =
      EnumSet.of(Unit.PASCAL, Unit.INCH_OF_WATER, Unit.KELVIN, Unit.CUBIC_METRE);

  /** A number this many times within what can be is no accident at the edge of it. */
  private static final double WELL_WITHIN = 2;

  private final Measurand measurand;
  private final UnitSystem units;

  MeantUnit(Measurand measurand, UnitSystem units) {
    this.measurand = measurand;
    this.units = units;
  }

  /**
   * For a number that cannot be in its field's unit: one that puts it where the task expects it, or
   * else the other system's, where that is well possible.
   *
   * @param si what the number was read as
   */
  Optional<Unit> possible(PracticeTask task, double si) {
    return Expected.of(task, measurand)
        .flatMap(expected -> expected(si, expected))
        .or(() -> Optional.of(beside()).filter(u -> wellPossible().contains(in(u, si))));
  }

  /** One that puts the number where it is expected, as asked for before nearly so. */
  Optional<Unit> expected(double si, Expected expected) {
    return Stream.of(expected.asked(), expected.near())
        .flatMap(range -> all().filter(u -> range.contains(in(u, si))))
        .filter(u -> possible().contains(in(u, si)))
        .findFirst();
  }

  private Stream<Unit> all() {
    Unit field = measurand.spoken().in(units);
    return Stream.concat(Stream.of(beside()), Arrays.stream(Unit.values()))
        .filter(
            u -> u.dimension() == field.dimension() && u != field && !SELDOM_WRITTEN.contains(u));
  }

  private Unit beside() {
    return measurand.spoken().beside(units);
  }

  private double in(Unit unit, double si) {
    return unit.toSi(measurand.spoken().in(units).fromSi(si));
  }

  private TargetRange possible() {
    return new TargetRange(measurand.possibleLeast(), measurand.possibleMost());
  }

  private TargetRange wellPossible() {
    double least = measurand.possibleLeast() * (measurand.possibleLeast() > 0 ? WELL_WITHIN : 1);
    return new TargetRange(least, Math.max(least, measurand.possibleMost() / WELL_WITHIN));
  }
}
