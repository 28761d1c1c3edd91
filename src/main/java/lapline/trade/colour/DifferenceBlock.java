package lapline.trade.colour;

import java.util.ArrayList;
import java.util.List;

/**
 * CIEDE2000 of a block of pairs, worked through in {@linkplain Pass passes}; formula and names as
 * in {@link Ciede2000}, with fewer divisions and roots. These take most of the time, and what else
 * stands in the same pass costs next to nothing, as long as the loop stays short enough. What is
 * least or most of two numbers is not asked in a pass, for that takes as long as a root.
 *
 * <p>A pair with a grey, or whose hues lie a quarter turn and more apart, has to be taken by
 * itself: {@link #isFit} is false then and its difference means nothing.
 */
final class DifferenceBlock {
  /** All rows of a block together stay in a core's first cache, which 512 pairs overflow. */
  static final int SIZE = 256;

  /** With so many more a row is whole lines of a cache, and all rows begin alike in theirs. */
  private static final int SPARE = 6;

  private static final double CHROMA_25_TO_7 = Math.pow(25, 7);

  private final double[] a1 = row();
  private final double[] b1 = row();
  private final double[] a2 = row();
  private final double[] b2 = row();
  private final double[] c1 = row();
  private final double[] c2 = row();
  private final double[] chroma = row();
  private final double[] product = row();
  private final double[] inner = row();
  private final double[] saturation = row();
  private final double[] perLength = row();
  private final double[] cos = row();
  private final double[] sin = row();
  private final double[] turn = row();
  private final double[] crossed = row();
  private final double[] perLightness = row();
  private final double[] perHue = row();
  private final double[] size = row();
  private final List<Pass> passes = passes();

  /** One number for each pair. */
  static double[] row() {
    return new double[SIZE + SPARE];
  }

  private List<Pass> passes() {
    List<Pass> all = new ArrayList<>();
    all.add(n -> stretch(chroma, a1, a2, n));
    all.add(n -> chromas(a1, b1, c1, n));
    all.add(n -> chromas(a2, b2, c1, c2, chroma, product, n));
    all.add(n -> inner(a1, b1, a2, b2, inner, n));
    all.add(n -> perLength(product, inner, chroma, saturation, perLength, n));
    all.add(n -> middles(a1, a2, c1, c2, perLength, cos, n));
    all.add(n -> middles(b1, b2, c1, c2, perLength, sin, n));
    all.add(n -> turns(a1, b1, a2, b2, perLength, turn, n));
    all.add(n -> HueTerm.perHue(cos, sin, chroma, perHue, n));
    all.addAll(new BlueTwist.Block().passes(cos, sin, product, saturation, crossed));
    all.add(n -> scale(chroma, perHue, perLightness, c1, c2, turn, n));
    all.add(n -> weigh(chroma, perHue, perLightness, size, n));
    all.add(n -> sizes(c2, turn, product, crossed, perLightness, size, n));
    return all;
  }

  /** Three roots are worked out here, pair by pair, while a core waits for colours to come. */
  void put(int at, Lab first, Lab second) {
    a1[at] = first.a();
    b1[at] = first.b();
    a2[at] = second.a();
    b2[at] = second.b();
    chroma[at] = (length(first) + length(second)) / 2;
    double off = (first.lightness() + second.lightness()) / 2 - 50;
    double root = Math.sqrt(20 + off * off);
    perLightness[at] = root + 0.015 * (off * off);
    size[at] = (second.lightness() - first.lightness()) * root;
  }

  private static double length(Lab colour) {
    return Ciede2000.length(colour.a(), colour.b());
  }

  /** The first {@code n} pairs that were put. */
  void work(int n) {
    for (Pass pass : passes) {
      pass.over(n);
    }
  }

  /** An inner product so large is not larger than that of the chromas, so there is no grey. */
  boolean isFit(int at) {
    return inner[at] > HuePair.GREY;
  }

  void copyDifferences(double[] target, int from, int n) {
    System.arraycopy(size, 0, target, from, n);
  }

