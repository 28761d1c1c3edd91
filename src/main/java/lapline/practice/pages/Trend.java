package lapline.practice.pages;

import java.util.ArrayList;
import java.util.List;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.Fill;
import lapline.pages.drawing.Pen;
import lapline.pages.drawing.Point;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.Shape.Align;
import lapline.pages.drawing.Shape.Words;
import lapline.pages.drawing.Tone;
import lapline.pages.drawing.TypeFace;

/**
 * A person's attempts at one task from the first down to the latest: the practice score of each,
 * filled where the panel was accepted, and beside it what was changed for it.
 */
public final class Trend {
  private static final double WIDTH = 100;
  private static final double LEFT = 4;
  private static final double ROOM = 92;
  private static final double SIZE = TypeFace.ON_PHONES;
  private static final double ROW = 15;
  private static final double TOP = 9;

  /**
   * One attempt.
   *
   * @param changed what was changed for it; empty where nothing was noted
   */
  public record Panel(String when, double score, boolean accepted, String changed) {}

  private final List<Panel> panels;
  private final PhraseWriter words;

  public Trend(List<Panel> panels, PhraseWriter words) {
    this.panels = panels;
    this.words = words;
  }

  public Drawing drawing() {
    List<Shape> shapes = new ArrayList<>(ruler());
    if (panels.size() > 1) {
      shapes.add(new Shape.Line(points(), Pen.of(Tone.ACCENT, 0.5)));
    }
    for (int i = 0; i < panels.size(); i++) {
      shapes.addAll(panel(i));
    }
    return new Drawing(
        "trend", WIDTH, bottom() + 2, words.say("drawing.trend.title"), description(), shapes);
  }

  private double bottom() {
    return TOP + ROW * panels.size();
  }

  private List<Shape> ruler() {
    List<Shape> shapes = new ArrayList<>();
    for (int score = 0; score <= 100; score += 25) {
      double x = at(score);
      shapes.add(Shape.Line.of(x, TOP - 2, x, bottom(), Pen.of(Tone.LINE, 0.25)));
      Align align = score == 0 ? Align.START : score == 100 ? Align.END : Align.MIDDLE;
      shapes.add(Words.of(x, TOP - 4, SIZE, align, "" + score).in(Tone.FAINT));
    }
    return shapes;
  }

  private List<Point> points() {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < panels.size(); i++) {
      points.add(new Point(at(panels.get(i).score()), y(i)));
    }
    return points;
  }

  private List<Shape> panel(int i) {
    Panel panel = panels.get(i);
    double x = at(panel.score());
    boolean room = panel.score() < 55;
    List<Shape> shapes = new ArrayList<>();
    shapes.add(
        new Shape.Circle(
            x,
            y(i),
            1.6,
            Fill.flat(panel.accepted() ? Tone.ACCENT : Tone.SHEET),
            Pen.of(Tone.ACCENT, 0.6)));
    double aside = room ? x + 3.5 : x - 3.5;
    Align align = room ? Align.START : Align.END;
    String score = words.say("drawing.trend.score", Math.round(panel.score()), panel.when());
    shapes.add(Words.of(aside, y(i) + SIZE * 0.1, SIZE, align, score).strong().withHalo());
    double width = room ? LEFT + ROOM - aside : aside - LEFT;
    List<String> lines = TypeFace.wrap(panel.changed(), SIZE, width);
    for (int line = 0; line < Math.min(2, lines.size()); line++) {
      shapes.add(
          Words.of(aside, y(i) + SIZE * (1.3 + 1.15 * line), SIZE, align, lines.get(line))
              .withHalo());
    }
    return shapes;
  }

  private double y(int i) {
    return TOP + 2 + ROW * i;
  }

  private static double at(double score) {
    return LEFT + ROOM * Math.max(0, Math.min(100, score)) / 100;
  }

  private String description() {
    List<String> said = new ArrayList<>();
    for (Panel p : panels) {
      said.add(
          words.say(
              p.accepted() ? "drawing.trend.accepted" : "drawing.trend.not-yet",
              p.when(),
              Math.round(p.score()),
              p.changed()));
    }
    return String.join(" ", said);
  }
}
