package lapline.practice.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import lapline.practice.Again;
import lapline.practice.FilmField.PlaceFilm;
import lapline.practice.PanelOutline;
import lapline.practice.PanelScore;
import lapline.trade.measure.Dimension;

/** Says what it changed that a panel was read again. */
final class AgainWords {
  private final Again before;
  private final PanelScore now;
  private final PhraseWriter words;

  private AgainWords(Again before, PanelScore now, PhraseWriter words) {
    this.before = before;
    this.now = now;
    this.words = words;
  }

  /**
   * @param before null where it was read once
   */
  static List<String> of(Again before, PanelScore now, PhraseWriter words) {
    return before == null ? List.of() : new AgainWords(before, now, words).said();
  }

  private List<String> said() {
    List<String> said = new ArrayList<>();
    said.add(words.say("practice-result.measured-again.first." + change(), was(), is()));
    said.add(
        words.say(
            before.practiceScore() == now.practiceScore()
                ? "practice-result.measured-again.score.same"
                : "practice-result.measured-again.score",
            before.practiceScore(),
            now.practiceScore()));
    String read = read();
    if (!read.isEmpty()) {
      said.add(words.say("practice-result.measured-again.places", read));
    }
    return said;
  }

  private String read() {
    return now.film() == null
        ? ""
        : now.film().places().stream()
            .filter(p -> PanelOutline.isFurther(p.place()))
            .map(this::read)
            .collect(Collectors.joining(", "));
  }

  private String read(PlaceFilm p) {
    return p.label() + " " + words.quantity(p.estimate(), Dimension.FILM);
  }

  /** Which of the sentences about what stood first is true. */
  private String change() {
    if (before.finding().equals(first() == null ? "" : first().id())) {
      return first() == null ? "none" : "same";
    }
    return before.cause() == null ? "new" : first() == null ? "gone" : "other";
  }

  private PanelScore.Finding first() {
    return now.findings().isEmpty() ? null : now.findings().get(0);
  }

  private String was() {
    return words.phrase(before.cause());
  }

  private String is() {
    return first() == null ? "" : words.phrase(first().cause());
  }
}
