package lapline.trade.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers as figures: rounded half to even (ISO 80000-1:2009, B.3 rule A), with a point as decimal
 * mark in every language.
 */
final class Figures {
  /** Binary noise of a unit conversion lies below this many figures, what people type above. */
  private static final MathContext TRUE_FIGURES = new MathContext(12, RoundingMode.HALF_EVEN);

  private static final int MOST_PLACES = 9;

  private Figures() {}

  /**
   * At so many decimals, more where the number would lose its second figure, without idle noughts.
   */
  static String shortly(double value, int places) {
    int needed = value == 0 ? places : Math.max(places, 1 - exponent(value));
    return plain(exact(value).setScale(Math.min(MOST_PLACES, needed), RoundingMode.HALF_EVEN));
  }

  /** To so many significant figures, without idle noughts. */
  static String significant(double value, int figures) {
    return plain(exact(value).round(new MathContext(figures, RoundingMode.HALF_EVEN)));
  }

  /**
   * Rounded at a decimal place and padded to it; a place below 0 rounds to tens, hundreds and so
   * on.
   */
  static String at(double value, int place) {
    BigDecimal rounded = exact(value).setScale(place, RoundingMode.HALF_EVEN);
    return rounded.setScale(Math.max(0, place), RoundingMode.UNNECESSARY).toPlainString();
  }

  /**
   * The decimal place an expanded uncertainty is given to: its second figure where the first is 1
   * or 2, otherwise its first (JCGM 100:2008, 7.2.6: at most two figures).
   *
   * @param uncertainty more than 0, finite
   */
  static int placeOf(double uncertainty) {
    BigDecimal two = exact(uncertainty).round(new MathContext(2, RoundingMode.HALF_EVEN));
    int exponent = two.precision() - two.scale() - 1;
    boolean second = two.unscaledValue().toString().charAt(0) < '3';
    return Math.min(MOST_PLACES, second ? 1 - exponent : -exponent);
  }

  private static int exponent(double value) {
    BigDecimal exact = exact(value);
    return exact.precision() - exact.scale() - 1;
  }

  private static BigDecimal exact(double value) {
    return new BigDecimal(value).round(TRUE_FIGURES);
  }

  private static String plain(BigDecimal number) {
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }
}
