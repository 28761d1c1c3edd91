package lapline.practice.fit;

/** A pattern of film over the panel, of size about 1 from its least to its most; x, y in metres. */
@FunctionalInterface
interface Shape {
  double at(double x, double y);

  /** Its values at the reading places. */
  default double[] at(double[] x, double[] y) {
    double[] values = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      values[i] = at(x[i], y[i]);
    }
    return values;
  }

  /** Its mean over a panel. */
  default double mean(double width, double height) {
    int columns = 16;
    int rows = 16;
    double sum = 0;
    for (int i = 0; i < columns * rows; i++) {
      sum += at((i % columns + 0.5) / columns * width, (i / columns + 0.5) / rows * height);
    }
    return sum / (columns * rows);
  }
}
