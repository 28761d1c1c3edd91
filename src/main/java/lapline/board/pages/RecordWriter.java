package lapline.board.pages;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import lapline.board.SkillMark;
import lapline.board.TakenStep;
import lapline.board.TrainingRecord.Line;
import lapline.board.TrainingRecord.Proof;
import lapline.pages.Messages;
import lapline.signoff.Skills;

/** Writes the sentences of a training record, the same on the page and on the printed sheet. */
final class RecordWriter {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

  private final Messages messages;
  private final Skills skills;
  private final ZoneId zone;

  RecordWriter(Messages messages, Skills skills, ZoneId zone) {
    this.messages = messages;
    this.skills = skills;
    this.zone = zone;
  }

  String say(String key, Object... values) {
    return messages.say(key, values);
  }

  String day(Instant at) {
    return at == null ? "" : DAY.format(at.atZone(zone));
  }

  String mark(SkillMark mark) {
    return say("board.mark." + mark.kind(), day(mark.until()), mark.have(), mark.need());
  }

  /** Who signed when, under which version of the rule. */
  String signed(Line line) {
    return line.granted() == null
        ? say("record.never")
        : say(
            "record.signed-by",
            day(line.granted()),
            line.examiner().isEmpty() ? say("record.unknown") : line.examiner(),
            line.ruleVersion());
  }

  /** What the examiner had before them, or what there is so far. */
  String proof(Line line) {
    Proof proof = line.proof();
    if (proof == null) {
      return say("record.so-far", line.tried(), line.accepted());
    }
    return say(
        "record.proof-then",
        say(proof.lesson() ? "record.lesson" : "record.no-lesson"),
        say(proof.exam() ? "record.exam" : "record.no-exam"),
        proof.counting(),
        proof.looked(),
        proof.graded(),
        proof.tried());
  }

  String step(TakenStep step) {
    String skill = skills.find(step.skill()).map(s -> s.title()).orElse(step.skill());
    return say(
        "record.step",
        day(step.at()),
        skill,
        say("record.step." + step.kind()),
        step.by(),
        step.reason());
  }
}
