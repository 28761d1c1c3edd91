package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lapline.pages.Messages;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.Point;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.SvgWriter;
import lapline.practice.FilmField;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.UnitSystem;
import lapline.trade.stroke.StrokeFilm;
import org.junit.jupiter.api.Test;
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
    Drawing cut = new FilmCut(film, null, List.of(), words).drawing();
    List<String> figures = figures(cut);
    assertThat(figures).hasSize(3);
    assertThat(figures.stream().filter(f -> List.of(target.split("[ \u00a0]")).contains(f)))
        .as("of %s", target)
        .containsExactly(target.split("[ \u00a0]")[0], target.split("[ \u00a0]")[2]);
  }

  /** What the findings speak of is what is drawn: a stroke falls off between the readings. */
  @Test
  void the_line_is_the_stroke_that_was_read_and_says_where_it_lies() {
    FilmField film = PanelMapTest.rising(50e-6, 65e-6);
    StrokeFilm stroke = striped(film);
    PhraseWriter words = new PhraseWriter(new Messages(), UnitSystem.METRIC);
    FilmCut cut = new FilmCut(film, stroke, List.of(), words);
    assertThat(turns(line(cut.drawing()))).isGreaterThan(3);
    assertThat(cut.caption()).contains("300 mm from the left edge", "would leave it");
    FilmCut estimated = new FilmCut(film, null, List.of(), words);
    assertThat(turns(line(estimated.drawing()))).isZero();
    assertThat(estimated.caption()).contains("estimated between them");
  }

  /** One crazy figure would press all others together. */
  @Test
  void a_reading_that_is_set_aside_stands_in_brackets_and_does_not_stretch_the_scale() {
    FilmField film = PanelMapTest.rising(50e-6, 65e-6);
    PhraseWriter words = new PhraseWriter(new Messages(), UnitSystem.METRIC);
    int cut = film.places().stream().filter(p -> p.x() == 0.3).findFirst().orElseThrow().place();
    FilmField crazy = PanelMapTest.settingAside(film, cut, 161e-6);
    Drawing drawing = new FilmCut(crazy, null, List.of(), words).drawing();
    assertThat(line(drawing)).isEqualTo(line(new FilmCut(film, null, List.of(), words).drawing()));
    assertThat(SvgWriter.write(drawing)).contains(">(161)<");
  }

  /** Passes half a fan apart and more. */
  private static StrokeFilm striped(FilmField film) {
    List<StrokeFilm.Pass> passes =
        IntStream.rangeClosed(0, 4).mapToObj(i -> new StrokeFilm.Pass(0.1 * i, 1)).toList();
    return new StrokeFilm(
        film.width(),
        film.height(),
        57e-6,
        0.1,
        0.13,
        2,
        0,
        0,
        0,
        0,
        List.of(),
        List.of(passes),
        List.of());
  }

  private static List<Point> line(Drawing drawing) {
    return drawing.shapes().stream()
        .flatMap(s -> s instanceof Shape.Line l ? Stream.of(l.points()) : Stream.empty())
        .max(Comparator.comparingInt(List::size))
        .orElseThrow();
  }

  /** How often it goes the other way. */
  private static long turns(List<Point> line) {
    return IntStream.range(2, line.size())
        .filter(
            i -> {
              double before = line.get(i - 1).y() - line.get(i - 2).y();
              double after = line.get(i).y() - line.get(i - 1).y();
              return before * after < 0;
            })
        .count();
  }

  private static List<String> figures(Drawing drawing) {
    return drawing.shapes().stream()
        .flatMap(s -> s instanceof Shape.Words w ? Stream.of(w.text()) : Stream.empty())
        .filter(text -> text.matches("[0-9.]+"))
        .toList();
  }
}
