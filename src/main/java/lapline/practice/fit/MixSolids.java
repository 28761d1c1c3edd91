package lapline.practice.fit;

import java.util.List;
import java.util.Optional;
import lapline.practice.PanelEntry;
import lapline.practice.PracticeTask;
import lapline.practice.Reading;
import lapline.trade.measure.Estimate;

/**
 * How rich the mix was against what the sheet asks for, from the parts wanted ({@code mix-parts})
 * and the amounts poured ({@code mix-amount}), step by step.
 *
 * <p>Reducer has no solids; the other parts are taken as alike, so film ∝ 1 − reducer's share. Good
 * to about a tenth where paint and hardener differ in solids.
 */
final class MixSolids {
  private static final List<String> REDUCERS = List.of("reducer", "thinner");

  private MixSolids() {}

  /** Solids of what was poured over those of what was wanted; empty where that is not known. */
  static Optional<Estimate> ratio(PracticeTask task, PanelEntry entry) {
    List<Reading> parts = entry.of("mix-parts");
    List<Reading> amounts = entry.of("mix-amount");
    int reducer = reducer(task);
    if (reducer == 0 || parts.size() != amounts.size() || parts.size() < 2) {
      return Optional.empty();
    }
    double wanted = 1 - share(parts, reducer);
    double poured = 1 - share(amounts, reducer);
    if (!(wanted > 0 && poured > 0)) {
      return Optional.empty();
    }
    return Optional.of(Estimate.of(poured / wanted, uncertainty(amounts) / wanted));
  }

  /** Number of the step that is the reducer; 0 for none. */
  private static int reducer(PracticeTask task) {
    return task.field("mix-amount")
        .map(
            f -> {
              for (int i = 0; i < f.steps().size(); i++) {
                String step = f.steps().get(i).toLowerCase(java.util.Locale.ROOT);
                if (REDUCERS.stream().anyMatch(step::contains)) {
                  return i + 1;
                }
              }
              return 0;
            })
        .orElse(0);
  }

  private static double share(List<Reading> readings, int step) {
    double sum = readings.stream().mapToDouble(Reading::value).sum();
    return readings.stream().filter(r -> r.cell().step() == step).mapToDouble(Reading::value).sum()
        / sum;
  }

  private static double uncertainty(List<Reading> amounts) {
    double sum = amounts.stream().mapToDouble(Reading::value).sum();
    return Math.sqrt(
            amounts.stream()
                .mapToDouble(r -> r.standardUncertainty() * r.standardUncertainty())
                .sum())
        / sum;
  }
}
