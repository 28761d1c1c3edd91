package lapline.trade.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.random.RandomGenerator;
import lapline.Samples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A range as it is shown, beside readings that are held against it. */
class LimitsTest {
  private static final SpokenUnits TIP = new SpokenUnits(Unit.MILLIMETRE, Unit.MILLIMETRE);
  private static final SpokenUnits WAIT = new SpokenUnits(Unit.MINUTE, Unit.MINUTE);
  private static final SpokenUnits LENGTH = SpokenUnits.usual(Dimension.LENGTH);

  private static String shown(TargetRange range, SpokenUnits spoken, UnitSystem system) {
    Limits limits = Limits.of(range, spoken, system);
    return (limits.leastBesideMost() + " to " + limits.most()).replace('\u00a0', ' ');
  }

  private static TargetRange inches(double least, double most) {
    return new TargetRange(Unit.INCH.toSi(least), Unit.INCH.toSi(most));
  }

  @Test
  void a_limit_keeps_every_figure_that_it_was_set_with() {
    TargetRange tip = new TargetRange(0.00115, 0.00135);
    assertThat(shown(tip, TIP, UnitSystem.METRIC)).isEqualTo("1.15 to 1.35 mm");
    assertThat(shown(tip, TIP, UnitSystem.US)).isEqualTo("1.15 to 1.35 mm");
    assertThat(shown(inches(0.75, 1.25), LENGTH, UnitSystem.US)).isEqualTo("0.75 to 1.25 in");
  }

  /** Of seven figures and more nobody set one: then it is noise, and rounded like a conversion. */
  @Test
  void six_figures_may_have_been_set_and_more_were_not() {
    assertThat(least(0.00123456, TIP)).isEqualTo("1.23456 mm");
    assertThat(least(0.001234567, TIP)).isEqualTo("1.24 mm");
  }

  /** Rounded up into the range: tenths of a second, from two minutes on whole ones. */
  @Test
  void a_time_from_elsewhere_is_rounded_as_it_is_spoken_of() {
    SpokenUnits time = SpokenUnits.usual(Dimension.DURATION);

    assertThat(least(45.678912, time)).isEqualTo("45.7 s");
    assertThat(least(130.678912, time)).isEqualTo("2 min 11 s");
  }

  private static String least(double si, SpokenUnits spoken) {
    return Limits.of(TargetRange.atLeast(si), spoken, UnitSystem.METRIC)
        .least()
        .replace('\u00a0', ' ');
  }

  /** Rounded into the range, so that what is called possible is. */
  @Test
  void a_limit_for_a_field_has_as_many_figures_as_one_needs_to_see_the_slip() {
    assertThat(inField(0.02, 0.6, LENGTH)).isEqualTo("0.79 in to 23.6 in");
    assertThat(inField(-0.2, 0.5, LENGTH)).isEqualTo("-7.8 in to 19.6 in".replace('-', '−'));
    assertThat(inField(0.001, 2, LENGTH)).isEqualTo("0.04 in to 78.7 in");
    assertThat(inField(0, 1e6, SpokenUnits.usual(Dimension.PRESSURE)))
        .isEqualTo("0 psi to 145 psi");
    assertThat(inField(0.0005, 0.004, TIP)).isEqualTo("0.5 mm to 4 mm");
    assertThat(inField(0, 43200, WAIT)).isEqualTo("0 min to 720 min");
  }

  private static String inField(double least, double most, SpokenUnits spoken) {
    Limits limits = Limits.inField(new TargetRange(least, most), spoken, UnitSystem.US);
    return (limits.least() + " to " + limits.most()).replace('\u00a0', ' ');
  }

