package lapline.signoff;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import lapline.people.LearnerAdvanced;

/** Keeps a learner's standing up to date whenever they may have come nearer to a skill. */
@ApplicationScoped
public class KeepStandings {
  private Skills skills;
  private GatherEvidence gather;
  private SignOffRecords records;
  private Clock clock;

  protected KeepStandings() {}

  @Inject
  public KeepStandings(Skills skills, GatherEvidence gather, SignOffRecords records, Clock clock) {
    this.skills = skills;
    this.gather = gather;
    this.records = records;
    this.clock = clock;
  }

  @Transactional
  public void advanced(@Observes LearnerAdvanced news) {
    for (Skill skill : skills.ofUnit(news.unit())) {
      advance(news.person(), news.workshop(), skill);
    }
  }

  /** Gathers the evidence afresh because somebody looks at it, and writes what it comes to. */
  Evidence look(UUID person, UUID workshop, Skill skill) {
    return update(person, workshop, skill, false);
  }

  /** The same when there is a reason to decide anew. */
  Evidence advance(UUID person, UUID workshop, Skill skill) {
    return update(person, workshop, skill, true);
  }

  private Evidence update(UUID person, UUID workshop, Skill skill, boolean advanced) {
    Instant now = clock.instant();
    Evidence evidence = gather.of(person, workshop, skill, now);
    records.keep(
        new Standing(
            person,
            workshop,
            skill.id(),
            evidence.lessonDone(),
            evidence.examPassed(),
            evidence.counting(),
            skill.rule().accepted(),
            evidence.graded(),
            skill.rule().graded(),
            readySince(evidence, advanced, now),
            now));
    return evidence;
  }

  /** A decision was taken: nobody waits for one any more until new evidence comes. */
  void decided(Evidence evidence) {
    records
        .standing(evidence.person(), evidence.skill().id())
        .ifPresent(s -> records.keep(s.decided(clock.instant())));
  }

  /**
   * Keeps the moment it first was complete, so that who waits longest stays first. Whoever was
   * decided about waits again when they have advanced, not because somebody looks at old evidence.
   */
  private Instant readySince(Evidence evidence, boolean advanced, Instant now) {
    if (!evidence.isComplete() || isSettled(evidence, now)) {
      return null;
    }
    Optional<Standing> before = records.standing(evidence.person(), evidence.skill().id());
    Instant since = before.map(Standing::readySince).orElse(null);
    return since == null && (advanced || before.isEmpty()) ? now : since;
  }

  private boolean isSettled(Evidence evidence, Instant now) {
    return records
        .latest(evidence.person(), evidence.skill().id())
        .filter(s -> s.settledAt(now) || s.at(now) == SignOff.Standing.SUSPENDED)
        .isPresent();
  }
}
