package lapline.trade.finish;

import java.util.OptionalDouble;
import lapline.trade.measure.Valid;

/**
 * The class of a cross-cut adhesion test together with the scheme it is given in, for the two usual
 * schemes run in opposite directions: 0 is the best of one and the worst of the other.
 *
 * <p>Source: ISO 2409:2020 and ASTM D3359 method B (areas seen, spacings from memory). A class is a
 * judgement of an area by eye.
 *
 * @param scheme whose number it is
 * @param number 0 to 5
 */
public record CrossCut(Scheme scheme, int number) {
  /** Detached share above which each worse class begins. */
  private static final double[] CLASS_ENDS = {0, 0.05, 0.15, 0.35, 0.65};

  /** Whose numbers they are. */
  public enum Scheme {
    /** 0 is the best, 5 the worst. */
    ISO_2409,
    /** 5B is the best, 0B the worst. */
    ASTM_D3359_B
  }

  public CrossCut {
    Valid.between("number", number, 0, 5);
  }

  /**
   * The class of a detached area.
   *
   * <p>On the end of a class the better one is meant, as ISO 2409 writes 'greater than 5 % but not
   * greater than 15 %'; only 4B of ASTM is 'less than 5 %', so that 5 % is ISO 1 but ASTM 3B.
   *
   * @param detached share of the cross-cut's area, 0 to 1
   */
  public static CrossCut of(Scheme scheme, double detached) {
    Valid.between("detached", detached, 0, 1);
    int worse = 0;
    while (worse < CLASS_ENDS.length && detached > CLASS_ENDS[worse]) {
      worse++;
    }
    boolean notLess = scheme == Scheme.ASTM_D3359_B && detached == CLASS_ENDS[1];
    return ofSteps(scheme, notLess ? worse + 1 : worse);
  }

  /** The same judgement in the other scheme's number; ISO 0 is 5B. */
  public CrossCut in(Scheme other) {
    return ofSteps(other, stepsFromBest());
  }

  /** How many classes below the best: 0 to 5, the more the worse in either scheme. */
  public int stepsFromBest() {
    return scheme == Scheme.ISO_2409 ? number : 5 - number;
  }

  /** As it is written: '1', '4B'. */
  public String written() {
    return scheme == Scheme.ISO_2409 ? "" + number : number + "B";
  }

  private static CrossCut ofSteps(Scheme scheme, int steps) {
    return new CrossCut(scheme, scheme == Scheme.ISO_2409 ? steps : 5 - steps);
  }

  /**
   * How far apart the cuts have to be, metres.
   *
   * <p>ISO 2409: 1 mm up to 60 µm on hard and 2 mm on soft ground, 2 mm to 120 µm, 3 mm to 250 µm.
   * ASTM D3359 B: 1 mm up to 50 µm, 2 mm to 125 µm. From memory.
   *
   * @param film of the whole system, metres, more than 0
   * @param softGround such as plastic or wood
   * @return empty where the film is too thick for a cross-cut and an X-cut is made (ISO 16276-2,
   *     ASTM D3359 method A)
   */
  public static OptionalDouble spacing(Scheme scheme, double film, boolean softGround) {
    Valid.positive("film", film);
    if (scheme == Scheme.ASTM_D3359_B) {
      return film <= 50e-6 ? metres(1) : film <= 125e-6 ? metres(2) : OptionalDouble.empty();
    }
    if (film <= 60e-6) {
      return metres(softGround ? 2 : 1);
    }
    return film <= 120e-6 ? metres(2) : film <= 250e-6 ? metres(3) : OptionalDouble.empty();
  }

  /**
   * Cuts in each direction: 6, but 11 at the narrow spacing of ASTM (from memory).
   *
   * @param spacing metres, as by {@link #spacing}, more than 0
   */
  public static int cuts(Scheme scheme, double spacing) {
    Valid.positive("spacing", spacing);
    return scheme == Scheme.ASTM_D3359_B && spacing < 1.5e-3 ? 11 : 6;
  }

  private static OptionalDouble metres(int millimetres) {
    return OptionalDouble.of(millimetres * 1e-3);
  }
}
