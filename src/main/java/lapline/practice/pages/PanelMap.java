package lapline.practice.pages;

import java.util.ArrayList;
import java.util.List;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.Fill;
import lapline.pages.drawing.LightnessScale;
import lapline.pages.drawing.Pen;
import lapline.pages.drawing.Point;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.Shape.Align;
import lapline.pages.drawing.Shape.Words;
import lapline.pages.drawing.Tone;
import lapline.pages.drawing.TypeFace;
import lapline.practice.FilmField;
import lapline.practice.FurtherPlaces;
import lapline.practice.PanelOutline;
import lapline.practice.PanelScore;
import lapline.trade.measure.Dimension;

/**
 * The film over the panel, to scale: light where it is thin, dark where it is thick, dotted below
 * the range, ruled above it, the places with their builds.
 */
final class PanelMap {
  private static final double WIDTH = 100;
  private static final double TALLEST = 110;
  private static final double SIZE = TypeFace.ON_PHONES;
  private static final int STEPS = 24;

  /** Half of the room between a letter's box and another, or the figures of a build. */
  private static final double LETTER = 2.9;

  private final FilmField film;
  private final PhraseWriter words;
  private final PanelScale scale;
  private final PanelPlan plan;
  private final FilmBands bands;
  private double thinnest;
  private double thickest;
  private List<PanelOutline.Place> asked = List.of();

  PanelMap(PanelOutline panel, FilmField film, PhraseWriter words) {
    this.film = film;
    this.words = words;
    this.scale = PanelScale.fitting(panel, 1, 1, WIDTH - 2, TALLEST);
    this.plan = new PanelPlan(scale, SIZE, words);
    this.bands = new FilmBands(film, scale);
    this.thinnest = Math.min(least(), film.target().hasLeast() ? film.target().least() : least());
    this.thickest = Math.max(most(), film.target().hasMost() ? film.target().most() : most());
  }

  /** The same map with the spots marked where a further reading would tell most. */
  PanelMap asking(List<PanelScore.NextPlace> spots) {
    asked = FurtherPlaces.of(scale.panel(), spots);
    return this;
  }

  /** The same map shaded from this film to that, to be held against another map. */
  PanelMap over(double thinnest, double thickest) {
    this.thinnest = thinnest;
    this.thickest = thickest;
    return this;
  }

  Drawing drawing() {
    List<Shape> shapes = new ArrayList<>();
    List<Shape> onPanel = new ArrayList<>(tints());
    onPanel.addAll(outside());
    shapes.add(new Shape.Clipped(scale.edge(), onPanel));
    shapes.addAll(plan.features());
    shapes.addAll(plan.edge());
    shapes.addAll(places());
    shapes.addAll(asked());
    double y = scale.bottom() + 6;
    shapes.addAll(plan.scaleBar(scale.left(), y));
    shapes.addAll(
        new FilmLegend(film.target(), thinnest, thickest, words).shapes(1, y + 6, WIDTH - 2));
    return new Drawing(
        "panel-map",
        WIDTH,
        y + 6 + FilmLegend.HEIGHT,
        words.say("drawing.panel-map.title"),
        description(),
        shapes);
  }

  /** From the thinnest upwards, each step painted over the last, so that no seam shows. */
  private List<Shape> tints() {
    List<Shape> shapes = new ArrayList<>();
    shapes.add(Shape.Surface.of(scale.edge(), Fill.flat(LightnessScale.at(0)), Pen.NONE));
    for (int step = 1; step < STEPS; step++) {
      double from = thinnest + (thickest - thinnest) * step / STEPS;
      add(shapes, bands.between(from, Double.POSITIVE_INFINITY), Fill.flat(tone(step)), Pen.NONE);
    }
    return shapes;
  }

  private static Tone tone(int step) {
    return LightnessScale.at(step / (STEPS - 1.0));
  }

