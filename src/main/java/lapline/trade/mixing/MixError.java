package lapline.trade.mixing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import lapline.trade.measure.Gum.Part;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/**
 * How far a mix that was poured strays from its ratio: qᵢ = (aᵢ / Σa) / (share wanted) − 1, and the
 * same against the first part. Slopes analytic, propagation by JCGM 100:2008, equation 10.
 *
 * @param shares for each part, its share of the whole against the share it should have, less 1:
 *     0.05 is five per cent too much of it
 * @param ratios for each part after the first, its amount per amount of the first part against the
 *     ratio it should have, less 1; what decides how a two-pack cures
 */
public record MixError(List<Estimate> shares, List<Estimate> ratios) {

  /**
   * Uncertainties to first order, amounts independent.
   *
   * @param amounts measured volume of each part, in the order of the ratio, any one unit, 0 or
   *     more, the first more than 0
   */
  public static MixError of(MixRatio ratio, List<Estimate> amounts) {
    if (amounts.size() != ratio.parts().size()) {
      throw new MeasureException(
          "amounts", amounts.size(), "one for each of " + ratio.parts().size() + " parts");
    }
    amounts.forEach(a -> Valid.notNegative("amount", a.value()));
    Valid.positive("amount of the first part", amounts.get(0).value());
    int parts = amounts.size();
    return new MixError(
        IntStream.range(0, parts).mapToObj(i -> share(ratio, amounts, i)).toList(),
        IntStream.range(1, parts).mapToObj(i -> ratio(ratio, amounts, i)).toList());
  }

  /** The part that strays most in its share; 0 to the number of parts less 1. */
  public int worstPart() {
    return IntStream.range(0, shares.size())
        .boxed()
        .max(Comparator.comparingDouble(i -> Math.abs(shares.get(i).value())))
        .orElseThrow();
  }

  /** The deviation of the part that strays most. */
  public Estimate worst() {
    return shares.get(worstPart());
  }

  private static Estimate share(MixRatio ratio, List<Estimate> amounts, int part) {
    double all = amounts.stream().mapToDouble(Estimate::value).sum();
    double own = amounts.get(part).value();
    double wanted = ratio.share(part);
    List<Part> terms = new ArrayList<>();
    for (int i = 0; i < amounts.size(); i++) {
      double slope = ((i == part ? all : 0) - own) / (all * all * wanted);
      terms.add(new Part(slope, amounts.get(i)));
    }
    return Gum.combine(own / all / wanted - 1, terms);
  }

  private static Estimate ratio(MixRatio ratio, List<Estimate> amounts, int part) {
    double wanted = ratio.parts().get(part) / ratio.parts().get(0);
    Estimate found = Gum.scale(1 / wanted, Gum.ratio(amounts.get(part), amounts.get(0)));
    return Gum.difference(found, Estimate.of(1, 0));
  }
}
