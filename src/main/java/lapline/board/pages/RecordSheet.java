package lapline.board.pages;

import java.util.ArrayList;
import java.util.List;
import lapline.board.TakenStep;
import lapline.board.TrainingRecord;
import lapline.board.TrainingRecord.Line;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.Paper;
import lapline.pages.drawing.Pen;
import lapline.pages.drawing.QrCode;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.Shape.Align;
import lapline.pages.drawing.Shape.Words;
import lapline.pages.drawing.Tone;
import lapline.pages.drawing.TypeFace;
import lapline.pages.drawing.VerdictMark;

/** One person's training record on one sheet of paper; of a long history the latest steps. */
public final class RecordSheet {
  private static final double MARGIN = 16;
  private static final double SIZE = 3.4;
  private static final double LEAD = 4.6;
  private static final double GAP = 3;
  private static final double GUTTER = 6;

  /** A square of the code is then half a millimetre, which a phone still reads from a wall. */
  private static final double QR = 22;

  private final TrainingRecord record;
  private final RecordWriter words;
  private final Paper paper;
  private final List<Shape> shapes = new ArrayList<>();
  private double y = MARGIN + 4;

  RecordSheet(TrainingRecord record, RecordWriter words, Paper paper) {
    this.record = record;
    this.words = words;
    this.paper = paper;
  }

  Drawing drawing() {
    head();
    record.lines().forEach(this::line);
    double floor = paper.height() - MARGIN - footHeight();
    steps(floor);
    foot(floor);
    return new Drawing(
        "training-record",
        paper.width(),
        paper.height(),
        words.say("record.sheet.title", record.person().name()),
        words.title(record),
        shapes);
  }

  private void head() {
    text(words.say("record.sheet.title", record.person().name()), 5.6, true, 7);
    lines(words.title(record), MARGIN).forEach(l -> put(l, MARGIN));
    text(
        words.say("record.stand", record.workshop(), words.day(record.made())),
        SIZE,
        false,
        LEAD + GAP);
    mayNot();
    heading(words.say("record.skills"));
  }

  private void mayNot() {
    if (!record.mayNot().isEmpty()) {
      heading(words.say("record.may-not"));
      words.inTheWay(record).forEach(o -> wrapped(o.says(), MARGIN));
      y += GAP;
    }
  }

  /** An operation: its mark, who signed when, what proved it, a code that opens the check. */
  private void line(Line line) {
    shapes.addAll(VerdictMark.at(MARGIN + 1.6, y - 1.2, 1.6, line.mark().filled(), Tone.INK));
    shapes.add(Words.of(MARGIN + 5, y, SIZE, Align.START, line.mark().skill().title()).strong());
    shapes.add(
        Words.of(paper.width() - MARGIN, y, SIZE, Align.END, words.mark(line.mark())).strong());
    double top = y;
    y += LEAD;
    said(line).forEach(this::besideCode);
    if (!line.code().isEmpty()) {
      shapes.add(QrCode.at(words.checkOf(line), paper.width() - MARGIN - QR, top + LEAD / 2, QR));
      y = Math.max(y, top + LEAD * 1.5 + QR);
    }
    y += GAP;
  }

  private List<String> said(Line line) {
    String signed = words.signed(line);
    List<String> said = new ArrayList<>();
    said.add(line.mark().skill().allows());
    said.add(line.stopped() == null ? words.say("record.signed") + ": " + signed : signed);
    said.add(words.say("record.proof") + ": " + words.proof(line));
    if (!line.code().isEmpty()) {
      said.add(words.check(line));
    }
    return said;
  }

  private void besideCode(String text) {
    double left = MARGIN + 5;
    double room = paper.width() - MARGIN - QR - GUTTER - left;
    TypeFace.wrap(text, SIZE, room).forEach(l -> put(l, left));
  }

  private void steps(double floor) {
    heading(words.say("record.steps"));
    if (record.steps().isEmpty()) {
      wrapped(words.say("record.no-steps"), MARGIN);
    }
    int shown = 0;
    for (TakenStep step : record.steps()) {
      List<String> lines = lines(words.step(step), MARGIN);
      if (y + LEAD * (lines.size() + 1) > floor) {
        break;
      }
      lines.forEach(l -> put(l, MARGIN));
      shown++;
    }
    if (shown < record.steps().size()) {
      wrapped(words.say("record.more", record.steps().size() - shown), MARGIN);
    }
  }

  private double footHeight() {
    return LEAD * (lines(words.say("record.not-shown.text"), MARGIN).size() + 2);
  }

  private void foot(double floor) {
    y = floor + LEAD;
    heading(words.say("record.not-shown"));
    wrapped(words.say("record.not-shown.text"), MARGIN);
  }

  private void heading(String text) {
    text(text, SIZE * 1.15, true, 1.6);
    shapes.add(Shape.Line.of(MARGIN, y, paper.width() - MARGIN, y, Pen.FINE));
    y += LEAD;
  }

  private void text(String text, double size, boolean bold, double step) {
    Words line = Words.of(MARGIN, y, size, Align.START, text);
    shapes.add(bold ? line.strong() : line);
    y += step;
  }

  private void wrapped(String text, double left) {
    lines(text, left).forEach(l -> put(l, left));
  }

  private List<String> lines(String text, double left) {
    return TypeFace.wrap(text, SIZE, paper.width() - MARGIN - left);
  }

  private void put(String line, double left) {
    shapes.add(Words.of(left, y, SIZE, Align.START, line));
    y += LEAD;
  }
}
