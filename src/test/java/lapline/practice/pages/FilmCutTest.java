package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import lapline.pages.Messages;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.Shape;
import lapline.practice.FilmField;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The film along one line: its axis says of the target what the words say. */
class FilmCutTest {

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void the_limits_on_the_axis_are_those_of_the_target_as_written(UnitSystem units) {
    PhraseWriter words = new PhraseWriter(new Messages(), units);
    FilmField film = PanelMapTest.rising(50e-6, 65e-6);
    String target = words.range(film.target(), Dimension.FILM);
    Drawing cut = new FilmCut(film, List.of(), words).drawing();
    List<String> figures = figures(cut);
    assertThat(figures).hasSize(3);
    assertThat(figures.stream().filter(f -> List.of(target.split("[ \u00a0]")).contains(f)))
        .as("of %s", target)
        .containsExactly(target.split("[ \u00a0]")[0], target.split("[ \u00a0]")[2]);
  }

  private static List<String> figures(Drawing drawing) {
    return drawing.shapes().stream()
        .flatMap(s -> s instanceof Shape.Words w ? Stream.of(w.text()) : Stream.empty())
        .filter(text -> text.matches("[0-9.]+"))
        .toList();
  }
}
