package lapline.practice.pages;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.Shape.Align;
import lapline.pages.drawing.Shape.Words;
import lapline.pages.drawing.TypeFace;
import lapline.practice.Criterion.Judged;
import lapline.practice.PanelOutline;
import lapline.practice.PanelScore;
import lapline.practice.PanelScore.Instance;
import lapline.practice.PanelScore.Result;
import lapline.practice.PracticeTask;
import lapline.practice.Whereabouts;
import lapline.practice.quantity.PanelQuantities;
import lapline.trade.measure.Verdict;

/**
 * The panel with what was found at its places: filled where something is left to do, and beside a
 * place the figure that was read there. For panels that no film is read on.
 */
final class FoundPlaces {
  private static final double WIDTH = 100;
  private static final double TALLEST = 110;
  private static final double SIZE = TypeFace.ON_PHONES;

  private final PracticeTask task;
  private final List<Result> byPlace;
  private final PhraseWriter words;
  private final PanelScale scale;

  FoundPlaces(PracticeTask task, PanelScore score, PhraseWriter words) {
    this.task = task;
    this.byPlace = score.results().stream().filter(FoundPlaces::isByPlace).toList();
    this.words = words;
    this.scale = PanelScale.fitting(task.panel(), 5, 5, WIDTH - 10, TALLEST);
  }

  /** Read at places of the bare panel, and not worked out from other readings. */
  private static boolean isByPlace(Result r) {
    return r.judged()
        && PanelQuantities.find(r.criterion().quantity()).isEmpty()
        && !r.instances().isEmpty()
        && r.instances().stream().allMatch(i -> i.where().place() > 0 && i.where().coat() == 0);
  }

  boolean canDraw() {
    return !byPlace.isEmpty();
  }

  Drawing drawing() {
    PanelPlan plan = new PanelPlan(scale, SIZE, words);
    List<Shape> shapes = new ArrayList<>(plan.ground());
    List<Shape> figures = figures();
    shapes.addAll(figures.isEmpty() ? plan.features() : plan.outlines());
    shapes.addAll(plan.edge());
    shapes.addAll(plan.numbered(marked()));
    shapes.addAll(figures);
    double y = scale.bottom() + SIZE * 2;
    shapes.addAll(plan.scaleBar(scale.left(), y));
    return new Drawing("found-places", WIDTH, y + SIZE, title(), description(), shapes);
  }

  /** What the drawing means, in a sentence. */
  String title() {
    if (!marked().isEmpty()) {
      return words.say("drawing.found.title");
    }
    return words.say(
        byPlace.stream().allMatch(FoundPlaces::isChoice)
            ? "drawing.found.nothing"
            : "drawing.found.read");
  }

  private Set<Integer> marked() {
    Set<Integer> marked = new HashSet<>();
    for (Result r : byPlace) {
      r.instances().stream().filter(i -> isFault(r, i)).forEach(i -> marked.add(i.where().place()));
    }
    return marked;
  }

  private static boolean isFault(Result r, Instance i) {
    return isChoice(r) ? i.value() != 0 : Verdict.of(i.conformance()) == Verdict.MISSED;
  }

  private static boolean isChoice(Result r) {
    return r.criterion().judged() == Judged.SHARE;
  }

  private List<Shape> figures() {
    Map<Integer, String> figures = new TreeMap<>();
    for (Result r : byPlace) {
      if (!isChoice(r)) {
        r.instances()
            .forEach(
                i ->
                    figures.putIfAbsent(
                        i.where().place(), words.quantity(i.value(), r.criterion().spoken())));
      }
    }
    List<Shape> shapes = new ArrayList<>();
    figures.forEach(
        (place, figure) -> task.panel().place(place).ifPresent(p -> shapes.add(figure(p, figure))));
    return shapes;
  }

  /** Towards the middle of the panel, where there is room. */
  private Shape figure(PanelOutline.Place p, String figure) {
    double x = scale.x(p.x());
    double y = scale.y(p.y());
    boolean high = y < scale.top() + scale.height() / 2;
    Align align = x < 20 ? Align.START : x > WIDTH - 20 ? Align.END : Align.MIDDLE;
    double aside = align == Align.START ? -SIZE * 0.85 : align == Align.END ? SIZE * 0.85 : 0;
    return Words.of(x + aside, y + SIZE * (high ? 1.9 : -1.2), SIZE, align, figure).withHalo();
  }

  private String description() {
    return byPlace.stream()
        .flatMap(r -> Whereabouts.of(task, r).stream().map(p -> told(r, words.phrase(p))))
        .collect(Collectors.joining(". "));
  }

  private String told(Result r, String where) {
    return words.say("drawing.found.line", r.criterion().label(), where);
  }
}
