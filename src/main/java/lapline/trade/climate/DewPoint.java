package lapline.trade.climate;

import java.util.List;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import lapline.trade.measure.Gum.Part;
import lapline.trade.measure.Valid;

/**
 * The temperature at which the air's water settles on a panel, and how far a panel stays above it.
 *
 * <p>Magnus form over water, T_d = B γ / (A − γ) with γ = ln RH + A T / (B + T), A = 17.62 and B =
 * 243.12 °C. Source: WMO-No. 8, Annex 4.B (from memory); other coefficients in use differ by at
 * most 0.04 °C from 5 to 30 °C. Valid for air of −45 to 60 °C.
 */
public final class DewPoint {
  private static final double A = 17.62;
  private static final double B = 243.12;
  private static final double COLDEST = -45;
  private static final double HOTTEST = 60;

  private DewPoint() {}

  /**
   * Dew point, °C.
   *
   * @param air temperature, °C, −45 to 60
   * @param humidity relative, as a share, more than 0, at most 1
   */
  public static double of(double air, double humidity) {
    double gamma = gamma(air, humidity);
    return B * gamma / (A - gamma);
  }

  /** Dew point, °C, uncertainty to first order with analytic slopes, the two independent. */
  public static Estimate of(Estimate air, Estimate humidity) {
    double t = air.value();
    double rh = humidity.value();
    return Gum.combine(
        of(t, rh), List.of(new Part(perAir(t, rh), air), new Part(perHumidity(t, rh), humidity)));
  }

  /**
   * Panel temperature less dew point, K; the usual rule asks for 3 K or more.
   *
   * @param panel surface temperature, °C, −45 to 100
   * @param air °C
   * @param humidity share
   */
  public static Estimate margin(Estimate panel, Estimate air, Estimate humidity) {
    Valid.between("panel", panel.value(), COLDEST, 100);
    return Gum.difference(panel, of(air, humidity));
  }

  /**
   * Pressure of saturated water vapour, Pa; WMO-No. 8 (from memory).
   *
   * @param temperature °C, −45 to 60
   */
  public static double saturation(double temperature) {
    Valid.between("temperature", temperature, COLDEST, HOTTEST);
    return 611.2 * Math.exp(A * temperature / (B + temperature));
  }

  /**
   * Relative humidity, as a share, from a ventilated wet and dry bulb; WMO-No. 8 (from memory).
   *
   * @param dry °C, −45 to 60
   * @param wet °C, not above dry, above freezing
   * @param pressure of the air, Pa, 50 000 to 110 000; 101 325 at sea level
   */
  public static double humidityFrom(double dry, double wet, double pressure) {
    Valid.between("dry", dry, COLDEST, HOTTEST);
    Valid.between("wet", wet, 0, dry);
    Valid.between("pressure", pressure, 50_000, 110_000);
    double vapour = saturation(wet) - 6.53e-4 * (1 + 0.000944 * wet) * pressure * (dry - wet);
    return Valid.share("humidity", vapour / saturation(dry));
  }

  private static double gamma(double air, double humidity) {
    Valid.between("air", air, COLDEST, HOTTEST);
    Valid.share("humidity", humidity);
    return Math.log(humidity) + A * air / (B + air);
  }

  private static double perGamma(double air, double humidity) {
    double left = A - gamma(air, humidity);
    return A * B / (left * left);
  }

  private static double perAir(double air, double humidity) {
    return perGamma(air, humidity) * A * B / ((B + air) * (B + air));
  }

  private static double perHumidity(double air, double humidity) {
    return perGamma(air, humidity) / humidity;
  }
}
