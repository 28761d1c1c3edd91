package lapline.practice.pages;

import java.util.ArrayList;
import java.util.List;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.Pen;
import lapline.pages.drawing.Point;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.Shape.Align;
import lapline.pages.drawing.Shape.Words;
import lapline.pages.drawing.Tone;
import lapline.pages.drawing.TypeFace;
import lapline.practice.SprayPlan;
import lapline.trade.measure.Dimension;

/** The dry film across the passes as it is, dashed, and as it would be, with pass centres. */
final class PlanDrawing {
  private static final double WIDTH = 100;
  private static final double LEFT = 13;
  private static final double ROOM = 84;
  private static final double TOP = 9;
  private static final double TALL = 42;
  private static final double SIZE = TypeFace.ON_PHONES;
  private static final int STEPS = 240;

  private final SprayPlan now;
  private final SprayPlan then;
  private final PhraseWriter words;
  private final double length;
  private final double highest;

  PlanDrawing(SprayPlan now, SprayPlan then, PhraseWriter words) {
    this.now = now;
    this.then = then;
    this.words = words;
    this.length = 4 * Math.max(now.spacing(), then.spacing());
    this.highest = 1.2 * Math.max(most(now), most(then));
  }

  private static double most(SprayPlan plan) {
    return plan.dryFilm() / plan.ripple().mean() * plan.ripple().most();
  }

  Drawing drawing() {
    List<Shape> shapes = new ArrayList<>();
    double ground = TOP + TALL;
    shapes.add(Shape.Line.of(LEFT, ground, LEFT + ROOM, ground, Pen.FINE));
    shapes.add(Shape.Line.of(LEFT, TOP, LEFT, ground, Pen.FINE));
    shapes.add(
        Words.of(
            1,
            TOP - 4,
            SIZE,
            Align.START,
            words.say("drawing.film-cut.film", words.unit(Dimension.FILM))));
    shapes.add(figure(0));
    shapes.add(figure(now.dryFilm()));
    if (Math.abs(up(now.dryFilm()) - up(then.dryFilm())) > SIZE) {
      shapes.add(figure(then.dryFilm()));
    }
    shapes.add(new Shape.Line(line(now), Pen.of(Tone.FAINT, 0.6).dash()));
    shapes.add(new Shape.Line(line(then), Pen.of(Tone.ACCENT, 0.9)));
    shapes.addAll(ticks(ground));
    return new Drawing(
        "plan",
        WIDTH,
        ground + SIZE * 3,
        words.say("drawing.plan.title"),
        words.say(
            "drawing.plan.description",
            words.quantity(now.dryFilm(), Dimension.FILM),
            words.quantity(then.dryFilm(), Dimension.FILM)),
        shapes);
  }

  private Shape figure(double film) {
    return Words.of(
        LEFT - 1, up(film) + SIZE * 0.35, SIZE, Align.END, words.figure(film, Dimension.FILM));
  }

  private List<Point> line(SprayPlan plan) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= STEPS; i++) {
      double y = length * i / STEPS;
      points.add(new Point(LEFT + ROOM * i / STEPS, up(plan.dryFilmAt(y))));
    }
    return points;
  }

  private List<Shape> ticks(double ground) {
    List<Shape> shapes = new ArrayList<>();
    for (double y = 0; y <= length * 1.0001; y += then.spacing()) {
      double x = LEFT + ROOM * y / length;
      shapes.add(Shape.Line.of(x, ground - 1.5, x, ground + 1.5, Pen.FIRM));
    }
    shapes.add(
        Words.of(
            LEFT + ROOM / 2,
            ground + SIZE * 1.8,
            SIZE,
            Align.MIDDLE,
            words.say("drawing.plan.passes", words.quantity(length, Dimension.LENGTH))));
    return shapes;
  }

  private double up(double film) {
    return TOP + TALL * (1 - Math.max(0, Math.min(1, film / highest)));
  }
}
