package lapline.board;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import lapline.signoff.SignOff;
import lapline.signoff.SignOffRecords;
import lapline.signoff.Skill;
import lapline.signoff.Skills;
import lapline.signoff.Standing;

/** Marks of many people over all skills, from two queries however many people they are. */
@ApplicationScoped
class SkillMarks {
  private SignOffRecords records;
  private Skills skills;
  private Clock clock;

  protected SkillMarks() {}

  @Inject
  SkillMarks(SignOffRecords records, Skills skills, Clock clock) {
    this.records = records;
    this.skills = skills;
    this.clock = clock;
  }

  /** A person and what is met of a skill. */
  private record Key(UUID person, String skill) {}

  /** One row for each person, one mark for each skill asked for, both in the order given. */
  List<BoardRow> rows(List<Named> people, List<Skill> asked) {
    List<UUID> ids = people.stream().map(Named::id).toList();
    Map<Key, SignOff> granted = new HashMap<>();
    records.latest(ids).forEach(s -> granted.put(new Key(s.person(), s.skill()), s));
    Map<Key, Standing> standings = new HashMap<>();
    records.standings(ids).forEach(s -> standings.put(new Key(s.person(), s.skill()), s));
    Instant now = clock.instant();
    return people.stream()
        .map(p -> new BoardRow(p, marks(p, asked, granted, standings, now)))
        .toList();
  }

  private static List<SkillMark> marks(
      Named person,
      List<Skill> asked,
      Map<Key, SignOff> granted,
      Map<Key, Standing> standings,
      Instant now) {
    return asked.stream()
        .map(
            skill -> {
              Key key = new Key(person.id(), skill.id());
              return SkillMark.of(skill, granted.get(key), standings.get(key), now);
            })
        .toList();
  }

  /** The skill of this id alone, or all where the id is none. */
  List<Skill> asked(String skill) {
    return skills.find(skill).map(List::of).orElse(skills.all());
  }
}
