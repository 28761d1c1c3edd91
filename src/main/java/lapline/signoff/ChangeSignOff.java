package lapline.signoff;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.Role;
import lapline.signoff.Step.Kind;

/**
 * Suspends, resumes or withdraws a sign-off, with a reason. An examiner may do all three; the owner
 * may suspend, since whoever runs the shop must be able to stop work at once.
 */
@ApplicationScoped
public class ChangeSignOff {
  private SignOffRecords records;
  private Skills skills;
  private KeepStandings standings;
  private Clock clock;

  protected ChangeSignOff() {}

  @Inject
  public ChangeSignOff(
      SignOffRecords records, Skills skills, KeepStandings standings, Clock clock) {
    this.records = records;
    this.skills = skills;
    this.standings = standings;
    this.clock = clock;
  }

  /**
   * @param kind SUSPENDED, RESUMED or WITHDRAWN
   * @return message key of what stands against it; empty when it was done
   */
  @Transactional
  public Optional<String> run(Person by, UUID signOffId, Kind kind, String reason) {
    SignOff found = records.signOff(signOffId).orElseThrow(NotFoundException::new);
    by.mustBeIn(found.workshop());
    records.hold(found.person(), found.skill());
    SignOff signOff = records.signOff(signOffId).orElseThrow(NotFoundException::new);
    if (kind == Kind.SUSPENDED) {
      by.mustBe(Role.EXAMINER, Role.OWNER);
    } else {
      by.mustBe(Role.EXAMINER);
    }
    if (reason.isBlank()) {
      return Optional.of("signoff.refused.reason");
    }
    if (reason.length() > DecideSkill.LONGEST_REASON) {
      return Optional.of("signoff.refused.reason-long");
    }
    if (by.id().equals(signOff.person())) {
      return Optional.of("signoff.refused.self");
    }
    Optional<SignOff.State> next = next(signOff.state(), kind);
    if (next.isEmpty()) {
      return Optional.of("signoff.refused.state");
    }
    records.change(signOff.in(next.get()));
    records.add(step(by, signOff, kind, reason.strip()));
    skills
        .find(signOff.skill())
        .ifPresent(skill -> standings.look(signOff.person(), signOff.workshop(), skill));
    return Optional.empty();
  }

  private static Optional<SignOff.State> next(SignOff.State now, Kind kind) {
    return switch (kind) {
      case SUSPENDED ->
          now == SignOff.State.GRANTED ? Optional.of(SignOff.State.SUSPENDED) : Optional.empty();
      case RESUMED ->
          now == SignOff.State.SUSPENDED ? Optional.of(SignOff.State.GRANTED) : Optional.empty();
      case WITHDRAWN ->
          now == SignOff.State.WITHDRAWN ? Optional.empty() : Optional.of(SignOff.State.WITHDRAWN);
      default -> Optional.empty();
    };
  }

  private Step step(Person by, SignOff signOff, Kind kind, String reason) {
    return new Step(
        UUID.randomUUID(),
        signOff.workshop(),
        signOff.person(),
        signOff.skill(),
        signOff.id(),
        kind,
        by.id(),
        clock.instant(),
        reason,
        "{}");
  }
}
