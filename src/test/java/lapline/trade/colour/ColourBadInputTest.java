package lapline.trade.colour;

import static lapline.trade.BadInput.isTaken;
import static lapline.trade.BadInput.numbers;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lapline.trade.BadInput;
import org.junit.jupiter.api.Test;
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
            numbers("Lab.new", "L*", l -> new Lab(l, 0, 0), -0.1),
            numbers("Lab.new", "a*", a -> new Lab(50, a, 0)),
            numbers("Lab.new", "b*", b -> new Lab(50, 0, b)),
            numbers("Xyz.new", "X", x -> new Xyz(x, 1, 1), -0.1),
            numbers("Xyz.new", "Y", y -> new Xyz(1, y, 1), -0.1),
            numbers("Xyz.new", "Z", z -> new Xyz(1, 1, z), -0.1),
            Stream.of(
                BadInput.of("White.new", "observer", 5, () -> new White("E", 5, new Xyz(1, 1, 1))),
                BadInput.of("White.new", "white X", 0, () -> new White("E", 2, new Xyz(0, 1, 1))),
                BadInput.of("White.new", "white Y", 0, () -> new White("E", 2, new Xyz(1, 0, 1))),
                BadInput.of("White.new", "white Z", 0, () -> new White("E", 2, new Xyz(1, 1, 0)))),
            numbers("Cmc.new", "l", l -> new Cmc(l, 1), 0, -1),
            numbers("Cmc.new", "c", c -> new Cmc(1, c), 0, -1),
            numbers("ReaderError.new", "lightness", l -> new ReaderError(l, 0.1), -0.1),
            numbers("ReaderError.new", "colour", c -> new ReaderError(0.1, c), -0.1),
            numbers("MatchLimits.new", "butted", b -> new MatchLimits(b, 3), 0, -1),
            numbers("MatchLimits.new", "blended", b -> new MatchLimits(1, b), 0, -1, 0.99),
            Stream.of(0, -1)
                .map(n -> BadInput.of("ReaderError.ofMean", "readings", n, () -> ERROR.ofMean(n))))
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
        BadInput.of("AngleSet.new", "colours.size", 0, () -> new AngleSet(White.D65_10, Map.of())),
        BadInput.of(
            "AngleSet.flopIndex", "L*15 - L*110", -10, () -> lightnesses(40, 45, 50).flopIndex()),
        BadInput.of("AngleSet.flopIndex", "L*45", 0, () -> lightnesses(40, 0, 30).flopIndex()),
        BadInput.of(
            "ColourDifferences.of",
            "second.size",
            1,
            () -> ColourDifferences.of(List.of(), List.of(GREY))),
        BadInput.of(
            "CardJudgement.of",
            "card white X",
            95.047,
            () -> judge(one, set(White.D65_2, AspecularAngle.A45))),
        BadInput.of(
            "CardJudgement.of",
            "card angles",
            2,
            () -> judge(one, set(White.D65_10, AspecularAngle.A45, AspecularAngle.A15))));
  }

  @Test
  void no_public_method_that_takes_a_number_is_left_out() {
    BadInput.leavesNoneOut(
        Stream.of(colours(), sets()).flatMap(s -> s),
        Lab.class,
        "AtAngle.new",
        "CardJudgement.new",
        "ColourMove.new");
  }

  @Test
  void the_ends_of_the_ranges_are_taken() {
    isTaken(l -> new Lab(l, l, l), 0);
    isTaken(x -> new Xyz(x, x, x), 0);
    isTaken(e -> new ReaderError(e, e), 0);
    isTaken(n -> ERROR.ofMean((int) n), 1);
    isTaken(b -> new MatchLimits(b, b), 1);
    isTaken(o -> new White("D65", (int) o, White.D65_10.perfect()), 2, 10);
  }
}
