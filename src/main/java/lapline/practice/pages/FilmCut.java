package lapline.practice.pages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.Fill;
import lapline.pages.drawing.Pen;
import lapline.pages.drawing.Point;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.Shape.Align;
import lapline.pages.drawing.Shape.Words;
import lapline.pages.drawing.Tone;
import lapline.pages.drawing.TypeFace;
import lapline.practice.FilmField;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Limits;
import lapline.trade.stroke.StrokeFilm;

/**
 * The film along one line across the passes, from the lower edge to the upper: the target band
 * behind it, pass centres as ticks, measured builds as dots, hollow where they are set aside; as
 * the line the film that the findings are about, else the one estimated between the readings.
 */
final class FilmCut {
  private static final double WIDTH = 100;
  private static final double HEIGHT = 62;
  private static final double LEFT = 13;
  private static final double TOP = 8;
  private static final double ROOM = 84;
  private static final double TALL = 40;
  private static final double SIZE = TypeFace.ON_PHONES;

  /** So far out from the middle, as a share of half the width, ends do not count. */
  private static final double INNER = 0.6;

  private static final int POINTS = 120;

  private final FilmField film;
  private final List<Double> passCentres;
  private final StrokeFilm stroke;
  private final PhraseWriter words;
  private final double cut;
  private final double floor;
  private final double top;

  /**
   * @param stroke as it was read from the film; null where it was not
   * @param passCentres metres from the panel's lower edge
   */
  FilmCut(FilmField film, StrokeFilm stroke, List<Double> passCentres, PhraseWriter words) {
    this.film = film;
    this.stroke = stroke;
    this.passCentres = passCentres;
    this.words = words;
    this.cut = cut(film);
    this.floor = 0.7 * lowest();
    this.top = highest() + 0.15 * (highest() - floor);
  }

  Drawing drawing() {
    List<Shape> shapes = new ArrayList<>();
    shapes.addAll(band());
    shapes.addAll(axes());
    shapes.addAll(ticks());
    shapes.add(new Shape.Line(line(), Pen.of(Tone.ACCENT, 0.7)));
    shapes.addAll(dots());
    return new Drawing(
        "film-cut",
        WIDTH,
        HEIGHT,
        words.say("drawing.film-cut.title"),
        words.say(
            "drawing.film-cut.description",
            words.quantity(cut, Dimension.LENGTH),
            words.range(film.target(), Dimension.FILM),
            passCentres.size(),
            words.say("drawing.film-cut." + kind())),
        shapes);
  }

  String caption() {
    String key = "drawing.film-cut.caption" + (stroke == null ? "" : ".fitted");
    return words.say(key, words.spot(cut));
  }

  private String kind() {
    return stroke == null ? "estimated" : "fitted";
  }

  /**
   * The column of places with most readings, of equals the one nearest the middle; away from the
   * ends of the strokes if there is one, where other things happen than over the panel.
   */
  private static double cut(FilmField film) {
    Map<Long, Long> columns =
        film.places().stream()
            .collect(Collectors.groupingBy(p -> Math.round(p.x() * 100), Collectors.counting()));
    double middle = film.width() * 50;
    return columns.entrySet().stream()
        .max(
            Comparator.comparing(
                    (Map.Entry<Long, Long> e) ->
                        e.getValue() > 1 && Math.abs(e.getKey() - middle) < INNER * middle)
                .thenComparing(Map.Entry.comparingByValue())
                .thenComparing(e -> -Math.abs(e.getKey() - middle)))
        .map(e -> e.getKey() / 100.0)
        .orElse(film.width() / 2);
  }

  private double highest() {
    double most = film.target().hasMost() ? film.target().most() : 0;
    double measured = film.counted().stream().mapToDouble(p -> p.film()).max().orElse(0);
    double fitted = stroke == null ? 0 : heights().map(y -> stroke.at(cut, y)).max().orElse(0);
    return Math.max(1e-6, Math.max(Math.max(most, measured), fitted));
  }

  private double lowest() {
    double measured = film.counted().stream().mapToDouble(p -> p.film()).min().orElse(0);
    return Math.max(0, film.target().hasLeast() ? Math.min(film.target().least(), measured) : 0);
  }

  private List<Shape> band() {
    double least = film.target().hasLeast() ? film.target().least() : floor;
    double most = film.target().hasMost() ? film.target().most() : top;
    List<Shape> shapes = new ArrayList<>();
    shapes.add(
        Shape.Surface.box(
            LEFT, up(most), ROOM, up(least) - up(most), Fill.flat(Tone.PALE), Pen.NONE));
    Limits figures = words.figures(film.target(), Dimension.FILM);
    if (film.target().hasLeast()) {
      shapes.addAll(limit(least, figures.least()));
    }
    if (film.target().hasMost()) {
      shapes.addAll(limit(most, figures.most()));
    }
    return shapes;
  }

