package lapline.signoff.pages;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lapline.pages.Messages;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.Paper;
import lapline.pages.drawing.QrCode;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.Shape.Align;
import lapline.pages.drawing.Shape.Words;
import lapline.pages.drawing.SheetColumn;
import lapline.signoff.Evidence;
import lapline.signoff.ShowCertificate.Certified;
import lapline.signoff.Skill;

/**
 * A sign-off on one sheet of paper: what the person may do, until when, who decided on what
 * evidence, and a code that tells whether it is still good. It claims no more than the workshop's
 * own records show.
 */
public final class Certificate {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
  private static final double MARGIN = 24;
  private static final double SCALE = 1.35;
  private static final double QR = 38;
  private static final double GUTTER = 8;
  private static final double LABEL = 48;

  private final Certified certified;
  private final ZoneId zone;
  private final String check;
  private final Messages words;

  /**
   * @param check address of the page that tells what a code is worth
   */
  Certificate(Certified certified, ZoneId zone, String check, Messages words) {
    this.certified = certified;
    this.zone = zone;
    this.check = check;
    this.words = words;
  }

  public Drawing on(Paper paper) {
    List<Shape> shapes = new ArrayList<>();
    SheetColumn sheet = new SheetColumn(shapes, MARGIN, MARGIN, paper.width() - 2 * MARGIN, SCALE);
    head(sheet);
    facts(sheet);
    proof(sheet);
    code(sheet);
    return new Drawing(
        "certificate",
        paper.width(),
        paper.height(),
        words.say("signoff.certificate.title", certified.person(), skill().title()),
        words.say("signoff.certificate.description", certified.signOff().code()),
        shapes);
  }

  private void head(SheetColumn sheet) {
    sheet.quiet(certified.workshop());
    line(sheet, certified.person(), 8);
    sheet.gap(3);
    sheet.paragraph(words.get("signoff.certificate.may"));
    line(sheet, skill().title(), 6);
    sheet.gap(1);
    sheet.paragraph(skill().allows() + ".");
    sheet.gap(2);
  }

  private void facts(SheetColumn sheet) {
    sheet.heading(words.get("signoff.certificate.decision"));
    fact(sheet, "signoff.check.from", day(certified.signOff().granted()));
    fact(sheet, "signoff.check.until", day(certified.signOff().expires()));
    fact(sheet, "signoff.certificate.examiner", certified.examiner());
    fact(sheet, "signoff.rule-version", certified.signOff().ruleVersion());
    fact(sheet, "signoff.check.code", certified.signOff().code());
    sheet.gap(2);
  }

  private void proof(SheetColumn sheet) {
    Evidence then = certified.evidence();
    sheet.heading(words.get("signoff.certificate.proves"));
    sheet.paragraph(
        words.say(
            "signoff.certificate.evidence",
            then.counting(),
            then.panels().size(),
            then.graded(),
            then.tried()));
    if (then.lessonDone() && then.examPassed()) {
      sheet.paragraph(words.get("signoff.certificate.learnt"));
    }
    sheet.gap(2);
    sheet.heading(words.get("signoff.certificate.not"));
    sheet.paragraph(words.get("signoff.certificate.not.text"));
    sheet.gap(6);
  }

  /** The code stands under everything else, with four squares of blank paper around it. */
  private void code(SheetColumn sheet) {
    double top = sheet.y();
    sheet.add(QrCode.at(check + "?code=" + certified.signOff().code(), MARGIN, top, QR));
    SheetColumn note = sheet.beside(MARGIN + QR + GUTTER, top, sheet.width() - QR - GUTTER);
    note.paragraph(words.say("signoff.certificate.check", check));
    note.gap(2);
    note.quiet(words.say("signoff.certificate.made", day(certified.made())));
  }

  private Skill skill() {
    return certified.evidence().skill();
  }

  private void fact(SheetColumn sheet, String key, String value) {
    sheet.gap(4.6);
    sheet.add(Words.of(sheet.left(), sheet.y(), sheet.text(), Align.START, words.get(key)));
    sheet.add(Words.of(sheet.left() + LABEL, sheet.y(), sheet.text(), Align.START, value).strong());
  }

  private static void line(SheetColumn sheet, String text, double size) {
    sheet.gap(size * 1.4);
    sheet.add(Words.of(sheet.left(), sheet.y(), sheet.high(size), Align.START, text).strong());
  }

  private String day(Instant at) {
    return DAY.format(at.atZone(zone));
  }
}
