package lapline.practice.fit;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lapline.practice.Cell;
import lapline.practice.PanelEntry;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTask.MixPart;
import lapline.practice.Reading;
import lapline.trade.measure.Estimate;

/**
 * How rich the mix in the cup was against the one that the product's sheet asks for.
 *
 * <p>Reducer has no solids; the other parts are taken as alike, so film ∝ 1 − reducer's share. Good
 * to about a tenth where paint and hardener differ in solids.
 */
final class MixSolids {
  private static final String AMOUNT = "mix-amount";
  private static final List<String> REDUCERS = List.of("reducer", "thinner");

  private MixSolids() {}

  /**
   * Solids of what was poured over those of what was wanted; empty where a part was not written
   * down or none is a reducer.
   */
  static Optional<Estimate> ratio(PracticeTask task, PanelEntry entry) {
    List<MixPart> parts = task.mix();
    List<Reading> poured = entry.of(AMOUNT);
    double all = poured.stream().mapToDouble(Reading::value).sum();
    double allParts = parts.stream().mapToDouble(MixPart::parts).sum();
    double solids = 0;
    double solidParts = 0;
    for (int i = 0; i < parts.size(); i++) {
      if (!isReducer(parts.get(i))) {
        solidParts += parts.get(i).parts();
        solids += entry.at(Cell.step(AMOUNT, i + 1)).map(Reading::value).orElse(0.0);
      }
    }
    boolean known = poured.size() == parts.size() && solidParts < allParts && solids > 0;
    double wanted = solidParts / allParts;
    return known
        ? Optional.of(Estimate.of(solids / all / wanted, uncertainty(poured) / all / wanted))
        : Optional.empty();
  }

  private static boolean isReducer(MixPart part) {
    String name = part.name().toLowerCase(Locale.ROOT);
    return REDUCERS.stream().anyMatch(name::contains);
  }

  private static double uncertainty(List<Reading> amounts) {
    return Math.sqrt(amounts.stream().mapToDouble(r -> Math.pow(r.standardUncertainty(), 2)).sum());
  }
}
