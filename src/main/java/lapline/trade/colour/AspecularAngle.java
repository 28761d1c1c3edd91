package lapline.trade.colour;

/**
 * How far from the mirror angle a flake colour is looked at, light falling in at 45°.
 *
 * <p>ASTM E2194 asks for three (15°, 45°, 110°) and five are better (from memory). Near the mirror
 * angle lies the face of the colour, far from it its flop.
 */
public enum AspecularAngle {
  A15(15),
  A25(25),
  A45(45),
  A75(75),
  A110(110);

  private final int degrees;

  AspecularAngle(int degrees) {
    this.degrees = degrees;
  }

  /** From the mirror angle, towards the light. */
  public int degrees() {
    return degrees;
  }

  /** On which side of square on it lies. */
  public Side side() {
    return this == A45 ? Side.MIDDLE : degrees < 45 ? Side.FACE : Side.FLOP;
  }

  /** Where a painter stands to see it: along the light, square on, or against it. */
  public enum Side {
    FACE,
    MIDDLE,
    FLOP
  }
}
