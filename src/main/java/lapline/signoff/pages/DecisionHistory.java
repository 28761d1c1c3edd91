package lapline.signoff.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.annotation.ManagedProperty;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import lapline.pages.Messages;
import lapline.people.PeopleRecords;
import lapline.people.pages.When;
import lapline.signoff.Evidence;
import lapline.signoff.SignOffRecords;
import lapline.signoff.Step;

/** The steps that were taken about a person and a skill, as a part of the decision's page. */
@Named
@RequestScoped
public class DecisionHistory {
  @Inject private SignOffRecords records;
  @Inject private PeopleRecords people;
  @Inject private Messages messages;
  @Inject private When when;

  /** Sent with a decision: the last step that its page showed. */
  @Inject
  @ManagedProperty("#{param.seen}")
  private String seen;

  private List<Step> steps;
  private Map<UUID, String> names;

  /** The oldest first. */
  List<Step> of(Evidence evidence) {
    if (steps == null) {
      steps = records.steps(evidence.person(), evidence.skill().id());
      names = people.names(steps.stream().map(Step::by).distinct().toList());
    }
    return steps;
  }

  Optional<Step> last(Evidence evidence) {
    List<Step> all = of(evidence);
    return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
  }

  /** Looks anew when it is asked next. */
  void forget() {
    steps = null;
  }

  /** One step in words. */
  public String words(Step step) {
    return messages.say(
        "signoff.step",
        when.time(step.at()),
        messages.get("signoff.step." + step.kind()),
        names.getOrDefault(step.by(), "–"),
        step.reason());
  }

  /** The last step that the page shows; empty for none. */
  public String seen(Evidence evidence) {
    return last(evidence).map(s -> s.id().toString()).orElse("");
  }

  /** What the page had shown; null for nothing. */
  UUID asSent() {
    try {
      return UUID.fromString(String.valueOf(seen));
    } catch (IllegalArgumentException none) {
      return null;
    }
  }
}
