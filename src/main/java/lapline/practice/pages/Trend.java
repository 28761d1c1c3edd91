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
  private static final double LINE = SIZE * 1.15;
  private static final double TOP = 9;

  /**
   * One attempt.
   *
   * @param changed what was changed for it; empty where nothing was noted
   */
  public record Panel(String when, double score, boolean accepted, String changed) {}

  private final List<Panel> panels;
  private final PhraseWriter words;

  /** Where each attempt stands; a note of more lines takes more room. */
  private final List<Double> rows = new ArrayList<>();

  private double bottom = TOP;

  public Trend(List<Panel> panels, PhraseWriter words) {
    this.panels = panels;
    this.words = words;
    for (Panel panel : panels) {
      rows.add(bottom + 2);
      bottom += ROW + LINE * Math.max(0, note(panel).size() - 1);
    }
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
        "trend", WIDTH, bottom + 2, words.say("drawing.trend.title"), description(), shapes);
  }

  private List<Shape> ruler() {
    List<Shape> shapes = new ArrayList<>();
    for (int score = 0; score <= 100; score += 25) {
      double x = at(score);
      shapes.add(Shape.Line.of(x, TOP - 2, x, bottom, Pen.of(Tone.LINE, 0.25)));
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
    List<Shape> shapes = new ArrayList<>();
    shapes.add(
        new Shape.Circle(
            x,
            y(i),
            1.6,
            Fill.flat(panel.accepted() ? Tone.ACCENT : Tone.SHEET),
            Pen.of(Tone.ACCENT, 0.6)));
    double aside = aside(panel);
    Align align = isRightOfMark(panel) ? Align.START : Align.END;
    String score = words.say("drawing.trend.score", Math.round(panel.score()), panel.when());
    shapes.add(Words.of(aside, y(i) + SIZE * 0.1, SIZE, align, score).strong().withHalo());
    List<String> note = note(panel);
    for (int line = 0; line < note.size(); line++) {
      double below = y(i) + SIZE * 1.3 + LINE * line;
      shapes.add(Words.of(aside, below, SIZE, align, note.get(line)).withHalo());
    }
    return shapes;
  }

  private static List<String> note(Panel panel) {
    double aside = aside(panel);
    double width = isRightOfMark(panel) ? LEFT + ROOM - aside : aside - LEFT;
    return panel.changed().isBlank() ? List.of() : TypeFace.wrap(panel.changed(), SIZE, width);
  }

  private static boolean isRightOfMark(Panel panel) {
    return panel.score() < 55;
  }

  private static double aside(Panel panel) {
    return at(panel.score()) + (isRightOfMark(panel) ? 3.5 : -3.5);
  }

  private double y(int i) {
    return rows.get(i);
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
