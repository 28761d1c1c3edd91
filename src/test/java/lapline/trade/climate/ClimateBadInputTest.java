package lapline.trade.climate;

import static lapline.trade.BadInput.isTaken;
import static lapline.trade.BadInput.numbers;

import java.util.List;
import java.util.stream.Stream;
import lapline.trade.BadInput;
import lapline.trade.climate.DryingRule.MoistAir;
import lapline.trade.climate.DryingTime.Basis;
import lapline.trade.climate.HeatLamp.Reading;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.TargetRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ClimateBadInputTest {
  private static final TargetRange ANY = new TargetRange(10, 35);
  private static final DryingTime TIME = new DryingTime(60, 120, Basis.PRODUCT_CARD);
  private static final HeatLamp LAMP = new HeatLamp(0.8, List.of(new Reading(0, 20)));

  @ParameterizedTest(name = "{0}")
  @MethodSource({"air", "potLives", "drying", "lamps"})
  void what_no_air_clock_or_lamp_can_be_is_refused_by_name(BadInput bad) {
    bad.isRefused();
  }

  private static Estimate exact(double value) {
    return Estimate.of(value, 0);
  }

  static Stream<BadInput> air() {
    return Stream.of(
            Stream.of(
                BadInput.of(
                    "DewPoint.margin",
                    "panel",
                    101,
                    () -> DewPoint.margin(exact(101), exact(20), exact(0.5))),
                BadInput.of(
                    "SprayAir.checks",
                    "humidity",
                    85,
                    () -> SprayAir.USUAL.checks(exact(20), exact(20), exact(85))),
                BadInput.of(
                    "SprayAir.leastSure",
                    "air",
                    -46,
                    () -> SprayAir.USUAL.leastSure(exact(-46), exact(20), exact(0.5)))),
            numbers("DewPoint.of", "air", t -> DewPoint.of(t, 0.5), -45.1, 60.1),
            numbers("DewPoint.of", "humidity", h -> DewPoint.of(20, h), 0, -0.1, 1.01),
            numbers("DewPoint.saturation", "temperature", DewPoint::saturation, -45.1, 60.1),
            numbers("DewPoint.humidityFrom", "dry", d -> DewPoint.humidityFrom(d, 10, 101_325), 61),
            numbers(
                "DewPoint.humidityFrom",
                "wet",
                w -> DewPoint.humidityFrom(20, w, 101_325),
                -1,
                20.1),
            numbers(
                "DewPoint.humidityFrom",
                "pressure",
                p -> DewPoint.humidityFrom(20, 15, p),
                49_999,
                110_001),
            numbers("SprayAir.new", "mostHumidity", h -> new SprayAir(ANY, ANY, h, 3), 0, 1.1),
            numbers("SprayAir.new", "leastMargin", m -> new SprayAir(ANY, ANY, 0.8, m), -1),
            numbers("MoistAir.new", "temperature", t -> new MoistAir(t, 0.5), -46, 61),
            numbers("MoistAir.new", "humidity", h -> new MoistAir(20, h), 0, 1))
        .flatMap(s -> s);
  }

  static Stream<BadInput> potLives() {
    PotLife life = new PotLife(4, 20);
    return Stream.of(
            Stream.of(
                BadInput.of(
                    "PotLife.activationThatDoubles",
                    "warm − cold",
                    0,
                    () -> PotLife.activationThatDoubles(20, 20)),
                BadInput.of(
                    "PotLife.activationThatDoubles",
                    "warm − cold",
                    -10,
                    () -> PotLife.activationThatDoubles(30, 20)),
                BadInput.of(
                    "Spell.shareUsed", "spells", 0, () -> Spell.shareUsed(List.of(), t -> 1)),
                BadInput.of(
                    "Spell.shareUsed",
                    "wholeTime",
                    0,
                    () -> Spell.shareUsed(List.of(new Spell(1, 20)), t -> 0))),
            numbers("PotLife.new", "atReference", l -> new PotLife(l, 20), 0, -1),
            numbers("PotLife.new", "reference", t -> new PotLife(4, t), -21, 61),
            numbers(
                "PotLife.halvedPerTenDegrees", "temperature", life::halvedPerTenDegrees, -21, 61),
            numbers("PotLife.byActivation", "temperature", t -> life.byActivation(t, 5e4), -21, 61),
            numbers(
                "PotLife.byActivation", "activationEnergy", e -> life.byActivation(20, e), 0, -1),
            numbers(
                "PotLife.activationThatDoubles",
                "cold",
                c -> PotLife.activationThatDoubles(c, 30),
                -21),
            numbers(
                "PotLife.activationThatDoubles",
                "warm",
                w -> PotLife.activationThatDoubles(20, w),
                61),
            numbers("Spell.new", "seconds", s -> new Spell(s, 20), -1),
            numbers("Spell.new", "temperature", t -> new Spell(1, t), -41, 251))
        .flatMap(s -> s);
  }

  private static DryingCard card(DryingBand... bands) {
    return DryingCard.of("Sheet 1", List.of(bands));
  }

  static Stream<BadInput> drying() {
    DryingBand cool = new DryingBand(10, 20, 60, 120);
    return Stream.of(
            Stream.of(
                BadInput.of("DryingCard.of", "bands", 0, ClimateBadInputTest::card),
                BadInput.of(
                    "TemperatureBands.new", "bands", 0, () -> new TemperatureBands<>(List.of())),
                BadInput.of(
                    "DryingCard.of", "from", 21, () -> card(cool, new DryingBand(21, 30, 60, 120))),
                BadInput.of(
                    "DryingCard.of", "letters of sheet", 0, () -> DryingCard.of("", List.of(cool))),
                BadInput.of(
                    "DryingTime.new", "most", 59, () -> new DryingTime(60, 59, Basis.PRODUCT_CARD)),
                BadInput.of("DryingBand.new", "most", 59, () -> new DryingBand(10, 20, 60, 59)),
                BadInput.of(
                    "DryingTime.new",
                    "most",
                    Double.NaN,
                    () -> new DryingTime(60, Double.NaN, null))),
            numbers("DryingTime.new", "least", l -> new DryingTime(l, 120, Basis.PRODUCT_CARD), -1),
            numbers("TemperatureBands.place", "temperature", t -> card(cool).bands().place(t)),
            numbers("DryingCard.at", "temperature", t -> card(cool).at(t)),
            numbers("TemperatureBands.at", "temperature", t -> card(cool).bands().at(t)),
            numbers("DryingRule.cure", "at", t -> DryingRule.cure(TIME, t, 20), -21, 151),
            numbers("DryingRule.cure", "panel", t -> DryingRule.cure(TIME, 20, t), -21, 151))
        .flatMap(s -> s);
  }

  static Stream<BadInput> lamps() {
    return Stream.of(
            Stream.of(
                BadInput.of("HeatLamp.new", "readings", 0, () -> new HeatLamp(0.8, List.of())),
                BadInput.of(
                    "HeatLamp.new",
                    "at",
                    60,
                    () -> new HeatLamp(0.8, List.of(new Reading(60, 20), new Reading(60, 30)))),
                BadInput.of(
                    "HeatLamp.new",
                    "at",
                    30,
                    () -> new HeatLamp(0.8, List.of(new Reading(60, 20), new Reading(30, 30))))),
            numbers("HeatLamp.new", "distance", d -> new HeatLamp(d, LAMP.readings()), 0.04, 3.1),
            numbers("Reading.new", "at", t -> new Reading(t, 20), -1),
            numbers("Reading.new", "panel", t -> new Reading(0, t), -41, 251),
            numbers("HeatLamp.timeAt", "wanted", LAMP::timeAt, -41, 251),
            numbers("HeatLamp.within", "mostPanel", t -> LAMP.within(ANY, t), -41, 251))
        .flatMap(s -> s);
  }

  @Test
  void no_public_method_that_takes_a_number_is_left_out() {
    BadInput.leavesNoneOut(
        Stream.of(air(), potLives(), drying(), lamps()).flatMap(s -> s),
        PotLife.class,
        "Check.new",
        "TemperatureBands.sureness");
  }

  @Test
  void the_ends_of_the_ranges_are_taken() {
    isTaken(t -> DewPoint.of(t, 1), -45, 60);
    isTaken(DewPoint::saturation, -45, 60);
    isTaken(t -> DewPoint.margin(exact(t), exact(20), exact(0.5)), -45, 100);
    isTaken(w -> DewPoint.humidityFrom(w, w, 101_325), 0, 60);
    isTaken(p -> DewPoint.humidityFrom(20, 19, p), 50_000, 110_000);
    isTaken(h -> new SprayAir(ANY, ANY, h, 0), 1);
    isTaken(t -> new MoistAir(t, 0.5), -45, 60);
    isTaken(t -> new PotLife(4, t).halvedPerTenDegrees(t), -20, 60);
    isTaken(t -> new Spell(0, t), -40, 250);
    isTaken(t -> DryingRule.cure(TIME, t, t), -20, 150);
    isTaken(l -> new DryingTime(l, l, Basis.PRODUCT_CARD), 0);
    isTaken(d -> new HeatLamp(d, LAMP.readings()), 0.05, 3);
    isTaken(t -> new Reading(0, t), -40, 250);
    isTaken(LAMP::timeAt, -40, 250);
    isTaken(t -> LAMP.within(ANY, t), -40, 250);
  }
}
