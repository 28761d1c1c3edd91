package lapline.trade.finish;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import lapline.trade.measure.MeasureException;

/**
 * Abrasive grades of the P scale with the median size of their grains; not CAMI numbers, where 400
 * is about P800.
 *
 * <p>Source: P240 to P2500 ISO 6344-3:1998/2013 (FEPA 43-2), with the tolerance of the median; P80
 * to P220 the rounded sizes of FEPA 43-1, whose tolerance is set by sieves instead; both from
 * memory. P3000 is left out, for no published size of it was at hand. How deep a grade scratches
 * has no citable relation; the size only ranks it.
 */
public enum Abrasive {
  P80(80, 201),
  P100(100, 162),
  P120(120, 125),
  P150(150, 100),
  P180(180, 82),
  P220(220, 68),
  P240(240, 58.5, 2),
  P280(280, 52.2, 2),
  P320(320, 46.2, 1.5),
  P360(360, 40.5, 1.5),
  P400(400, 35.0, 1.5),
  P500(500, 30.2, 1.5),
  P600(600, 25.8, 1),
  P800(800, 21.8, 1),
  P1000(1000, 18.3, 1),
  P1200(1200, 15.3, 1),
  P1500(1500, 12.6, 1),
  P2000(2000, 10.3, 0.8),
  P2500(2500, 8.4, 0.5);

  private final int grade;
  private final double micrometres;
  private final double tolerance;

  Abrasive(int grade, double micrometres) {
    this(grade, micrometres, Double.NaN);
  }

  Abrasive(int grade, double micrometres, double tolerance) {
    this.grade = grade;
    this.micrometres = micrometres;
    this.tolerance = tolerance;
  }

  /** The number after the P. */
  public int grade() {
    return grade;
  }

  /** Median size of the grains, metres. */
  public double grainSize() {
    return micrometres * 1e-6;
  }

  /** How far the median may stray either way, metres; empty for the grades that are sieved. */
  public OptionalDouble tolerance() {
    return Double.isNaN(tolerance) ? OptionalDouble.empty() : OptionalDouble.of(tolerance * 1e-6);
  }

  /** The abrasive of a grade; empty where the scale has no such grade. */
  public static Optional<Abrasive> ofGrade(double grade) {
    return Arrays.stream(values()).filter(a -> a.grade == grade).findFirst();
  }

  /**
   * @throws MeasureException where the scale has no such grade
   */
  public static Abrasive require(double grade) {
    return ofGrade(grade)
        .orElseThrow(() -> new MeasureException("grade", grade, "a grade from P80 to P2500"));
  }
}
