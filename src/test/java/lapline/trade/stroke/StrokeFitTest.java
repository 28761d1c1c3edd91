package lapline.trade.stroke;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** A fit's uncertainties and evidence against what they are worked out from otherwise. */
class StrokeFitTest {
  private final Random chance = new Random(11);
  private final SprayedPanel panel = new SprayedPanel();
  private final PassPlan plan = along();
  private final List<FilmAt> readings = panel.read(30, chance);
  private final double level =
      Math.log(readings.stream().mapToDouble(FilmAt::film).average().orElseThrow());
  private final HandScatter scatter =
      HandScatter.about(bare(), start(bare().parameters()), readings);

  private PassPlan along() {
    panel.along = 0.05;
    return panel.spray(chance);
  }

  private StrokeModel bare() {
    return new StrokeModel(plan, List.of());
  }

  private double[] start(int parameters) {
    double[] start = new double[parameters];
    start[StrokeModel.LEVEL] = level;
    return start;
  }

  private StrokeFit fit(Departure... departures) {
    StrokeModel model = new StrokeModel(plan, List.of(departures));
    return StrokeFit.of(model, readings, scatter, start(model.parameters()), level);
  }

  /** The curvature of the objective, taken by differences and turned round by Hipparchus 4.0.3. */
  @Test
  void uncertainties_follow_from_the_curvature_at_the_best_point() {
    StrokeFit fit = fit();
    double[] p = fit.parameters();
    double[] h = {1e-4, 1e-4, 1e-4, 1e-3, 1e-5, 1e-5};
    RealMatrix curvature = new Array2DRowRealMatrix(p.length, p.length);
    for (int i = 0; i < p.length; i++) {
      for (int j = 0; j < p.length; j++) {
        curvature.setEntry(i, j, second(fit, p, i, h[i], j, h[j]) / 2);
      }
    }
    RealMatrix covariance = MatrixUtils.inverse(curvature);
    double scale = Math.sqrt(fit.birge());
    for (int i : new int[] {StrokeModel.LEVEL, StrokeModel.STEP}) {
      double theirs = Math.sqrt(covariance.getEntry(i, i)) * scale;
      assertThat(fit.uncertainty(i)).as("%d", i).isCloseTo(theirs, within(0.1 * theirs));
    }
  }

  private static double second(StrokeFit fit, double[] p, int i, double hi, int j, double hj) {
    return (moved(fit, p, i, hi, j, hj)
            - moved(fit, p, i, hi, j, -hj)
            - moved(fit, p, i, -hi, j, hj)
            + moved(fit, p, i, -hi, j, -hj))
        / (4 * hi * hj);
  }

  private static double moved(StrokeFit fit, double[] p, int i, double hi, int j, double hj) {
    double[] q = p.clone();
    q[i] += hi;
    q[j] += hj;
    return fit.objectiveAt(q);
  }

  /** To first order is exact where a departure enters linearly: the whole fit says the same. */
  @Test
  void what_a_column_would_bring_is_what_the_wider_fit_brings() {
    for (Departure one : List.of(new Departure.Along(), new Departure.Across())) {
      StrokeFit without = fit();
      StrokeFit with = fit(one);
      Gain gain = Gain.of(without, scatter.whitened(slopes(without, one)), one.usual());
      int last = with.parameters().length - 1;
      assertThat(gain.value()).isCloseTo(with.parameters()[last], within(0.01));
      assertThat(gain.evidence())
          .isCloseTo(with.logEvidence() - without.logEvidence(), within(0.1));
    }
  }

  private double[] slopes(StrokeFit without, Departure one) {
    StrokeModel wide = new StrokeModel(plan, List.of(one));
    double[] p = start(wide.parameters());
    System.arraycopy(without.parameters(), 0, p, 0, without.parameters().length);
    StrokeModel.At at = wide.at(p);
    return readings.stream()
        .mapToDouble(
            r -> {
              at.film(r.x(), r.y());
              return at.slopes[wide.first()];
            })
        .toArray();
  }

  /** By brute force: the likelihood times the prior, summed over the departure's whole range. */
  @Test
  void evidence_is_the_likelihood_averaged_over_the_prior() {
    Departure along = new Departure.Along();
    StrokeFit with = fit(along);
    StrokeFit without = fit();
    int last = with.parameters().length - 1;
    double best = with.objectiveAt(with.parameters());
    double[] p = with.parameters();
    double sum = 0;
    double step = 0.002;
    for (double value = -1; value <= 1; value += step) {
      p[last] = value;
      sum += step * Math.exp(-(with.objectiveAt(p) - best) / 2);
    }
    // the departure's own normal prior stands in the objective without its factor; the others are
    // held at their best, where the narrowing by what they share with it is small
    double byForce =
        -best / 2
            + without.objectiveAt(without.parameters()) / 2
            + Math.log(sum / (along.usual() * Math.sqrt(2 * Math.PI)));
    assertThat(with.birge()).isEqualTo(1);
    assertThat(without.birge()).isEqualTo(1);
    assertThat(with.logEvidence() - without.logEvidence()).isCloseTo(byForce, within(0.3));
  }
}
