package lapline.signoff.pages;

import static java.util.stream.Collectors.joining;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.annotation.ManagedProperty;
import jakarta.faces.context.FacesContext;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.time.Clock;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import lapline.grading.GradingRecords;
import lapline.pages.Errors;
import lapline.people.NotFoundException;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.Role;
import lapline.people.SignedIn;
import lapline.practice.pages.NotYetWords;
import lapline.signoff.ChangeSignOff;
import lapline.signoff.DecideSkill;
import lapline.signoff.Evidence;
import lapline.signoff.SignOff;
import lapline.signoff.SignOffRecords;
import lapline.signoff.StartRenewal;
import lapline.signoff.Step;

/** Is this person competent, on what evidence? */
@Named
@RequestScoped
public class DecisionPage {
  @Inject private SignedIn signedIn;
  @Inject private DecideSkill decideSkill;
  @Inject private ChangeSignOff changeSignOff;
  @Inject private StartRenewal startRenewal;
  @Inject private SignOffRecords records;
  @Inject private PeopleRecords people;
  @Inject private GradingRecords gradings;
  @Inject private NotYetWords notYet;
  @Inject private Errors errors;
  @Inject private DecisionHistory history;
  @Inject private Clock clock;

  @Inject
  @ManagedProperty("#{param.person}")
  private String person;

  @Inject
  @ManagedProperty("#{param.skill}")
  private String skill;

  private String reason = "";
  private boolean forGood;
  private Evidence evidence;
  private Map<UUID, String> graders;
  private NotYetWords.Said said;

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

  /** Until when a sign-off would be good that is given today. */
  public Instant getNewExpiry() {
    return decideSkill.expiryIfGivenNow(signedIn.person(), getEvidence().skill());
  }

  /** The steps that this person may take now. */
  public Steps getMay() {
    Person by = signedIn.person();
    boolean examiner = by.is(Role.EXAMINER);
    String now = String.valueOf(getStanding());
    return new Steps(
        examiner && decideSkill.isOpen(getEvidence()),
        (examiner || by.is(Role.OWNER)) && now.equals("GOOD"),
        examiner && now.equals("SUSPENDED"),
        examiner && (now.equals("GOOD") || now.equals("SUSPENDED")),
        mayRenew(by));
  }

  private boolean mayRenew(Person by) {
    boolean looksAfter = by.is(Role.OWNER) || by.is(Role.REGISTRAR);
    boolean ending = getStanding() != null && decideSkill.isOpen(getEvidence());
    return looksAfter && ending && !isWaiting();
  }

  private boolean isWaiting() {
    Evidence shown = getEvidence();
    return records.standing(shown.person(), shown.skill().id()).orElseThrow().isReady();
  }

  /** Which steps are open to somebody. */
  public record Steps(
      boolean decide, boolean suspend, boolean resume, boolean withdraw, boolean renew) {}

  /** Whether there is anything this person may do here. */
  public boolean isMine() {
    Steps may = getMay();
    return may.decide()
        || may.suspend()
        || may.resume()
        || may.withdraw()
        || pressed("grant")
        || pressed("not-yet");
  }

  /** Who looked at a panel at the bench. */
  public String graders(UUID attempt) {
    if (graders == null) {
      List<UUID> panels = getEvidence().panels().stream().map(Evidence.Panel::attempt).toList();
      Map<UUID, List<UUID>> ids = gradings.graders(panels);
      Map<UUID, String> who =
          people.names(ids.values().stream().flatMap(List::stream).distinct().toList());
      graders = new HashMap<>();
      ids.forEach(
          (panel, by) ->
              graders.put(
                  panel, by.stream().distinct().map(who::get).sorted().collect(joining(", "))));
    }
    return graders.getOrDefault(attempt, "");
  }

  /** Accepted by its numbers; or not yet, and why. */
  public String numbers(Evidence.Panel panel) {
    if (said == null) {
      said = notYet.of(getEvidence().panels().stream().map(Evidence.Panel::attempt).toList());
    }
    return said.of(panel.attempt(), panel.byNumbers());
  }

  /** Whether the reader may open the exam's paper. */
  public boolean isPaperShown() {
    return signedIn.person().is(Role.EXAMINER) || signedIn.person().is(Role.INSTRUCTOR);
  }

  /** What the page's title tells: who waits for a decision comes before what was decided once. */
  public String getStage() {
    if (getStanding() != null && !isWaiting()) {
      return getStanding().toLowerCase(Locale.ROOT);
    }
    if (!getEvidence().isComplete()) {
      return "incomplete";
    }
    // complete, and yet nobody waits: an examiner has looked at just this
    return isWaiting() ? "ready" : "not-yet";
  }

  public List<Step> getSteps() {
    return history.of(getEvidence());
  }

  public String signOffSkill() {
    return decide(true);
  }

  public String notYet() {
    return decide(false);
  }

  private String decide(boolean grant) {
    List<String> refusals =
        decideSkill.run(signedIn.person(), uuid(), skill, grant, reason, history.asSent());
    refusals.forEach(this::tell);
    if (!refusals.isEmpty()) {
      return null;
    }
    errors.news(grant ? "signoff.decision.granted" : "signoff.decision.not-yet-done");
    return again();
  }

  private void tell(String key) {
    if (key.equals(DecideSkill.DECIDED_SINCE)) {
      history.forget();
      evidence = null;
      errors.add(null, key, history.words(history.last(getEvidence()).orElseThrow()));
    } else {
      errors.add(key.contains("reason") ? "reason" : null, key);
    }
  }

  /** Whether this button was pressed on a page made before somebody else decided. */
  public boolean pressed(String button) {
    return FacesContext.getCurrentInstance()
        .getExternalContext()
        .getRequestParameterMap()
        .containsKey("decide:" + button);
  }

  /** Suspends, resumes or withdraws the sign-off. */
  public String change(Step.Kind kind) {
    UUID id = signOff().map(SignOff::id).orElseThrow(NotFoundException::new);
    Optional<String> refusal = changeSignOff.run(signedIn.person(), id, kind, reason);
    if (refusal.isPresent()) {
      errors.add("reason", refusal.get());
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

  /** There is no way back from it, so it asks for a tick besides. */
  public String withdraw() {
    if (!forGood) {
      errors.add("forGood", "signoff.refused.for-good");
      return null;
    }
    return change(Step.Kind.WITHDRAWN);
  }

  /** Puts the person before the examiners again, near the end of a sign-off or after it. */
  public String renew() {
    boolean complete = startRenewal.run(signedIn.person(), uuid(), skill).isComplete();
    errors.news(complete ? "signoff.renewal.started" : "signoff.renewal.incomplete", getName());
    return again();
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

  public boolean isForGood() {
    return forGood;
  }

  public void setForGood(boolean forGood) {
    this.forGood = forGood;
  }
}