  private static double seventh(double chroma) {
    double squared = chroma * chroma;
    return squared * squared * squared * chroma;
  }

  private static void stretch(double[] chroma, double[] a1, double[] a2, int n) {
    for (int i = 0; i < n; i++) {
      double seventh = seventh(chroma[i]);
      double stretch = 1.5 - 0.5 * Math.sqrt(seventh / (seventh + CHROMA_25_TO_7));
      a1[i] *= stretch;
      a2[i] *= stretch;
    }
  }

  private static void chromas(double[] a, double[] b, double[] c, int n) {
    for (int i = 0; i < n; i++) {
      c[i] = Math.sqrt(a[i] * a[i] + b[i] * b[i]);
    }
  }

  /** Of the second colours, with what follows from both. */
  private static void chromas(
      double[] a, double[] b, double[] c1, double[] c2, double[] mean, double[] product, int n) {
    for (int i = 0; i < n; i++) {
      double c = Math.sqrt(a[i] * a[i] + b[i] * b[i]);
      c2[i] = c;
      mean[i] = (c1[i] + c) / 2;
      product[i] = c1[i] * c;
    }
  }

  private static void inner(
      double[] a1, double[] b1, double[] a2, double[] b2, double[] inner, int n) {
    for (int i = 0; i < n; i++) {
      inner[i] = a1[i] * a2[i] + b1[i] * b2[i];
    }
  }

  /**
   * Both drawn to one distance from grey add up to a length of √(2p(p + d)), p = C₁C₂, d inner. One
   * division for it and for the saturation, whose root waits for R_T.
   */
  private static void perLength(
      double[] product,
      double[] inner,
      double[] chroma,
      double[] saturation,
      double[] perLength,
      int n) {
    for (int i = 0; i < n; i++) {
      double doubled = product[i] * (product[i] + inner[i]);
      double seventh = seventh(chroma[i]);
      double more = seventh + CHROMA_25_TO_7;
      double perBoth = 1 / (doubled * more);
      saturation[i] = seventh * (doubled * perBoth);
      perLength[i] = Math.sqrt(0.5 * perBoth * more);
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

  /** 2 sin(Δh/2), which makes ΔH′ with a root of the product that is left out until the end. */
  private static void turns(
      double[] a1,
      double[] b1,
      double[] a2,
      double[] b2,
      double[] perLength,
      double[] turn,
      int n) {
    for (int i = 0; i < n; i++) {
      turn[i] = (a1[i] * b2[i] - a2[i] * b1[i]) * (2 * perLength[i]);
    }
  }

  /** Steps of chroma and hue, each times the weighting functions of the other two parts. */
  private static void scale(
      double[] chroma,
      double[] perHue,
      double[] perLightness,
      double[] c1,
      double[] c2,
      double[] turn,
      int n) {
    for (int i = 0; i < n; i++) {
      c2[i] = (c2[i] - c1[i]) * (perHue[i] * perLightness[i]);
      turn[i] *= (1 + 0.045 * chroma[i]) * perLightness[i];
    }
  }

  /** The step of lightness likewise, and all three weighting functions together. */
  private static void weigh(
      double[] chroma, double[] perHue, double[] perLightness, double[] step, int n) {
    for (int i = 0; i < n; i++) {
      double both = (1 + 0.045 * chroma[i]) * perHue[i];
      step[i] *= both;
      perLightness[i] *= both;
    }
  }

  /** One division for all three parts. The sum is never below 0, for |R_T| stays below 2. */
  private static void sizes(
      double[] c,
      double[] turn,
      double[] product,
      double[] crossed,
      double[] weights,
      double[] size,
      int n) {
    for (int i = 0; i < n; i++) {
      double squared = size[i] * size[i] + c[i] * c[i];
      squared += turn[i] * (product[i] * turn[i] + crossed[i] * c[i]);
      size[i] = Math.sqrt(squared) / weights[i];
    }
  }
}