  @Test
  void a_limit_of_the_other_system_claims_no_more_than_a_rule_can_show() {
    assertThat(shown(inches(4, 6), LENGTH, UnitSystem.METRIC)).isEqualTo("102 to 152 mm");
    assertThat(shown(inches(3, 5), LENGTH, UnitSystem.METRIC)).isEqualTo("77 to 127 mm");
    assertThat(shown(inches(0.75, 1.25), LENGTH, UnitSystem.METRIC)).isEqualTo("19.1 to 31.7 mm");
    assertThat(
            shown(
                new TargetRange(Unit.PSI.toSi(18), Unit.PSI.toSi(22)),
                SpokenUnits.usual(Dimension.PRESSURE),
                UnitSystem.METRIC))
        .isEqualTo("125 to 151 kPa");
    assertThat(most(0.005)).isEqualTo("0.19 in");
    assertThat(most(8)).isEqualTo("26 ft");
    assertThat(most(2.5)).isEqualTo("8 ft");
  }

  @Test
  void bare_ends_are_the_same_figures_without_the_unit() {
    SpokenUnits film = SpokenUnits.usual(Dimension.FILM);
    TargetRange clear = new TargetRange(50e-6, 65e-6);
    assertThat(Limits.of(clear, film, UnitSystem.US).bare()).isEqualTo(new Limits("1.97", "2.55"));
    assertThat(Limits.of(TargetRange.atLeast(50e-6), film, UnitSystem.METRIC).bare())
        .isEqualTo(new Limits("50", ""));
    assertThat(
            Limits.of(new TargetRange(2, 3), SpokenUnits.usual(Dimension.NUMBER), UnitSystem.METRIC)
                .bare())
        .isEqualTo(new Limits("2", "3"));
  }

  private static String most(double metres) {
    return Limits.of(TargetRange.atMost(metres), LENGTH, UnitSystem.US)
        .most()
        .replace('\u00a0', ' ');
  }

  @Test
  void both_ends_of_a_wait_are_in_minutes_and_say_so_once() {
    assertThat(shown(new TargetRange(480, 900), WAIT, UnitSystem.US)).isEqualTo("8 to 15 min");
  }

  @Test
  void two_units_are_both_named() {
    assertThat(shown(new TargetRange(1.5, 2.5), LENGTH, UnitSystem.METRIC))
        .isEqualTo("1500 mm to 2.5 m");
  }

  @ParameterizedTest
  @EnumSource(Dimension.class)
  void what_is_shown_to_be_inside_is_inside(Dimension dimension) {
    SpokenUnits spoken = SpokenUnits.usual(dimension);
    Samples.each(
        200,
        chance -> {
          UnitSystem system = Samples.oneOf(chance, UnitSystem.values());
          TargetRange range = range(chance, spoken, dimension);
          Limits limits = Limits.of(range, spoken, system);
          double noise = 1e-11 * Math.max(Math.abs(range.least()), Math.abs(range.most()));
          assertThat(read(limits.least(), spoken, system))
              .isGreaterThanOrEqualTo(range.least() - noise);
          assertThat(read(limits.most(), spoken, system)).isLessThanOrEqualTo(range.most() + noise);
        });
  }

  /** Half of them set in figures, half of them with noise from elsewhere. */
  private static TargetRange range(
      RandomGenerator chance, SpokenUnits spoken, Dimension dimension) {
    Unit unit = spoken.in(Samples.oneOf(chance, UnitSystem.values()));
    double[] ends = new double[2];
    for (int i = 0; i < 2; i++) {
      double value = Samples.ofAnySize(chance, 0.1, 1400);
      ends[i] =
          unit.toSi(
              switch (dimension) {
                case CLOCK -> 60 * Math.rint(value);
                case GRIT, COUNT, CHOICE -> Math.ceil(value);
                default -> chance.nextBoolean() ? Math.rint(value) : value;
              });
    }
    Arrays.sort(ends);
    return new TargetRange(ends[0], ends[1]);
  }

  private static double read(String written, SpokenUnits spoken, UnitSystem system) {
    return ((ReadQuantity.Understood) QuantityReader.read(written, spoken, system)).si();
  }
}
