package lapline.signoff.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.annotation.ManagedProperty;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import lapline.pages.Errors;
import lapline.people.NotFoundException;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.SignedIn;
import lapline.signoff.ChangeSignOff;
import lapline.signoff.DecideSkill;
import lapline.signoff.Evidence;
import lapline.signoff.SignOff;
import lapline.signoff.SignOffRecords;
import lapline.signoff.Step;

/** Is this person competent, on what evidence? */
@Named
@RequestScoped
public class DecisionPage {
  @Inject private SignedIn signedIn;
  @Inject private DecideSkill decideSkill;
  @Inject private ChangeSignOff changeSignOff;
  @Inject private SignOffRecords records;
  @Inject private PeopleRecords people;
  @Inject private Errors errors;
  @Inject private Clock clock;

  @Inject
  @ManagedProperty("#{param.person}")
  private String person;

  @Inject
  @ManagedProperty("#{param.skill}")
  private String skill;

  private String reason = "";
  private String changeReason = "";
  private Evidence evidence;
  private List<Step> steps;
  private Map<UUID, String> names;

  public Evidence getEvidence() {
    if (evidence == null) {
      evidence = decideSkill.evidence(signedIn.person(), uuid(), String.valueOf(skill));
    }
    return evidence;
  }

  public String getName() {
    return people.person(getEvidence().person()).map(Person::name).orElseThrow();
  }

  public Optional<SignOff> signOff() {
    return records.latest(getEvidence().person(), getEvidence().skill().id());
  }

  public SignOff getSignOff() {
    return signOff().orElse(null);
  }

  /** What the latest sign-off is worth now; null where there is none. */
  public String getStanding() {
    return signOff().map(s -> s.at(clock.instant()).name()).orElse(null);
  }

  /** Whether there is anything to decide now. */
  public boolean isOpen() {
    return decideSkill.isOpen(getEvidence());
  }

  /** What the page's title tells: who waits for a decision comes before what was decided once. */
  public String getStage() {
    Evidence shown = getEvidence();
    boolean waits = records.standing(shown.person(), shown.skill().id()).orElseThrow().isReady();
    if (getStanding() != null && !waits) {
      return getStanding().toLowerCase(Locale.ROOT);
    }
    return shown.isComplete() ? "ready" : "incomplete";
  }

  public List<Step> getSteps() {
    if (steps == null) {
      steps = records.steps(getEvidence().person(), getEvidence().skill().id());
      names = people.names(steps.stream().map(Step::by).distinct().toList());
    }
    return steps;
  }

  public String name(UUID who) {
    return names.getOrDefault(who, "–");
  }

  public String signOffSkill() {
    return decide(true);
  }

  public String notYet() {
    return decide(false);
  }

  private String decide(boolean grant) {
    List<String> refusals = decideSkill.run(signedIn.person(), uuid(), skill, grant, reason);
    refusals.forEach(key -> errors.add(key.contains("reason") ? "reason" : null, key));
    if (!refusals.isEmpty()) {
      return null;
    }
    errors.news(grant ? "signoff.decision.granted" : "signoff.decision.not-yet-done");
    return again();
  }

  /** Suspends, resumes or withdraws the sign-off. */
  public String change(Step.Kind kind) {
    UUID id = signOff().map(SignOff::id).orElseThrow(NotFoundException::new);
    Optional<String> refusal = changeSignOff.run(signedIn.person(), id, kind, changeReason);
    if (refusal.isPresent()) {
      errors.add("changeReason", refusal.get());
      return null;
    }
    errors.news("signoff.decision.changed");
    return again();
  }

  public String suspend() {
    return change(Step.Kind.SUSPENDED);
  }

  public String resume() {
    return change(Step.Kind.RESUMED);
  }

  public String withdraw() {
    return change(Step.Kind.WITHDRAWN);
  }

  private String again() {
    return "/examine/decision.xhtml?faces-redirect=true&person=" + person + "&skill=" + skill;
  }

  private UUID uuid() {
    try {
      return UUID.fromString(String.valueOf(person));
    } catch (IllegalArgumentException e) {
      throw new NotFoundException();
    }
  }

  public String getPerson() {
    return person;
  }

  public String getSkill() {
    return skill;
  }

  public String getReason() {
    return reason;
  }

  public void setReason(String reason) {
    this.reason = reason;
  }

  public String getChangeReason() {
    return changeReason;
  }

  public void setChangeReason(String changeReason) {
    this.changeReason = changeReason;
  }
}
