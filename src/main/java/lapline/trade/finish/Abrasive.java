package lapline.trade.finish;

import java.util.Arrays;
import java.util.Optional;
import lapline.trade.measure.MeasureException;

/**
 * Abrasive grades of the P scale with the median size of their grains; not CAMI numbers, where 400
 * is about P800.
 *
 * <p>Source: P240 to P2500 ISO 6344-3 (FEPA 43-2), P80 to P220 the rounded sizes of FEPA 43-1; both
 * from memory. How deep a grade scratches has no citable relation; the size only ranks it.
 */
public enum Abrasive {
  P80(80, 201),
  P100(100, 162),
  P120(120, 125),
  P150(150, 100),
  P180(180, 82),
  P220(220, 68),
  P240(240, 58.5),
  P280(280, 52.2),
  P320(320, 46.2),
  P360(360, 40.5),
  P400(400, 35.0),
  P500(500, 30.2),
  P600(600, 25.8),
  P800(800, 21.8),
  P1000(1000, 18.3),
  P1200(1200, 15.3),
  P1500(1500, 12.6),
  P2000(2000, 10.3),
  P2500(2500, 8.4);

  private final int grade;
  private final double micrometres;

  Abrasive(int grade, double micrometres) {
    this.grade = grade;
    this.micrometres = micrometres;
  }

  /** The number after the P. */
  public int grade() {
    return grade;
  }

  /** Median size of the grains, metres. */
  public double grainSize() {
    return micrometres * 1e-6;
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
