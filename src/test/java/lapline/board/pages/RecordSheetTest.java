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

  private static String code(Skill skill) {
    return (skill.id() + "k7f3mw2qk7f3mw2qk7f3mw2qk7").substring(0, 26);
  }

  private static PrintedSheet printed(List<TrainingRecord.Line> lines, Paper paper)
      throws Exception {
    RecordWriter words = new RecordWriter(new Messages(), SKILLS, ZoneId.of("UTC"), CHECK);
    Named person = new Named(UUID.randomUUID(), "Ana Łukasz");
    TrainingRecord record =
        new TrainingRecord(person, "Long Acre Panel School", GRANTED, lines, List.of());
    Drawing sheet = new RecordSheet(record, words, paper).drawing();
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
