package lapline.board.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import lapline.board.Named;
import lapline.board.SkillMark;
import lapline.board.TakenStep;
import lapline.board.TrainingRecord;
import lapline.content.ContentFiles;
import lapline.pages.Messages;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.Paper;
import lapline.pages.drawing.PdfPage;
import lapline.pages.drawing.PrintedSheet;
import lapline.signoff.Skill;
import lapline.signoff.Skills;
import lapline.signoff.SkillsReader;
import lapline.signoff.Step;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The record that an inspector holds: one page, and a code for each sign-off that opens its check.
 */
class RecordSheetTest {
  private static final Instant GRANTED = Instant.parse("2026-03-03T12:00:00Z");
  private static final Instant ENDS = Instant.parse("2028-03-03T12:00:00Z");
  private static final String CHECK = "https://lapline.example.org/check";
  private static final Skills SKILLS =
      new SkillsReader(Set.of("preparing", "masking", "coverage", "clear"))
          .read(new ContentFiles(Path.of(".")));

  @ParameterizedTest
  @EnumSource(Paper.class)
  void each_sign_off_has_a_code_that_opens_its_check_and_what_is_not_signed_off_has_none(
      Paper paper) throws Exception {
    List<Skill> skills = SKILLS.all();
    List<TrainingRecord.Line> lines =
        skills.stream().map(s -> line(s, s == skills.get(0) ? "" : code(s))).toList();
    PrintedSheet printed = printed(lines, paper);
    printed.keep("training-record-" + paper);
    assertThat(printed.pages()).isEqualTo(1);
    assertThat(printed.hasBlankRim()).isTrue();
    printed.keep("training-record-" + paper);
    assertThat(printed.allCodes())
        .isEqualTo(skills.stream().skip(1).map(s -> CHECK + "?code=" + code(s)).sorted().toList());
    assertThat(printed.text()).contains("Ana Łukasz", "Long Acre Panel School", "Emory Vane");
    assertThat(printed.smallest()).isGreaterThan(7.95);
  }

  /** Three of four is no answer: the inspector asks which, and what became of the fourth. */
  @Test
  void the_record_names_what_the_person_may_do_and_what_stands_in_the_way_of_the_rest()
      throws Exception {
    List<Skill> skills = SKILLS.all();
    List<TrainingRecord.Line> lines =
        skills.stream()
            .map(
                s ->
                    switch (s.id()) {
                      case "clear" -> suspended(s);
                      case "coverage" -> line(s, "");
                      default -> line(s, code(s));
                    })
            .toList();
    RecordWriter words = words();
    TrainingRecord record = record(lines);
    assertThat(words.title(record))
        .isEqualTo("Ana Łukasz may do this unsupervised today: Preparing a panel, Masking");
    assertThat(words.mineTitle(record))
        .isEqualTo("You may do this unsupervised today: Preparing a panel, Masking");
    assertThat(words.inTheWay(record).stream().map(RecordWriter.Obstacle::says))
        .containsExactly(
            "Clear: suspended since 3 Mar 2026 by Emory Vane. Reason: Fit test has run out.",
            "Coverage and step-out: not yet, 3\u00a0of\u00a08");
    PrintedSheet printed = printed(lines, Paper.A4);
    assertThat(printed.pages()).isEqualTo(1);
    assertThat(printed.text()).contains("Clear: suspended since 3 Mar 2026");
  }

  @Test
  void operations_that_the_same_thing_stops_are_told_together() {
    List<Skill> skills = SKILLS.all();
    TrainingRecord record =
        record(
            List.of(suspended(skills.get(2)), suspended(skills.get(3)), line(skills.get(0), "")));
    assertThat(words().inTheWay(record))
        .extracting(RecordWriter.Obstacle::says)
        .startsWith(
            "Coverage and step-out, Clear: suspended since 3 Mar 2026 by Emory Vane."
                + " Reason: Fit test has run out.")
        .hasSize(2);
    assertThat(words().inTheWay(record)).extracting("stopped").containsExactly(true, false);
  }

  @Test
  void who_may_do_nothing_is_told_so() {
    TrainingRecord record = record(SKILLS.all().stream().map(s -> line(s, "")).toList());
    assertThat(words().title(record)).isEqualTo("Ana Łukasz may do nothing unsupervised today");
    assertThat(record.mayNot()).hasSize(SKILLS.all().size());
  }

  private static TrainingRecord.Line suspended(Skill skill) {
    TrainingRecord.Line good = line(skill, code(skill));
    SkillMark mark =
        new SkillMark(skill, SkillMark.Kind.SUSPENDED, ENDS, false, good.mark().signOff(), 8, 8);
    TakenStep step =
        new TakenStep(
            skill.id(), Step.Kind.SUSPENDED, GRANTED, "Emory Vane", "Fit test has run out.", "");
    return new TrainingRecord.Line(
        mark, GRANTED, "1", "Emory Vane", good.code(), step, good.proof(), 4, 3);
  }

  private static RecordWriter words() {
    return new RecordWriter(new Messages(), SKILLS, ZoneId.of("UTC"), CHECK);
  }

  private static TrainingRecord record(List<TrainingRecord.Line> lines) {
    Named person = new Named(UUID.randomUUID(), "Ana Łukasz");
    return new TrainingRecord(person, "Long Acre Panel School", GRANTED, lines, List.of());
  }

  private static String code(Skill skill) {
    return (skill.id() + "k7f3mw2qk7f3mw2qk7f3mw2qk7").substring(0, 26);
  }

  private static PrintedSheet printed(List<TrainingRecord.Line> lines, Paper paper)
      throws Exception {
    Drawing sheet = new RecordSheet(record(lines), words(), paper).drawing();
    return PrintedSheet.of(PdfPage.of(sheet.title(), Locale.ENGLISH, List.of(sheet)));
  }

  private static TrainingRecord.Line line(Skill skill, String code) {
    boolean signed = !code.isEmpty();
    SkillMark.Kind kind = signed ? SkillMark.Kind.GOOD : SkillMark.Kind.ON_THE_WAY;
    UUID signOff = signed ? UUID.randomUUID() : null;
    return new TrainingRecord.Line(
        new SkillMark(skill, kind, signed ? ENDS : null, false, signOff, 3, 8),
        signed ? GRANTED : null,
        "1",
        "Emory Vane",
        code,
        null,
        signed ? new TrainingRecord.Proof(true, true, 5, 6, 2, 9) : null,
        4,
        3);
  }
}
