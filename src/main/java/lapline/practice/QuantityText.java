package lapline.practice;

import java.util.Locale;
import java.util.Optional;
import lapline.content.YamlNode;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.QuantityReader;
import lapline.trade.measure.ReadQuantity;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Unit;
import lapline.trade.measure.UnitSystem;

/** Quantities in course files, which must name their unit: {@code 50 um}, {@code 3 to 5 in}. */
final class QuantityText {
  private QuantityText() {}

  /** One quantity in SI; NaN and a problem at the node when it cannot be read. */
  static double value(YamlNode node, Dimension dimension) {
    String text = node.text();
    if (QuantityReader.read(text, dimension, UnitSystem.METRIC) instanceof ReadQuantity.Understood u
        && namesUnit(text, dimension)) {
      return u.si();
    }
    complain(node, text, dimension);
    return Double.NaN;
  }

  /** A range in SI; empty and a problem at the node when it cannot be read. */
  static Optional<TargetRange> range(YamlNode node, Dimension dimension) {
    String text = node.text();
    Optional<TargetRange> range = TargetText.read(text, dimension, UnitSystem.METRIC);
    if (range.isEmpty() || !namesUnit(text, dimension)) {
      complain(node, text, dimension);
      return Optional.empty();
    }
    return range;
  }

  private static void complain(YamlNode node, String text, Dimension dimension) {
    String kind = dimension.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    String units = QuantityReader.symbols(dimension);
    node.problem(
        "'" + text + "' is no " + kind,
        units.isEmpty()
            ? "write a number, or a range like '1 to 3' or 'at least 1'"
            : "write '3 to 5', 'at least 3' or '3' with one of the units " + units);
  }

  private static boolean namesUnit(String text, Dimension dimension) {
    boolean needsOne = !Unit.preferred(dimension, UnitSystem.METRIC).symbol().isEmpty();
    return !needsOne || !TargetText.isBare(text);
  }
}
