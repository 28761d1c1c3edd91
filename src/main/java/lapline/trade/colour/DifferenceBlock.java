package lapline.trade.colour;

/**
 * CIEDE2000 of a block of pairs, worked through in short passes without a branch, which a processor
 * takes several pairs at a time; formula and names as in {@link Ciede2000}, with fewer divisions.
 *
 * <p>A pair with a grey, or whose hues lie a quarter turn and more apart, has to be taken by
 * itself: {@link #isFit} is false then and its difference means nothing.
 */
final class DifferenceBlock {
  /** All arrays of a block together stay in a core's first cache, which 512 pairs overflow. */
  static final int SIZE = 256;

  private static final double CHROMA_25_TO_7 = Math.pow(25, 7);

  private final BlueTwist.Block blues = new BlueTwist.Block();
  private final HueTerm.Block hueTerm = new HueTerm.Block();
  private final double[] l1 = new double[SIZE];
  private final double[] a1 = new double[SIZE];
  private final double[] b1 = new double[SIZE];
  private final double[] l2 = new double[SIZE];
  private final double[] a2 = new double[SIZE];
  private final double[] b2 = new double[SIZE];
  private final double[] c1 = new double[SIZE];
  private final double[] c2 = new double[SIZE];
  private final double[] chroma = new double[SIZE];
  private final double[] saturation = new double[SIZE];
  private final double[] fit = new double[SIZE];
  private final double[] perLength = new double[SIZE];
  private final double[] cos = new double[SIZE];
  private final double[] sin = new double[SIZE];
  private final double[] step = new double[SIZE];
  private final double[] perHue = new double[SIZE];
  private final double[] crossed = new double[SIZE];
  private final double[] perLightness = new double[SIZE];
  private final double[] size = new double[SIZE];

  void put(int at, Lab first, Lab second) {
    l1[at] = first.lightness();
    a1[at] = first.a();
    b1[at] = first.b();
    l2[at] = second.lightness();
    a2[at] = second.a();
    b2[at] = second.b();
  }

  /** The first {@code n} pairs that were put. */
  void work(int n) {
    chromas(n);
    saturations(chroma, saturation, n);
    stretch(saturation, a1, n);
    stretch(saturation, a2, n);
    chromas(n);
    turns(n);
    hueTerm.at(cos, sin, perHue, n);
    perHue(chroma, perHue, n);
    blues.sines(cos, sin, crossed, n);
    saturations(chroma, saturation, n);
    sizes(n);
  }

  boolean isFit(int at) {
    return fit[at] > 0;
  }

  double difference(int at) {
    return size[at];
  }

  private void chromas(int n) {
    lengths(a1, b1, c1, n);
    lengths(a2, b2, c2, n);
    means(c1, c2, chroma, n);
  }

  private static void lengths(double[] a, double[] b, double[] c, int n) {
    for (int i = 0; i < n; i++) {
      c[i] = Math.sqrt(a[i] * a[i] + b[i] * b[i]);
    }
  }

  private static void means(double[] c1, double[] c2, double[] mean, int n) {
    for (int i = 0; i < n; i++) {
      mean[i] = (c1[i] + c2[i]) / 2;
    }
  }

  private static void saturations(double[] chroma, double[] saturation, int n) {
    for (int i = 0; i < n; i++) {
      double squared = chroma[i] * chroma[i];
      double seventh = squared * squared * squared * chroma[i];
      saturation[i] = Math.sqrt(seventh / (seventh + CHROMA_25_TO_7));
    }
  }

  private static void stretch(double[] saturation, double[] a, int n) {
    for (int i = 0; i < n; i++) {
      a[i] = (1 + 0.5 * (1 - saturation[i])) * a[i];
    }
  }

  private void turns(int n) {
    turns(a1, b1, a2, b2, c1, c2, fit, perLength, n);
    middles(a1, a2, c1, c2, perLength, cos, n);
    middles(b1, b2, c1, c2, perLength, sin, n);
    steps(a1, b1, a2, b2, c1, c2, perLength, step, n);
  }

  /** Both drawn to one distance from grey add up to a length of √(2p(p + d)), p = C₁C₂, d inner. */
  private static void turns(
      double[] a1,
      double[] b1,
      double[] a2,
      double[] b2,
      double[] c1,
      double[] c2,
      double[] fit,
      double[] perLength,
      int n) {
    for (int i = 0; i < n; i++) {
      double product = c1[i] * c2[i];
      double inner = a1[i] * a2[i] + b1[i] * b2[i];
      fit[i] = Math.min(inner, product - HuePair.GREY);
      perLength[i] = Math.sqrt(0.5 / (product * (product + inner)));
    }
  }

  private static void middles(
      double[] x1,
      double[] x2,
      double[] c1,
      double[] c2,
      double[] perLength,
      double[] middle,
      int n) {
    for (int i = 0; i < n; i++) {
      middle[i] = (x1[i] * c2[i] + x2[i] * c1[i]) * perLength[i];
    }
  }

  private static void steps(
      double[] a1,
      double[] b1,
      double[] a2,
      double[] b2,
      double[] c1,
      double[] c2,
      double[] perLength,
      double[] step,
      int n) {
    for (int i = 0; i < n; i++) {
      double across = a1[i] * b2[i] - a2[i] * b1[i];
      step[i] = 2 * Math.sqrt(c1[i] * c2[i]) * across * perLength[i];
    }
  }

  private static void perHue(double[] chroma, double[] term, int n) {
    for (int i = 0; i < n; i++) {
      term[i] = 1 + 0.015 * chroma[i] * term[i];
    }
  }

  private void sizes(int n) {
    cross(saturation, crossed, n);
    lightness(l1, l2, perLightness, size, n);
    sizes(perLightness, chroma, perHue, c1, c2, step, crossed, size, n);
    common(perLightness, chroma, perHue, size, n);
  }

  private static void cross(double[] saturation, double[] crossed, int n) {
    for (int i = 0; i < n; i++) {
      crossed[i] *= -2 * saturation[i];
    }
  }

  private static void lightness(double[] l1, double[] l2, double[] per, double[] step, int n) {
    for (int i = 0; i < n; i++) {
      double off = (l1[i] + l2[i]) / 2 - 50;
      double root = Math.sqrt(20 + off * off);
      per[i] = root + 0.015 * (off * off);
      step[i] = (l2[i] - l1[i]) * root;
    }
  }

  private static void sizes(
      double[] perLightness,
      double[] chroma,
      double[] perHue,
      double[] c1,
      double[] c2,
      double[] step,
      double[] crossed,
      double[] size,
      int n) {
    for (int i = 0; i < n; i++) {
      double perChroma = 1 + 0.045 * chroma[i];
      double l = size[i] * (perChroma * perHue[i]);
      double c = (c2[i] - c1[i]) * (perHue[i] * perLightness[i]);
      double h = step[i] * (perChroma * perLightness[i]);
      size[i] = Math.sqrt(Math.max(0, l * l + c * c + h * h + crossed[i] * c * h));
    }
  }

  /** One division for all three parts. */
  private static void common(
      double[] perLightness, double[] chroma, double[] perHue, double[] size, int n) {
    for (int i = 0; i < n; i++) {
      size[i] /= perLightness[i] * (1 + 0.045 * chroma[i]) * perHue[i];
    }
  }
}
