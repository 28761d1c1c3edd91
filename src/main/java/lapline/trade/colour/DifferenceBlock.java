package lapline.trade.colour;

/**
 * CIEDE2000 of a block of pairs, worked through in short passes without a branch, which a processor
 * takes several pairs at a time; formula and names as in {@link Ciede2000}, with fewer divisions
 * and roots. What is least or most of two numbers is not asked in a pass, for that takes as long as
 * a root.
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
  private final double[] product = new double[SIZE];
  private final double[] inner = new double[SIZE];
  private final double[] doubled = new double[SIZE];
  private final double[] perBoth = new double[SIZE];
  private final double[] perLength = new double[SIZE];
  private final double[] cos = new double[SIZE];
  private final double[] sin = new double[SIZE];
  private final double[] turn = new double[SIZE];
  private final double[] perHue = new double[SIZE];
  private final double[] crossed = new double[SIZE];
  private final double[] perLightness = new double[SIZE];
  private final double[] size = new double[SIZE];

  /** The chroma is worked out here, pair by pair, while a core waits for the next ones to come. */
  void put(int at, Lab first, Lab second) {
    l1[at] = first.lightness();
    a1[at] = first.a();
    b1[at] = first.b();
    l2[at] = second.lightness();
    a2[at] = second.a();
    b2[at] = second.b();
    chroma[at] = (length(first) + length(second)) / 2;
  }

  private static double length(Lab colour) {
    return Ciede2000.length(colour.a(), colour.b());
  }

  /** The first {@code n} pairs that were put. */
  void work(int n) {
    saturations(chroma, saturation, n);
    stretch(saturation, a1, a2, n);
    chromas(n);
    turns(n);
    hueTerm.at(cos, sin, perHue, n);
    perHue(chroma, perHue, n);
    blues.sines(cos, sin, crossed, n);
    crossed(product, chroma, doubled, perBoth, crossed, n);
    sizes(n);
  }

  boolean isFit(int at) {
    return inner[at] > 0 && product[at] > HuePair.GREY;
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
      double seventh = seventh(chroma[i]);
      saturation[i] = Math.sqrt(seventh / (seventh + CHROMA_25_TO_7));
    }
  }

  private static double seventh(double chroma) {
    double squared = chroma * chroma;
    return squared * squared * squared * chroma;
  }

  private static void stretch(double[] saturation, double[] a1, double[] a2, int n) {
    for (int i = 0; i < n; i++) {
      double stretch = 1 + 0.5 * (1 - saturation[i]);
      a1[i] *= stretch;
      a2[i] *= stretch;
    }
  }

  private void turns(int n) {
    products(c1, c2, product, n);
    inner(a1, b1, a2, b2, inner, n);
    doubled(product, inner, doubled, n);
    perBoth(doubled, chroma, perBoth, n);
    perLength(perBoth, chroma, perLength, n);
    middles(a1, a2, c1, c2, perLength, cos, n);
    middles(b1, b2, c1, c2, perLength, sin, n);
    across(a1, b1, a2, b2, turn, n);
    turns(perLength, turn, n);
  }

  private static void products(double[] c1, double[] c2, double[] product, int n) {
    for (int i = 0; i < n; i++) {
      product[i] = c1[i] * c2[i];
    }
  }

  private static void inner(
      double[] a1, double[] b1, double[] a2, double[] b2, double[] inner, int n) {
    for (int i = 0; i < n; i++) {
      inner[i] = a1[i] * a2[i] + b1[i] * b2[i];
    }
  }

  /** Both drawn to one distance from grey add up to a length of √(2p(p + d)), p = C₁C₂, d inner. */
  private static void doubled(double[] product, double[] inner, double[] doubled, int n) {
    for (int i = 0; i < n; i++) {
      doubled[i] = product[i] * (product[i] + inner[i]);
    }
  }

  /** One division for that length and for the saturation. */
  private static void perBoth(double[] doubled, double[] chroma, double[] per, int n) {
    for (int i = 0; i < n; i++) {
      per[i] = 1 / (doubled[i] * (seventh(chroma[i]) + CHROMA_25_TO_7));
    }
  }

  private static void perLength(double[] perBoth, double[] chroma, double[] perLength, int n) {
    for (int i = 0; i < n; i++) {
      perLength[i] = Math.sqrt(0.5 * perBoth[i] * (seventh(chroma[i]) + CHROMA_25_TO_7));
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

  private static void across(
      double[] a1, double[] b1, double[] a2, double[] b2, double[] across, int n) {
    for (int i = 0; i < n; i++) {
      across[i] = a1[i] * b2[i] - a2[i] * b1[i];
    }
  }

  /** 2 sin(Δh/2), which makes ΔH′ with a root of the product that is left out until the end. */
  private static void turns(double[] perLength, double[] turn, int n) {
    for (int i = 0; i < n; i++) {
      turn[i] *= 2 * perLength[i];
    }
  }

  private static void perHue(double[] chroma, double[] term, int n) {
    for (int i = 0; i < n; i++) {
      term[i] = 1 + 0.015 * chroma[i] * term[i];
    }
  }

  private void sizes(int n) {
    lightness(l1, l2, perLightness, size, n);
    scaleLightness(chroma, perHue, size, n);
    scaleChroma(c1, c2, perHue, perLightness, n);
    scaleHue(chroma, perLightness, turn, n);
    lengths(c2, turn, product, crossed, size, n);
    common(perLightness, chroma, perHue, size, n);
  }

  /** R_T, from the twist of the blues, with the root that makes ΔH′ of a turn. */
  private static void crossed(
      double[] product,
      double[] chroma,
      double[] doubled,
      double[] perBoth,
      double[] crossed,
      int n) {
    for (int i = 0; i < n; i++) {
      double saturation = seventh(chroma[i]) * (doubled[i] * perBoth[i]);
      crossed[i] *= -2 * Math.sqrt(product[i] * saturation);
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

  /** Each part times the weighting functions of the other two. */
  private static void scaleLightness(double[] chroma, double[] perHue, double[] part, int n) {
    for (int i = 0; i < n; i++) {
      part[i] *= (1 + 0.045 * chroma[i]) * perHue[i];
    }
  }

  private static void scaleChroma(
      double[] c1, double[] c2, double[] perHue, double[] perLightness, int n) {
    for (int i = 0; i < n; i++) {
      c2[i] = (c2[i] - c1[i]) * (perHue[i] * perLightness[i]);
    }
  }

  private static void scaleHue(double[] chroma, double[] perLightness, double[] part, int n) {
    for (int i = 0; i < n; i++) {
      part[i] *= (1 + 0.045 * chroma[i]) * perLightness[i];
    }
  }

  /** The sum is never below 0, for |R_T| stays below 2. */
  private static void lengths(
      double[] c, double[] turn, double[] product, double[] crossed, double[] size, int n) {
    for (int i = 0; i < n; i++) {
      double squared = size[i] * size[i] + c[i] * c[i];
      size[i] = Math.sqrt(squared + turn[i] * (product[i] * turn[i] + crossed[i] * c[i]));
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
