package lapline.board.pages;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import lapline.board.SkillMark;
import lapline.board.TakenStep;
import lapline.board.TrainingRecord;
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
  private final String checkAddress;

  /**
   * @param checkAddress of the page that tells what a code is worth
   */
  RecordWriter(Messages messages, Skills skills, ZoneId zone, String checkAddress) {
    this.messages = messages;
    this.skills = skills;
    this.zone = zone;
    this.checkAddress = checkAddress;
  }

  String say(String key, Object... values) {
    return messages.say(key, values);
  }

  String day(Instant at) {
    return at == null ? "" : DAY.format(at.atZone(zone));
  }

  String mark(SkillMark mark) {
    return say("board.mark." + mark.look(), day(mark.until()), mark.have(), mark.need());
  }

  /** What the person may do today, by name: a bare number says nothing of the rest. */
  String title(TrainingRecord record) {
    return title("record.title", record);
  }

  /** The same said to themselves. */
  String mineTitle(TrainingRecord record) {
    return title("record.mine.title", record);
  }

  private String title(String key, TrainingRecord record) {
    String may =
        record.may().stream().map(l -> l.mark().skill().title()).collect(Collectors.joining(", "));
    return say(key + (may.isEmpty() ? ".none" : ".some"), record.person().name(), may);
  }

  /**
   * What stands in the way of some operations today.
   *
   * @param stopped whether they were signed off once
   */
  public record Obstacle(String says, boolean stopped) {}

  /** All that stands in the way today; operations that the same thing stops are told together. */
  List<Obstacle> inTheWay(TrainingRecord record) {
    return record.mayNot().stream()
        .collect(groupingBy(this::cause, LinkedHashMap::new, toList()))
        .values()
        .stream()
        .map(lines -> new Obstacle(obstacle(lines), lines.get(0).granted() != null))
        .toList();
  }

  private List<Object> cause(Line line) {
    TakenStep stopped = line.stopped();
    return stopped == null
        ? List.of(line.granted() == null, mark(line.mark()))
        : List.of(stopped.kind(), day(stopped.at()), stopped.by(), stopped.reason());
  }

  private String obstacle(List<Line> together) {
    Line line = together.get(0);
    String skills =
        together.stream().map(l -> l.mark().skill().title()).collect(Collectors.joining(", "));
    TakenStep stopped = line.stopped();
    return stopped == null
        ? say("record.may-not.line", skills, mark(line.mark()))
        : say(
            "record.may-not." + stopped.kind(),
            skills,
            day(stopped.at()),
            stopped.by(),
            stopped.reason());
  }

  /** Who signed when, under which version of the rule; where it does not hold, that first. */
  String signed(Line line) {
    if (line.granted() == null) {
      return say("record.never");
    }
    String examiner = line.examiner().isEmpty() ? say("record.unknown") : line.examiner();
    String signed = say("record.signed-by", day(line.granted()), examiner, line.ruleVersion());
    TakenStep stopped = line.stopped();
    return stopped == null
        ? signed
        : say("record.stopped." + stopped.kind(), day(stopped.at()), stopped.by())
            + ". "
            + say("record.was-signed", signed);
  }

  /** How anybody finds out what the sign-off is worth; empty where there is none. */
  String check(Line line) {
    return line.code().isEmpty() ? "" : say("record.check", line.codeInFours(), checkAddress);
  }

  /** What the square code of a sign-off opens. */
  String checkOf(Line line) {
    return checkAddress + "?code=" + line.code();
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
