package lapline.practice.pages;

import java.util.List;
import java.util.stream.Collectors;
import lapline.practice.Cell;
import lapline.practice.Gap;
import lapline.practice.Measurand;
import lapline.practice.Measurands;

/** Names places of a record together: 'Film after painting at places 2, 4–14'. */
final class GapWords {
  private final Measurands measurands;
  private final PhraseWriter words;

  GapWords(Measurands measurands, PhraseWriter words) {
    this.measurands = measurands;
    this.words = words;
  }

  String among(List<Cell> cells) {
    return Gap.among(cells).stream().map(this::told).collect(Collectors.joining("; "));
  }

  private String told(Gap gap) {
    String label = measurands.find(gap.measurand()).map(Measurand::label).orElse(gap.measurand());
    return words.say("practice-result.gap." + gap.kind(), (Object[]) gap.args(label));
  }
}
