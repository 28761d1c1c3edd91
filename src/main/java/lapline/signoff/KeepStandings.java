package lapline.signoff;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

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
    keep(evidence, workshop, readySince(evidence, advanced, now), now);
    return evidence;
  }

  /** A decision was taken: nobody waits for one any more until new evidence comes. */
  void decided(Evidence evidence, UUID workshop) {
    keep(evidence, workshop, null, clock.instant());
  }

  private void keep(Evidence evidence, UUID workshop, Instant readySince, Instant now) {
    boolean wasSignedOff = records.latest(evidence.person(), evidence.skill().id()).isPresent();
    records.keep(Standing.of(evidence, workshop, wasSignedOff, readySince, now));
  }

  /**
   * Gathers anew what time alone has changed, longest ago first.
   *
   * @param most how many standings at once
   * @return how many there were
   */
  @Transactional
  public int refresh(int most) {
    List<Standing> outdated = records.outdated(clock.instant(), most);
    for (Standing old : outdated) {
      records.hold(old.person(), old.skill());
      skills
          .find(old.skill())
          .ifPresentOrElse(
              skill -> look(old.person(), old.workshop(), skill),
              () -> records.keep(old.withoutRule()));
    }
    return outdated.size();
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