  private List<Shape> limit(double value, String figure) {
    return List.of(
        Shape.Line.of(LEFT, up(value), LEFT + ROOM, up(value), Pen.FINE.dash()),
        figure(value, figure));
  }

  private Shape figure(double value, String figure) {
    return Words.of(LEFT - 1, up(value) + SIZE * 0.35, SIZE, Align.END, figure);
  }

  private List<Shape> axes() {
    double ground = TOP + TALL;
    return List.of(
        Shape.Line.of(LEFT, ground, LEFT + ROOM, ground, Pen.FINE),
        Shape.Line.of(LEFT, TOP, LEFT, ground, Pen.FINE),
        figure(floor, words.figure(floor, Dimension.FILM)),
        Words.of(
            1,
            TOP - 3,
            SIZE,
            Align.START,
            words.say("drawing.film-cut.film", words.unit(Dimension.FILM))),
        Words.of(LEFT, ground + SIZE * 3.2, SIZE, Align.START, words.say("drawing.film-cut.lower")),
        Words.of(
            LEFT + ROOM,
            ground + SIZE * 3.2,
            SIZE,
            Align.END,
            words.say("drawing.film-cut.upper")));
  }

  private List<Shape> ticks() {
    double ground = TOP + TALL;
    List<Shape> shapes = new ArrayList<>();
    int number = 0;
    for (double centre : passCentres) {
      number++;
      if (centre >= 0 && centre <= film.height()) {
        shapes.add(
            Shape.Line.of(along(centre), ground - 1.5, along(centre), ground + 1.5, Pen.FIRM));
        shapes.add(Words.of(along(centre), ground + SIZE * 1.7, SIZE, Align.MIDDLE, "" + number));
      }
    }
    if (number > 0) {
      shapes.add(
          Words.of(
                  LEFT + ROOM / 2,
                  ground + SIZE * 3.2,
                  SIZE,
                  Align.MIDDLE,
                  words.say("drawing.film-cut.passes"))
              .in(Tone.FAINT));
    }
    return shapes;
  }

  private List<Point> line() {
    return stroke == null ? estimated() : fitted();
  }

  private List<Point> fitted() {
    return heights().mapToObj(y -> new Point(along(y), up(stroke.at(cut, y)))).toList();
  }

  /** From the lower to the upper edge. */
  private DoubleStream heights() {
    return IntStream.rangeClosed(0, POINTS).mapToDouble(i -> film.height() * i / POINTS);
  }

  private List<Point> estimated() {
    int column =
        (int)
            Math.max(
                0, Math.min(film.columns() - 1, Math.floor(cut / film.width() * film.columns())));
    List<Point> points = new ArrayList<>();
    for (int row = 0; row < film.rows(); row++) {
      double value = film.film().get(row * film.columns() + column);
      if (!Double.isNaN(value)) {
        points.add(new Point(along((row + 0.5) / film.rows() * film.height()), up(value)));
      }
    }
    return points;
  }

  /** Measured builds near the line, each with the reach of its expanded uncertainty. */
  private List<Shape> dots() {
    double near = Math.max(0.005, film.width() / 50);
    List<Shape> shapes = new ArrayList<>();
    film.places().stream()
        .filter(p -> Math.abs(p.x() - cut) <= near)
        .sorted(Comparator.comparingDouble(FilmField.PlaceFilm::y))
        .forEach(p -> shapes.addAll(film.isSetAside(p) ? setAside(p) : dot(p)));
    return shapes;
  }

  private List<Shape> dot(FilmField.PlaceFilm p) {
    double x = along(p.y());
    double reach = p.estimate().expandedUncertainty();
    return List.of(
        Shape.Line.of(x, up(p.film() - reach), x, up(p.film() + reach), Pen.FINE),
        new Shape.Circle(x, up(p.film()), 1.1, Fill.flat(Tone.INK), Pen.NONE));
  }

  /** Its figure beside it, since it may lie off the scale, which goes by those that count. */
  private List<Shape> setAside(FilmField.PlaceFilm p) {
    double x = along(p.y());
    double y = up(p.film());
    String figure = PanelMap.inBrackets(words.figure(p.film(), Dimension.FILM), words);
    boolean left = x < LEFT + ROOM / 2;
    return List.of(
        new Shape.Circle(x, y, 1.1, Fill.flat(Tone.SHEET), Pen.FINE),
        Words.of(
            x + (left ? 2 : -2), y + SIZE * 0.35, SIZE, left ? Align.START : Align.END, figure));
  }

  private double along(double metres) {
    return LEFT + ROOM * metres / film.height();
  }

  private double up(double value) {
    return TOP + TALL * (1 - Math.max(0, Math.min(1, (value - floor) / (top - floor))));
  }
}
