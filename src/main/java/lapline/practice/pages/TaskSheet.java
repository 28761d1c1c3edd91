package lapline.practice.pages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.Paper;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.SheetColumn;
import lapline.practice.Measurand;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTask.Section;

/**
 * What an apprentice takes to the booth: what to prepare, what to beware of, the targets, the panel
 * with its numbered places, a box for every reading, and the code that opens the entry page of this
 * very panel. One page where all of it fits in type of 8 pt; else a page to read, with the boxes
 * for the set-up where they have room, and pages to write on, each with the code and with the panel
 * beside its boxes.
 */
public final class TaskSheet {
  private static final double MARGIN = 11;
  private static final double GUTTER = 6;
  private static final double BELOW_CODE = MARGIN + SheetParts.QR + 5;

  /** Rows no lower than this part of full height, so that a pencil finds room. */
  private static final double LOWEST = 0.96;

  private static final double HIGHEST = 1.25;
  private static final double STEP = 0.02;

  private final PracticeTask task;
  private final Head head;
  private final PhraseWriter words;
  private final SheetParts parts;
  private final SheetBoxes boxes;

  /**
   * What stands at the head of the sheet.
   *
   * @param code the attempt's short code, for typing
   * @param address what the square code opens
   * @param changed the one thing changed this time; may be empty
   */
  public record Head(String person, String day, String code, String address, String changed) {}

  /** What is written on one page: all of it, what is to be read, or boxes to write in. */
  private enum Kind {
    WHOLE,
    READ,
    WRITE
  }

  /** A page of the sheet before it is laid out. */
  private record Plan(Kind kind, List<Section> sections) {}

  public TaskSheet(
      PracticeTask task,
      Function<String, Optional<Measurand>> measurands,
      Head head,
      PhraseWriter words) {
    this.task = task;
    this.head = head;
    this.words = words;
    this.parts = new SheetParts(task, head, words, new CriterionWriter(words, measurands));
    this.boxes = new SheetBoxes(task, id -> measurands.apply(id).orElseThrow(), words);
  }

  public String title() {
    return words.say("practice-sheet.title", task.title(), head.person());
  }

  /** The pages, in the order in which they are used. */
  public List<Drawing> on(Paper paper) {
    List<Plan> plans = plans(paper);
    return IntStream.rangeClosed(1, plans.size())
        .mapToObj(page -> drawing(paper, plans.get(page - 1), page, plans.size()))
        .toList();
  }

  private List<Plan> plans(Paper paper) {
    Plan whole = new Plan(Kind.WHOLE, task.sections());
    if (fits(paper, whole, 1)) {
      return List.of(whole);
    }
    Plan first = first(paper);
    List<Plan> plans = new ArrayList<>(List.of(first));
    int from = first.sections().size();
    while (from < task.sections().size()) {
      Plan next = fullest(paper, from);
      plans.add(next);
      from += next.sections().size();
    }
    return plans;
  }

  /** The page to read, with as many of the boxes as make both pages easiest to read. */
  private Plan first(Paper paper) {
    int all = task.sections().size();
    return IntStream.range(0, all)
        .mapToObj(sections -> plan(Kind.READ, 0, sections))
        .filter(read -> fits(paper, read, LOWEST))
        .max(
            Comparator.comparing(
                read ->
                    Math.min(
                        scale(paper, read),
                        scale(paper, plan(Kind.WRITE, read.sections().size(), all)))))
        .orElse(plan(Kind.READ, 0, 0));
  }

  /** As many of the sections as a page to write on has room for, one at the least. */
  private Plan fullest(Paper paper, int from) {
    int to = task.sections().size();
    while (to > from + 1 && !fits(paper, plan(Kind.WRITE, from, to), LOWEST)) {
      to--;
    }
    return plan(Kind.WRITE, from, to);
  }

  private Plan plan(Kind kind, int from, int to) {
    return new Plan(kind, task.sections().subList(from, to));
  }

  private boolean fits(Paper paper, Plan plan, double scale) {
    return lay(paper, plan, "", scale, new ArrayList<>()) <= paper.height() - MARGIN;
  }

  /** The largest at which everything fits; less than the lowest where nothing does. */
  private double scale(Paper paper, Plan plan) {
    double scale = HIGHEST;
    while (scale > LOWEST && !fits(paper, plan, scale)) {
      scale -= STEP;
    }
    return scale;
  }

  private Drawing drawing(Paper paper, Plan plan, int page, int pages) {
    String which = pages == 1 ? "" : words.say("practice-sheet.page", page, pages);
    List<Shape> shapes = new ArrayList<>();
    parts.code(shapes, paper.width() - MARGIN - SheetParts.QR, MARGIN);
    lay(paper, plan, which, Math.max(LOWEST, scale(paper, plan)), shapes);
    return new Drawing(
        "task-sheet-" + page,
        paper.width(),
        paper.height(),
        pages == 1 ? title() : title() + ", " + which,
        words.say("practice-sheet.description." + plan.kind(), head.code()),
        shapes);
  }

  /** Writes one page but for its code and returns how far down it reaches. */
  private double lay(Paper paper, Plan plan, String which, double scale, List<Shape> shapes) {
    double width = paper.width() - 2 * MARGIN;
    double half = (width - GUTTER) / 2;
    SheetColumn top =
        new SheetColumn(shapes, MARGIN, MARGIN, width - SheetParts.QR - GUTTER, scale);
    parts.head(top, which, plan.kind() != Kind.WRITE);
    SheetColumn left = top.beside(MARGIN, top.y(), half);
    SheetColumn right = top.beside(MARGIN + half + GUTTER, Math.max(top.y(), BELOW_CODE), half);
    above(plan, left, right);
    int beside = besideEachOther(plan.sections(), left, right);
    SheetColumn rest = top.beside(MARGIN, Math.max(left.y(), right.y()), width);
    plan.sections().stream().skip(beside).forEach(s -> boxes.write(s, rest));
    return rest.y();
  }

  /** What is to be read before the boxes. */
  private void above(Plan plan, SheetColumn left, SheetColumn right) {
    switch (plan.kind()) {
      case WHOLE -> {
        parts.ready(left);
        parts.panel(right);
        SheetColumn column = shorter(left, right);
        parts.targets(column);
        parts.needed(plan.sections(), column);
      }
      case READ -> {
        parts.ready(left);
        parts.targets(right);
        parts.needed(plan.sections(), right);
      }
      case WRITE -> {
        parts.needed(plan.sections(), left);
        parts.panel(right);
      }
    }
  }

  private static SheetColumn shorter(SheetColumn left, SheetColumn right) {
    return left.y() <= right.y() ? left : right;
  }

  /** The first sections fill up the shorter column; returns how many found room there. */
  private int besideEachOther(List<Section> sections, SheetColumn left, SheetColumn right) {
    int written = 0;
    for (Section section : sections) {
      SheetColumn column = shorter(left, right);
      SheetColumn trial = column.trial();
      boxes.write(section, trial);
      if (!boxes.isNarrow(section) || trial.y() > Math.max(left.y(), right.y())) {
        return written;
      }
      boxes.write(section, column);
      written++;
    }
    return written;
  }
}
