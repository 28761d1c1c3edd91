package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import lapline.pages.Messages;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.Fill;
import lapline.pages.drawing.Point;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.SvgWriter;
import lapline.practice.FilmField;
import lapline.practice.PanelOutline;
import lapline.practice.PanelScore.NextPlace;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** The map of a film that rises evenly from 40 µm at the left edge to 70 µm at the right. */
class PanelMapTest {
  private static final PanelOutline PANEL = InventedTask.panel();
  private static final PhraseWriter WORDS = new PhraseWriter(new Messages(), UnitSystem.METRIC);

  @Test
  void what_is_below_the_range_is_dotted_and_what_is_above_is_ruled_to_scale() {
    Drawing map = new PanelMap(PANEL, rising(50e-6, 65e-6), WORDS).drawing();
    double whole = 98 * 98 * 0.4 / 0.6;
    // thin up to a third of the width, thick from five sixths on; the rim is drawn flat
    assertThat(area(map, Fill.Kind.DOTTED) / whole).isCloseTo(1 / 3.0, within(0.02));
    assertThat(area(map, Fill.Kind.RULED) / whole).isCloseTo(1 / 6.0, within(0.02));
  }

  @Test
  void a_film_that_is_inside_everywhere_is_plain() {
    Drawing map = new PanelMap(PANEL, rising(30e-6, 80e-6), WORDS).drawing();
    assertThat(area(map, Fill.Kind.DOTTED) + area(map, Fill.Kind.RULED)).isZero();
    assertThat(map.description()).contains("No part of the panel is outside");
  }

  @Test
  void every_place_shows_its_build_in_the_readers_units() {
    PhraseWriter us = new PhraseWriter(new Messages(), UnitSystem.US);
    String svg = SvgWriter.write(new PanelMap(PANEL, rising(50e-6, 65e-6), us).drawing());
    // 44 µm at 80 mm, 55 µm at 300 mm
    assertThat(svg).contains(">1.73<", ">2.17<").contains("mil");
  }

  @Test
  void a_reading_that_is_set_aside_stands_in_brackets() {
    FilmField film = settingAside(rising(50e-6, 65e-6), 1, 161e-6);
    String svg = SvgWriter.write(new PanelMap(PANEL, film, WORDS).drawing());
    assertThat(svg.split("[(][0-9.]+[)]")).hasSize(2);
    assertThat(svg).contains(">(161)<");
  }

  @Test
  void off_an_odd_panel_nothing_is_drawn_and_unknown_film_leaves_no_gap() {
    FilmField full = rising(50e-6, 65e-6);
    List<Double> film = new ArrayList<>(full.film());
    for (int row = 0; row < full.rows(); row++) {
      film.set(row * full.columns(), Double.NaN);
    }
    FilmBands bands = new FilmBands(with(full, film), PanelScale.fitting(PANEL, 0, 0, 60, 40));
    double all = area(bands.between(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY));
    assertThat(all).isCloseTo(60 * 40, within(1e-6));
  }

  @Test
  void bands_side_by_side_cover_the_panel_once() {
    FilmBands bands = new FilmBands(rising(50e-6, 65e-6), PanelScale.fitting(PANEL, 0, 0, 60, 40));
    double sum = 0;
    for (int i = 0; i < 10; i++) {
      sum += area(bands.between(40e-6 + 3e-6 * i, 40e-6 + 3e-6 * (i + 1)));
    }
    assertThat(sum).isCloseTo(60 * 40, within(1.0));
  }

  @Test
  void a_letter_that_asks_for_a_reading_hides_no_build() {
    PanelOutline.Place one = PANEL.places().get(0);
    List<NextPlace> beside =
        List.of(NextPlace.of(one.x() + 0.011, one.y()), NextPlace.of(one.x(), one.y() + 0.011));
    Drawing map = new PanelMap(PANEL, rising(50e-6, 65e-6), WORDS).asking(beside).drawing();
    List<Shape.Words> words =
        map.shapes().stream()
            .flatMap(s -> s instanceof Shape.Words w ? Stream.of(w) : Stream.empty())
            .toList();
    for (String letter : List.of("A", "B")) {
      Shape.Words asked =
          words.stream().filter(w -> w.text().equals(letter)).findFirst().orElseThrow();
      Rectangle2D box = new Rectangle2D.Double(asked.x() - 2.2, asked.y() - 3.3, 4.4, 4.4);
      assertThat(words)
          .as(letter)
          .filteredOn(w -> w.text().matches("[0-9.]+"))
          .noneMatch(w -> box.intersects(w.x() - 2.4, w.y() - 2.2, 4.8, 2.2));
    }
  }

  @Test
  void an_area_is_said_in_words() {
    FilmField.Area area = new FilmField.Area("area.lower-edge", true, -12e-6, 0.08);
    assertThat(PanelMap.area(area, WORDS).replace('\u00a0', ' '))
        .isEqualTo("thin along the lower edge, 12 µm under (8 % of the panel)");
  }

  /** The same with a reading at one place that counts for nothing. */
  static FilmField settingAside(FilmField f, int place, double read) {
    List<FilmField.PlaceFilm> places =
        f.places().stream()
            .map(
                p ->
                    p.place() == place
                        ? new FilmField.PlaceFilm(place, p.x(), p.y(), read, 1e-6)
                        : p)
            .toList();
    return new FilmField(
        f.width(),
        f.height(),
        f.columns(),
        f.rows(),
        f.film(),
        f.target(),
        f.mean(),
        f.spread(),
        f.shareInside(),
        f.shareLow(),
        f.shareHigh(),
        f.areas(),
        places,
        List.of(place));
  }

  static FilmField rising(double least, double most) {
    int columns = 60;
    int rows = 4;
    List<Double> film = new ArrayList<>();
    for (int i = 0; i < columns * rows; i++) {
      film.add(at((i % columns + 0.5) / columns * 0.6));
    }
    List<FilmField.PlaceFilm> places =
        PANEL.places().stream()
            .map(p -> new FilmField.PlaceFilm(p.number(), p.x(), p.y(), at(p.x()), 1e-6))
            .toList();
    TargetRange range = new TargetRange(least, most);
    return new FilmField(
        0.6, 0.4, columns, rows, film, range, 55e-6, 8e-6, 0.5, 0.4, 0.6, List.of(), places,
        List.of());
  }

  private static double at(double x) {
    return 40e-6 + 30e-6 * x / 0.6;
  }

  private static FilmField with(FilmField f, List<Double> film) {
    return new FilmField(
        f.width(),
        f.height(),
        f.columns(),
        f.rows(),
        film,
        f.target(),
        f.mean(),
        f.spread(),
        f.shareInside(),
        f.shareLow(),
        f.shareHigh(),
        f.areas(),
        f.places(),
        f.setAside());
  }

  private static double area(Drawing map, Fill.Kind kind) {
    return map.shapes().stream()
        .filter(Shape.Clipped.class::isInstance)
        .flatMap(s -> ((Shape.Clipped) s).shapes().stream())
        .filter(s -> s instanceof Shape.Surface surface && surface.fill().kind() == kind)
        .mapToDouble(s -> area(((Shape.Surface) s).rings()))
        .sum();
  }

  private static double area(List<List<Point>> rings) {
    return rings.stream().mapToDouble(PanelMapTest::ringArea).sum();
  }

  private static double ringArea(List<Point> ring) {
    double twice = 0;
    for (int i = 0; i < ring.size(); i++) {
      Point a = ring.get(i);
      Point b = ring.get((i + 1) % ring.size());
      twice += a.x() * b.y() - b.x() * a.y();
    }
    return Math.abs(twice) / 2;
  }
}
