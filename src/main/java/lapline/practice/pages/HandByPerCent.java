package lapline.practice.pages;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import lapline.practice.Criterion.Judged;
import lapline.practice.PanelScore;
import lapline.practice.PanelScore.Result;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;

/**
 * What so many per cent of the gun's distance and of the hand's speed are, where these were written
 * down. In words, since the page's script knows nothing of rounding and units.
 */
final class HandByPerCent {
  /** What the sliders are called, with the quantity that each of them is a share of. */
  private static final Map<String, String> QUANTITIES =
      Map.of("distance", "distance-mean", "speed", "stroke-speed");

  private final PanelScore score;
  private final PhraseWriter words;

  HandByPerCent(PanelScore score, PhraseWriter words) {
    this.score = score;
    this.words = words;
  }

  /** By the slider's name, from the least per cent to the most; without what nobody wrote down. */
  Map<String, List<String>> from(int least, int most) {
    Map<String, List<String>> written = new TreeMap<>();
    QUANTITIES.forEach(
        (slider, quantity) ->
            mean(quantity).ifPresent(r -> written.put(slider, written(r, least, most))));
    return written;
  }

  /** Only a mean over the panel is what one slider for the panel can change. */
  private Optional<Result> mean(String quantity) {
    return score.results().stream()
        .filter(Result::judged)
        .filter(r -> r.criterion().quantity().equals(quantity))
        .filter(r -> r.criterion().judged() == Judged.MEAN)
        .findFirst();
  }

  private List<String> written(Result result, int least, int most) {
    return IntStream.rangeClosed(least, most)
        .mapToObj(p -> written(Gum.scale(p / 100.0, result.estimate()), result))
        .toList();
  }

  private String written(Estimate estimate, Result result) {
    Dimension dimension = result.criterion().dimension();
    return estimate.standardUncertainty() > 0
        ? words.quantity(estimate, dimension)
        : words.say("panel-what-if.about", words.quantity(estimate.value(), dimension));
  }
}
