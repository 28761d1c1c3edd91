package lapline.signoff;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.random.RandomGenerator;
import lapline.content.Json;
import lapline.grading.GradingRecords;
import lapline.people.NotFoundException;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.Role;
import lapline.people.Secrets;
import lapline.signoff.Step.Kind;

/**
 * An examiner signs a person off for a skill, or says not yet, with a reason. The examiner has
 * neither graded the evidence nor is the person; the separation follows ISO/IEC 17024:2012, 9.4
 * (from memory).
 */
@ApplicationScoped
public class DecideSkill {
  private static final int CODE_LETTERS = 26;

  /** Key of the refusal that somebody has decided since. */
  public static final String DECIDED_SINCE = "signoff.refused.decided-since";

  /** As many letters as a step keeps of its reason. */
  static final int LONGEST_REASON = 2000;

  private Skills skills;
  private KeepStandings standings;
  private SignOffRecords records;
  private GradingRecords gradings;
  private PeopleRecords people;
  private Clock clock;
  private RandomGenerator chance;

  protected DecideSkill() {}

  @Inject
  public DecideSkill(
      Skills skills,
      KeepStandings standings,
      SignOffRecords records,
      GradingRecords gradings,
      PeopleRecords people,
      Clock clock,
      RandomGenerator chance) {
    this.skills = skills;
    this.standings = standings;
    this.records = records;
    this.gradings = gradings;
    this.people = people;
    this.clock = clock;
    this.chance = chance;
  }

  /** The evidence as it stands now. */
  @Transactional
  public Evidence evidence(Person by, UUID personId, String skillId) {
    Person person = people.person(personId).orElseThrow(NotFoundException::new);
    by.mustBeIn(person.workshop());
    if (!by.id().equals(personId)) {
      by.mustBe(Role.EXAMINER, Role.INSTRUCTOR, Role.OWNER, Role.REGISTRAR);
    }
    return standings.look(personId, person.workshop(), skill(skillId));
  }

  /** Whether there is anything to decide: not while a sign-off is good or suspended. */
  @Transactional
  public boolean isOpen(Evidence evidence) {
    return latest(evidence).map(s -> inTheWay(s).isEmpty()).orElse(true);
  }

  /**
   * @param grant false for 'not yet'
   * @param seen the last step that the page showed; null for none. One that was taken since is told
   *     first, so that nobody decides past a colleague without knowing.
   * @return message keys of what stands against it; empty when the decision was taken
   */
  @Transactional
  public List<String> run(
      Person by, UUID personId, String skillId, boolean grant, String reason, UUID seen) {
    by.mustBe(Role.EXAMINER);
    evidence(by, personId, skillId);
    records.hold(personId, skillId);
    List<Step> steps = records.steps(personId, skillId);
    UUID last = steps.isEmpty() ? null : steps.get(steps.size() - 1).id();
    return Objects.equals(last, seen)
        ? run(by, personId, skillId, grant, reason)
        : List.of(DECIDED_SINCE);
  }

  /** As above, for somebody who has just looked. */
  @Transactional
  public List<String> run(Person by, UUID personId, String skillId, boolean grant, String reason) {
    by.mustBe(Role.EXAMINER);
    // two examiners, or two presses, at the same moment: the second sees what the first decided
    records.hold(personId, skillId);
    Evidence evidence = evidence(by, personId, skillId);
    List<String> refusals = refusals(by, evidence, grant, reason);
    if (refusals.isEmpty()) {
      decide(by, evidence, grant, reason.strip());
    }
    return refusals;
  }

  private List<String> refusals(Person by, Evidence evidence, boolean grant, String reason) {
    List<String> keys = new ArrayList<>();
    if (by.id().equals(evidence.person())) {
      keys.add("signoff.refused.self");
    }
    if (hasGraded(by, evidence)) {
      keys.add("signoff.refused.graded");
    }
    if (reason.isBlank()) {
      keys.add("signoff.refused.reason");
    }
    if (reason.length() > LONGEST_REASON) {
      keys.add("signoff.refused.reason-long");
    }
    if (grant && !evidence.isComplete()) {
      keys.add("signoff.refused.incomplete");
    }
    latest(evidence).ifPresent(s -> keys.addAll(inTheWay(s)));
    return keys;
  }

  private boolean hasGraded(Person by, Evidence evidence) {
    List<UUID> panels = evidence.panels().stream().map(Evidence.Panel::attempt).toList();
    return gradings.graders(panels).values().stream()
        .flatMap(Collection::stream)
        .anyMatch(by.id()::equals);
  }

  private Optional<SignOff> latest(Evidence evidence) {
    return records.latest(evidence.person(), evidence.skill().id());
  }

  private List<String> inTheWay(SignOff latest) {
    if (latest.settledAt(clock.instant())) {
      return List.of("signoff.refused.good-already");
    }
    return latest.state() == SignOff.State.SUSPENDED
        ? List.of("signoff.refused.suspended")
        : List.of();
  }

  private void decide(Person by, Evidence evidence, boolean grant, String reason) {
    UUID signOff = grant ? grant(by, evidence).id() : null;
    records.add(
        new Step(
            UUID.randomUUID(),
            by.workshop(),
            evidence.person(),
            evidence.skill().id(),
            signOff,
            grant ? Kind.GRANTED : Kind.NOT_YET,
            by.id(),
            clock.instant(),
            reason,
            Json.write(evidence)));
    standings.decided(evidence, by.workshop());
  }

  private SignOff grant(Person by, Evidence evidence) {
    Instant now = clock.instant();
    Skill skill = evidence.skill();
    SignOff signOff =
        new SignOff(
            UUID.randomUUID(),
            by.workshop(),
            evidence.person(),
            skill.id(),
            skill.rule().version(),
            Secrets.code(chance, CODE_LETTERS),
            SignOff.State.GRANTED,
            by.id(),
            now,
            expiry(by, skill, now));
    records.add(signOff);
    return signOff;
  }

  /**
   * Until when a sign-off of this skill would be good that were given now. An early renewal runs
   * from the day it is decided, too, and not from the end of the one before: nobody is signed off
   * for longer than the skill says on evidence of one day (common practice, no source).
   */
  public Instant expiryIfGivenNow(Person by, Skill skill) {
    return expiry(by, skill, clock.instant());
  }

  private static Instant expiry(Person by, Skill skill, Instant given) {
    return ZonedDateTime.ofInstant(given, by.zone()).plus(skill.valid()).toInstant();
  }

  private Skill skill(String id) {
    return skills.find(id).orElseThrow(NotFoundException::new);
  }
}
