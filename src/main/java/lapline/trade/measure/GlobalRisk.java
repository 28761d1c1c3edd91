package lapline.trade.measure;

import java.util.TreeSet;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * How often measuring leads to a wrong decision over all work of a kind, before anything is
 * measured: a share of all panels, not of the accepted ones.
 *
 * <p>R_C = ∫ outside the target g₀(η) P(accepted | η) dη and R_P = ∫ inside it g₀(η) P(refused | η)
 * dη, with g₀ the normal prior of the true values η and readings normal about them. Source: JCGM
 * 106:2012, 9.5. Ten-point Gauss–Legendre between every standard deviation of either and every
 * limit; accuracy 1e-9 absolute.
 *
 * @param consumers share accepted though the true value does not conform
 * @param producers share refused though the true value conforms
 */
public record GlobalRisk(double consumers, double producers) {
  /** Beyond nine standard deviations lies less than 1e-18. */
  private static final int FAR = 9;

  private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(10);

  /**
   * @param prior best value and spread of such work; the spread more than 0
   * @param standardUncertainty of a reading, 0 or more
   * @param target in which true values conform
   * @param acceptance in which readings are accepted
   */
  public static GlobalRisk of(
      Estimate prior, double standardUncertainty, TargetRange target, TargetRange acceptance) {
    Valid.positive("prior u", prior.standardUncertainty());
    Valid.notNegative("standardUncertainty", standardUncertainty);
    TreeSet<Double> places = new TreeSet<>();
    addAround(places, prior.value(), prior.standardUncertainty());
    addAround(places, acceptance.least(), standardUncertainty);
    addAround(places, acceptance.most(), standardUncertainty);
    addAround(places, target.least(), 0);
    addAround(places, target.most(), 0);
    double reach = FAR * prior.standardUncertainty();
    double from = prior.value() - reach;
    TreeSet<Double> within = new TreeSet<>(places.subSet(from, true, from + 2 * reach, true));
    return sum(new Work(prior, standardUncertainty, acceptance), within, target);
  }

  private static void addAround(TreeSet<Double> places, double middle, double step) {
    for (int k = -FAR; k <= FAR && Double.isFinite(middle); k++) {
      places.add(middle + k * step);
    }
  }

  private static GlobalRisk sum(Work work, TreeSet<Double> places, TargetRange target) {
    double consumers = 0;
    double producers = 0;
    double low = places.first();
    for (double high : places.tailSet(low, false)) {
      if (target.contains((low + high) / 2)) {
        producers += work.share(low, high, false);
      } else {
        consumers += work.share(low, high, true);
      }
      low = high;
    }
    return new GlobalRisk(consumers, producers);
  }

  /** Work of a kind, and readings of it that are accepted or not. */
  private record Work(Estimate prior, double uncertainty, TargetRange acceptance) {

    /** The share of all work with a true value between these, and a reading of this fate. */
    double share(double low, double high, boolean accepted) {
      double middle = (low + high) / 2;
      double half = (high - low) / 2;
      return half * RULE.integrate(x -> wrong(middle + half * x, accepted));
    }

    private double wrong(double eta, boolean accepted) {
      double inside = Conformance.probability(Estimate.of(eta, uncertainty), acceptance);
      return density(eta) * (accepted ? inside : 1 - inside);
    }

    private double density(double eta) {
      double u = prior.standardUncertainty();
      return ErrorShape.NORMAL.density((eta - prior.value()) / u) / u;
    }
  }
}
