package lapline.signoff.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import lapline.content.ContentFiles;
import lapline.pages.Messages;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.Paper;
import lapline.pages.drawing.PdfPage;
import lapline.pages.drawing.PrintedSheet;
import lapline.signoff.Evidence;
import lapline.signoff.ShowCertificate.Certified;
import lapline.signoff.SignOff;
import lapline.signoff.Skill;
import lapline.signoff.SkillsReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The certificate says who, what, until when and by whom, and claims no more than it can show. */
class CertificateTest {
  private static final Instant GRANTED = Instant.parse("2026-03-03T23:30:00Z");
  private static final ZoneId ZONE = ZoneId.of("Europe/Dublin");
  private static final String CODE = "k7f3mw2qk7f3mw2qk7f3mw2qk7";

  @ParameterizedTest
  @EnumSource(Paper.class)
  void it_is_one_page_with_the_whole_decision_and_a_code_that_opens_the_check(Paper paper)
      throws Exception {
    for (Skill skill : skills()) {
      PrintedSheet printed = printed(skill, paper);
      printed.keep("certificate-" + skill.id() + "-" + paper);
      assertThat(printed.pages()).isEqualTo(1);
      assertThat(printed.title()).isEqualTo("Ana Łukasz-Featherstonehaugh: " + skill.title());
      assertThat(printed.decoded()).isEqualTo("https://lapline.example.org/check?code=" + CODE);
      assertThat(printed.hasBlankRim()).isTrue();
      assertThat(printed.text())
          .contains("Long Acre Panel School", skill.title(), skill.allows(), CODE)
          .contains("Signed off on 3 March 2026", "Good until 3 March 2028")
          .contains("Decided by Emory Vane", "Rule version 1")
          .contains("5 of the last 6 practice panels", "One of them was also accepted")
          .contains("9 panels were tried in all")
          .contains("The lesson was done and its short exam passed")
          .contains("as of 4 March 2026");
    }
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void it_says_that_it_is_no_licence_and_which_training_it_does_not_replace(Paper paper)
      throws Exception {
    assertThat(printed(skills().get(0), paper).text())
        .contains("not a licence", "isocyanate training", "respirator fit tests")
        .contains("that page says what the sign-off is worth today");
  }

  @Test
  void what_was_not_learnt_here_is_not_claimed() throws Exception {
    Skill skill = skills().get(0);
    for (boolean lesson : new boolean[] {true, false}) {
      assertThat(printed(certified(skill, lesson, !lesson), Paper.A4).text())
          .doesNotContain("The lesson was done")
          .contains("5 of the last 6 practice panels");
    }
  }

  private static List<Skill> skills() {
    List<Skill> skills =
        new SkillsReader(Set.of("preparing", "masking", "coverage", "clear"))
            .read(new ContentFiles(Path.of(".")))
            .all();
    assertThat(skills).hasSizeGreaterThanOrEqualTo(4);
    return skills;
  }

  private static PrintedSheet printed(Skill skill, Paper paper) throws Exception {
    return printed(certified(skill, true, true), paper);
  }

  private static PrintedSheet printed(Certified certified, Paper paper) throws Exception {
    Drawing sheet =
        new Certificate(certified, ZONE, "https://lapline.example.org/check", new Messages())
            .on(paper);
    return PrintedSheet.of(PdfPage.of(sheet.title(), Locale.ENGLISH, List.of(sheet)));
  }

  private static Certified certified(Skill skill, boolean lesson, boolean exam) {
    UUID somebody = UUID.randomUUID();
    SignOff signOff =
        new SignOff(
            UUID.randomUUID(),
            somebody,
            somebody,
            skill.id(),
            "1",
            CODE,
            SignOff.State.GRANTED,
            somebody,
            GRANTED,
            Instant.parse("2028-03-03T23:30:00Z"));
    return new Certified(
        signOff,
        "Ana Łukasz-Featherstonehaugh",
        "Long Acre Panel School",
        "Emory Vane",
        new Evidence(somebody, skill, lesson, exam, panels(), 9, null),
        GRANTED.plus(Duration.ofDays(1)));
  }

  /** Five that count, one of them accepted at the bench, and one slip. */
  private static List<Evidence.Panel> panels() {
    List<Evidence.Panel> panels = new java.util.ArrayList<>();
    panels.addAll(Collections.nCopies(4, panel(true, false)));
    panels.add(panel(true, true));
    panels.add(panel(false, false));
    return panels;
  }

  private static Evidence.Panel panel(boolean good, boolean atBench) {
    return new Evidence.Panel(UUID.randomUUID(), "any/task", GRANTED, 90, good, atBench, false);
  }
}
