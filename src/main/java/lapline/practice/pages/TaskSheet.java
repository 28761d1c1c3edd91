package lapline.practice.pages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.Paper;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.SheetColumn;
import lapline.practice.Measurand;
import lapline.practice.PracticeTask;

/**
 * What an apprentice takes to the booth: what to prepare, what to beware of, the targets, the panel
 * with its numbered places, a box for every reading, and the code that opens the entry page of this
 * very panel. One page in type of 8 pt and more, as large as it can be; a task that asks for more
 * than a page holds goes on on another, which has the code once more.
 */
public final class TaskSheet {
  private static final double MARGIN = 8.5;

  /** Heights for the panel in millimetres, the most generous last. */
  private static final double[] PANELS = {43, 48, 56, 66};

  /** The size of rows for which their arrangement is sought. */
  private static final double TIGHT = 0.94;

  /** The same where figures stand below it as well. */
  private static final double[] PANELS_WITH_PLACES = {37, 43, 48, 56, 66};

  private static final double MOST_BETWEEN_ROWS = 3;

  private final PracticeTask task;
  private final Head head;
  private final PhraseWriter words;
  private final SheetParts parts;
  private final List<SheetBlock> before;
  private final List<SheetBlock> sections;

  /**
   * What stands at the head of the sheet.
   *
   * @param code the attempt's short code, for typing
   * @param address what the square code opens
   * @param changed the one thing changed this time; may be empty
   */
  public record Head(String person, String day, String code, String address, String changed) {}

  public TaskSheet(
      PracticeTask task,
      Function<String, Optional<Measurand>> measurands,
      Head head,
      PhraseWriter words) {
    this.task = task;
    this.head = head;
    this.words = words;
    this.parts = new SheetParts(task, head, words);
    SheetTargets targets = new SheetTargets(task, new CriterionWriter(words, measurands), words);
    SheetBoxes boxes =
        new SheetBoxes(task, id -> measurands.apply(id).orElseThrow(), targets, words);
    this.before =
        Stream.of(parts.prepare(), parts.cautions(), targets.others())
            .flatMap(Optional::stream)
            .toList();
    this.sections = task.sections().stream().flatMap(s -> boxes.blocks(s).stream()).toList();
  }

  public String title() {
    return words.say("practice-sheet.title", task.title(), head.person());
  }

  /** The pages, in the order in which they are used; one where all of it fits. */
  public List<Drawing> on(Paper paper) {
    SheetPages pages = pages(paper);
    return IntStream.range(0, pages.pages().size())
        .mapToObj(i -> drawing(paper, pages, i))
        .toList();
  }

  /** Where each place lies is told in figures unless that takes a page of its own. */
  private SheetPages pages(Paper paper) {
    SheetPages told = pages(paper, parts::panelWithPlaces, PANELS_WITH_PLACES);
    if (told.pages().size() == 1) {
      return told;
    }
    SheetPages drawn = pages(paper, parts::panel, PANELS);
    return drawn.pages().size() < told.pages().size() ? drawn : told;
  }

  /** With the largest panel that costs nothing, in the order that takes least height. */
  private SheetPages pages(Paper paper, DoubleFunction<SheetBlock> panel, double[] heights) {
    SheetRows rows = new SheetRows(TIGHT);
    SheetPages best = pages(paper, rows, panel.apply(heights[0]));
    for (int i = 1; i < heights.length; i++) {
      SheetPages larger = pages(paper, rows, panel.apply(heights[i]));
      if (!larger.isAsGoodAs(best)) {
        return best;
      }
      best = larger;
    }
    return best;
  }

  private SheetPages pages(Paper paper, SheetRows rows, SheetBlock panel) {
    List<SheetRow> lowest =
        orders(panel).stream()
            .map(order -> rows.lowest(order, width(paper)))
            .min(Comparator.comparingDouble(SheetRows.Lowest::high))
            .map(SheetRows.Lowest::rows)
            .orElseThrow();
    return SheetPages.of(lowest, scale -> room(paper, scale));
  }

  /** The sections as in the task and on the entry page, the panel anywhere between them. */
  private List<List<SheetBlock>> orders(SheetBlock panel) {
    return IntStream.rangeClosed(0, sections.size()).mapToObj(at -> with(panel, at)).toList();
  }

  private List<SheetBlock> with(SheetBlock panel, int at) {
    List<SheetBlock> blocks = new ArrayList<>(before);
    blocks.addAll(sections.subList(0, at));
    blocks.add(panel);
    blocks.addAll(sections.subList(at, sections.size()));
    return blocks;
  }

  private static double width(Paper paper) {
    return paper.width() - 2 * MARGIN;
  }

  private double room(Paper paper, double scale) {
    return paper.height() - MARGIN - head(paper, 0, 1, new ArrayList<>(), scale);
  }

  /** Writes the head of a page with its code; returns where its rows begin. */
  private double head(Paper paper, int page, int pages, List<Shape> shapes, double scale) {
    double wide = width(paper) - SheetParts.CODE;
    SheetColumn top = new SheetColumn(shapes, MARGIN, MARGIN, wide, scale);
    if (page == 0) {
      parts.head(top, which(page, pages));
    } else {
      parts.shortHead(top, which(page, pages));
    }
    parts.code(shapes, paper.width() - MARGIN - SheetParts.QR, MARGIN);
    return Math.max(top.y(), MARGIN + SheetParts.QR + SheetParts.BELOW_QR);
  }

  private String which(int page, int pages) {
    return pages == 1 ? "" : words.say("practice-sheet.page", page + 1, pages);
  }

  private Drawing drawing(Paper paper, SheetPages sheet, int page) {
    int count = sheet.pages().size();
    List<Shape> shapes = new ArrayList<>();
    double top = head(paper, page, count, shapes, sheet.scale());
    rows(paper, sheet, page, new SheetColumn(shapes, MARGIN, top, width(paper), sheet.scale()));
    return new Drawing(
        "task-sheet-" + (page + 1),
        paper.width(),
        paper.height(),
        count == 1 ? title() : title() + ", " + which(page, count),
        words.say("practice-sheet.description", head.code()),
        shapes);
  }

  /** What height is left over is shared out between the rows. */
  private static void rows(Paper paper, SheetPages sheet, int page, SheetColumn column) {
    List<SheetRow> rows = sheet.pages().get(page);
    double used = rows.stream().mapToDouble(r -> r.high(sheet.scale())).sum();
    double spare = paper.height() - MARGIN - column.y() - used;
    double between = Math.max(0, Math.min(MOST_BETWEEN_ROWS, spare / rows.size()));
    for (SheetRow row : rows) {
      row.write(column);
      column.moveTo(column.y() + between);
    }
  }
}