  private List<Shape> outside() {
    List<Shape> shapes = new ArrayList<>();
    if (film.target().hasLeast()) {
      double least = film.target().least();
      add(shapes, bands.between(Double.NEGATIVE_INFINITY, least), Fill.dotted(Tone.INK), Pen.NONE);
      add(shapes, bands.line(least), Fill.NONE, Pen.FINE);
    }
    if (film.target().hasMost()) {
      double most = film.target().most();
      add(shapes, bands.between(most, Double.POSITIVE_INFINITY), Fill.ruled(Tone.INK), Pen.NONE);
      add(shapes, bands.line(most), Fill.NONE, Pen.FINE);
    }
    return shapes;
  }

  private static void add(List<Shape> shapes, List<List<Point>> rings, Fill fill, Pen pen) {
    if (!rings.isEmpty()) {
      shapes.add(new Shape.Surface(rings, fill, pen));
    }
  }

  private List<Shape> places() {
    List<Shape> shapes = new ArrayList<>();
    for (FilmField.PlaceFilm p : film.places()) {
      double x = scale.x(p.x());
      double y = scale.y(p.y());
      shapes.add(new Shape.Circle(x, y, 0.6, Fill.flat(Tone.INK), Pen.NONE));
      shapes.add(Words.of(x, y - 1.2, SIZE, Align.MIDDLE, figure(p)).strong().withHalo());
    }
    return shapes;
  }

  /** In brackets where the map goes without it. */
  private String figure(FilmField.PlaceFilm place) {
    String figure = words.figure(place.film(), Dimension.FILM);
    return film.isSetAside(place) ? inBrackets(figure, words) : figure;
  }

  static String inBrackets(String figure, PhraseWriter words) {
    return words.say("drawing.panel-map.set-aside", figure);
  }

  /** Each beside the place it names where a build stands on it, so that both can be read. */
  private List<Shape> asked() {
    SpotLetters room = new SpotLetters(LETTER, WIDTH, scale.bottom(), 0);
    film.places().forEach(p -> room.number(new Point(scale.x(p.x()), scale.y(p.y()) - SIZE * 0.6)));
    List<Shape> shapes = new ArrayList<>();
    for (PanelOutline.Place place : asked) {
      Point at = new Point(scale.x(place.x()), scale.y(place.y()));
      shapes.addAll(asked(PanelOutline.nameOf(place.number()), at, room.letter(at)));
    }
    return shapes;
  }

  private static List<Shape> asked(String letter, Point at, Point stands) {
    double x = stands.x();
    double y = stands.y();
    return List.of(
        Shape.Line.of(at.x(), at.y(), x, y, Pen.FIRM),
        new Shape.Circle(at.x(), at.y(), 0.8, Fill.flat(Tone.INK), Pen.NONE),
        Shape.Surface.box(x - 2.2, y - 2.2, 4.4, 4.4, Fill.flat(Tone.SHEET), Pen.FIRM),
        Words.of(x, y + SIZE * 0.36, SIZE, Align.MIDDLE, letter).strong());
  }

  private double least() {
    return film.film().stream().filter(f -> !f.isNaN()).mapToDouble(f -> f).min().orElse(0);
  }

  private double most() {
    return film.film().stream().filter(f -> !f.isNaN()).mapToDouble(f -> f).max().orElse(0);
  }

  private String description() {
    List<String> areas = film.areas().stream().map(a -> area(a, words)).toList();
    return words.say(
        "drawing.panel-map.description",
        words.quantity(film.mean(), Dimension.FILM),
        words.range(film.target(), Dimension.FILM),
        areas.isEmpty() ? words.say("drawing.panel-map.all-inside") : String.join("; ", areas));
  }

  /** An area in words: 'thin along the lower edge, 12 µm under'. */
  static String area(FilmField.Area area, PhraseWriter words) {
    return words.say(
        area.thin() ? "drawing.area.thin" : "drawing.area.thick",
        words.word(area.where()),
        words.quantity(Math.abs(area.by()), Dimension.FILM),
        words.quantity(area.shareOfPanel(), Dimension.SHARE));
  }
}
