package lapline.trade.colour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import lapline.trade.colour.AspecularAngle.Side;

/**
 * One way in which a card has to go to meet its panel, on one side of the colour.
 *
 * @param side where it is seen
 * @param direction what the card has to become there
 * @param amount how far, in L*, a* or b*, more than 0
 * @param uncertainty standard uncertainty of the amount
 * @param seen the same in steps as seen
 */
public record ColourMove(
    Side side, Direction direction, double amount, double uncertainty, double seen) {

  /** Nothing is said of a part that no eye sees by itself. */
  private static final double LEAST_SEEN = 0.3;

  /** Nothing is said of what the reader may only have made up. */
  private static final double SURE = 2;

  /** What a card can become. */
  public enum Direction {
    LIGHTER,
    DARKER,
    REDDER,
    GREENER,
    YELLOWER,
    BLUER
  }

  /** One coordinate: what is read of it, with what error, and the names of its two directions. */
  private record Axis(
      ToDoubleFunction<Lab> coordinate,
      ToDoubleFunction<ReaderError> error,
      BiFunction<Lab, Double, Lab> replaced,
      Direction more,
      Direction less) {}

  private static final List<Axis> AXES =
      List.of(
          new Axis(
              Lab::lightness,
              ReaderError::lightness,
              (c, l) -> new Lab(l, c.a(), c.b()),
              Direction.LIGHTER,
              Direction.DARKER),
          new Axis(
              Lab::a,
              ReaderError::colour,
              (c, a) -> new Lab(c.lightness(), a, c.b()),
              Direction.REDDER,
              Direction.GREENER),
          new Axis(
              Lab::b,
              ReaderError::colour,
              (c, b) -> new Lab(c.lightness(), c.a(), b),
              Direction.YELLOWER,
              Direction.BLUER));

  /** From a card to its panel, the most visible first; the angles of one side are averaged. */
  static List<ColourMove> from(AngleSet card, AngleSet panel, ReaderError error) {
    Map<Side, List<AspecularAngle>> sides =
        card.colours().keySet().stream().collect(Collectors.groupingBy(AspecularAngle::side));
    List<ColourMove> moves = new ArrayList<>();
    sides.forEach(
        (side, angles) -> {
          for (Axis axis : AXES) {
            ColourMove move = along(axis, side, angles, card, panel, error);
            if (move.isWorthSaying()) {
              moves.add(move);
            }
          }
        });
    moves.sort(Comparator.comparingDouble(ColourMove::seen).reversed());
    return moves;
  }

  /** Steps one way at one angle and as far the other way at the next leave nothing to say. */
  private boolean isWorthSaying() {
    return amount > 0 && seen >= LEAST_SEEN && amount >= SURE * uncertainty;
  }

  private static ColourMove along(
      Axis axis,
      Side side,
      List<AspecularAngle> angles,
      AngleSet card,
      AngleSet panel,
      ReaderError error) {
    double sum = 0;
    double seen = 0;
    for (AspecularAngle angle : angles) {
      Lab from = card.colours().get(angle);
      double to = axis.coordinate.applyAsDouble(panel.colours().get(angle));
      double step = to - axis.coordinate.applyAsDouble(from);
      sum += step;
      seen += Math.signum(step) * Ciede2000.of(from, axis.replaced.apply(from, to));
    }
    int n = angles.size();
    return new ColourMove(
        side,
        sum > 0 ? axis.more : axis.less,
        Math.abs(sum / n),
        axis.error.applyAsDouble(error) / Math.sqrt(n),
        Math.abs(seen / n));
  }
}
