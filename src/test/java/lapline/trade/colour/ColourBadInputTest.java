package lapline.trade.colour;

import static lapline.trade.BadInput.numbers;

import java.util.Map;
import java.util.stream.Stream;
import lapline.trade.BadInput;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ColourBadInputTest {
  private static final Lab GREY = new Lab(50, 0, 0);
  private static final ReaderError ERROR = new ReaderError(0.1, 0.1);

  @ParameterizedTest(name = "{0}")
  @MethodSource({"colours", "sets"})
  void what_no_colour_can_be_is_refused_by_name(BadInput bad) {
    bad.isRefused();
  }

  static Stream<BadInput> colours() {
    return Stream.of(
            numbers("Lab", "L*", l -> new Lab(l, 0, 0), -0.1),
            numbers("Lab", "a*", a -> new Lab(50, a, 0)),
            numbers("Lab", "b*", b -> new Lab(50, 0, b)),
            numbers("Xyz", "X", x -> new Xyz(x, 1, 1), -0.1),
            numbers("Xyz", "Y", y -> new Xyz(1, y, 1), -0.1),
            numbers("Xyz", "Z", z -> new Xyz(1, 1, z), -0.1),
            Stream.of(
                BadInput.of("white", "observer", 5, () -> new White("E", 5, new Xyz(1, 1, 1))),
                BadInput.of("white", "white X", 0, () -> new White("E", 2, new Xyz(0, 1, 1))),
                BadInput.of("white", "white Y", 0, () -> new White("E", 2, new Xyz(1, 0, 1))),
                BadInput.of("white", "white Z", 0, () -> new White("E", 2, new Xyz(1, 1, 0)))),
            numbers("Cmc", "l", l -> new Cmc(l, 1), 0, -1),
            numbers("Cmc", "c", c -> new Cmc(1, c), 0, -1),
            numbers("error", "lightness", l -> new ReaderError(l, 0.1), -0.1),
            numbers("error", "colour", c -> new ReaderError(0.1, c), -0.1),
            numbers("limits", "butted", b -> new MatchLimits(b, 3), 0, -1),
            numbers("limits", "blended", b -> new MatchLimits(1, b), 0, -1, 0.99),
            Stream.of(0, -1).map(n -> BadInput.of("mean", "readings", n, () -> ERROR.ofMean(n))))
        .flatMap(s -> s);
  }

  private static AngleSet set(White white, AspecularAngle... angles) {
    Map<AspecularAngle, Lab> colours = new java.util.EnumMap<>(AspecularAngle.class);
    for (AspecularAngle angle : angles) {
      colours.put(angle, GREY);
    }
    return new AngleSet(white, colours);
  }

  private static AngleSet lightnesses(double l15, double l45, double l110) {
    return new AngleSet(
        White.D65_10,
        Map.of(
            AspecularAngle.A15, new Lab(l15, 0, 0),
            AspecularAngle.A45, new Lab(l45, 0, 0),
            AspecularAngle.A110, new Lab(l110, 0, 0)));
  }

  private static void judge(AngleSet panel, AngleSet card) {
    CardJudgement.of(panel, card, ERROR, ERROR, MatchLimits.COURSE);
  }

  static Stream<BadInput> sets() {
    AngleSet one = set(White.D65_10, AspecularAngle.A45);
    return Stream.of(
        BadInput.of("set", "colours.size", 0, () -> new AngleSet(White.D65_10, Map.of())),
        BadInput.of("flop", "L*15 - L*110", -10, () -> lightnesses(40, 45, 50).flopIndex()),
        BadInput.of("flop", "L*45", 0, () -> lightnesses(40, 0, 30).flopIndex()),
        BadInput.of(
            "mixed whites",
            "card white X",
            95.047,
            () -> judge(one, set(White.D65_2, AspecularAngle.A45))),
        BadInput.of(
            "other angles",
            "card angles",
            2,
            () -> judge(one, set(White.D65_10, AspecularAngle.A45, AspecularAngle.A15))));
  }
}
