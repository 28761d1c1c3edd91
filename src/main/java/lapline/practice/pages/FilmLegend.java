package lapline.practice.pages;

import java.util.ArrayList;
import java.util.List;
import lapline.pages.drawing.Fill;
import lapline.pages.drawing.LightnessScale;
import lapline.pages.drawing.Pen;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.Shape.Align;
import lapline.pages.drawing.Shape.Words;
import lapline.pages.drawing.Tone;
import lapline.pages.drawing.TypeFace;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.TargetRange;

/** Reads a panel map: the scale of builds from thin to thick with the range marked on it. */
final class FilmLegend {
  static final double HEIGHT = 16;
  private static final double SIZE = TypeFace.ON_PHONES;
  private static final int STEPS = 28;

  private final TargetRange target;
  private final double thinnest;
  private final double thickest;
  private final PhraseWriter words;

  FilmLegend(TargetRange target, double thinnest, double thickest, PhraseWriter words) {
    this.target = target;
    this.thinnest = thinnest;
    this.thickest = Math.max(thickest, thinnest * 1.0001 + 1e-9);
    this.words = words;
  }

  List<Shape> shapes(double x, double y, double width) {
    List<Shape> shapes = new ArrayList<>();
    for (int i = 0; i < STEPS; i++) {
      shapes.add(
          Shape.Surface.box(
              x + width * i / STEPS,
              y,
              width / STEPS + 0.05,
              4,
              Fill.flat(LightnessScale.at(i / (STEPS - 1.0))),
              Pen.NONE));
    }
    double least = at(target.least(), x, width);
    double most = at(target.most(), x, width);
    box(shapes, x, least, y, Fill.dotted(Tone.INK));
    box(shapes, most, x + width, y, Fill.ruled(Tone.INK));
    box(shapes, least, most, y, Fill.NONE);
    shapes.addAll(labels(x, y, width, least, most));
    return shapes;
  }

  private static void box(List<Shape> shapes, double from, double to, double y, Fill fill) {
    if (to - from > 0.2) {
      shapes.add(Shape.Surface.box(from, y, to - from, 4, fill, Pen.FINE));
    }
  }

  private List<Shape> labels(double x, double y, double width, double least, double most) {
    List<Shape> shapes = new ArrayList<>();
    double below = y + 4 + SIZE * 1.2;
    shapes.add(
        Words.of(
                Math.max(x + 18, Math.min(x + width - 18, (least + most) / 2)),
                below,
                SIZE,
                Align.MIDDLE,
                words.say("drawing.legend.range", words.range(target, Dimension.FILM)))
            .strong());
    if (least > x + 0.2) {
      shapes.add(
          Words.of(x, below + SIZE * 1.4, SIZE, Align.START, words.say("drawing.legend.below")));
    }
    if (most < x + width - 0.2) {
      shapes.add(
          Words.of(
              x + width, below + SIZE * 1.4, SIZE, Align.END, words.say("drawing.legend.above")));
    }
    return shapes;
  }

  private double at(double film, double x, double width) {
    double share = (film - thinnest) / (thickest - thinnest);
    return x + width * Math.max(0, Math.min(1, share));
  }
}
