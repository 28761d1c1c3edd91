package lapline.exams.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.annotation.ManagedProperty;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import lapline.exams.MarkAnew;
import lapline.exams.MarkedAnew;
import lapline.exams.MarkingEffect;
import lapline.pages.Errors;
import lapline.pages.Messages;
import lapline.pages.Once;
import lapline.people.PeopleRecords;
import lapline.people.SignedIn;

/** Whose result would change if the papers were marked anew, as a part of a question's page. */
@Named
@RequestScoped
public class ItemAnewPage {
  @Inject private SignedIn signedIn;
  @Inject private MarkAnew markAnew;
  @Inject private PeopleRecords people;
  @Inject private Errors errors;
  @Inject private Messages messages;

  @Inject
  @ManagedProperty("#{param.unit}")
  private String unit;

  @Inject
  @ManagedProperty("#{param.item}")
  private String item;

  /** Sent with the button, so that what is done is what was looked at. */
  @Inject
  @ManagedProperty("#{param.shown}")
  private String shown;

  private Once<MarkingEffect> effect = new Once<>(this::look);
  private final Once<Map<UUID, String>> names = new Once<>(this::namesOfAll);

  private MarkingEffect look() {
    return markAnew.effect(signedIn.person(), String.valueOf(unit), item);
  }

  public MarkingEffect getEffect() {
    return effect.get();
  }

  /** Those who would pass, then those who would no longer. */
  public List<MarkingEffect.Change> getTurning() {
    return Stream.concat(getEffect().passing().stream(), getEffect().falling().stream()).toList();
  }

  public String name(UUID person) {
    return names.get().getOrDefault(person, "–");
  }

  private Map<UUID, String> namesOfAll() {
    return people.names(getTurning().stream().map(c -> c.sitting().person()).distinct().toList());
  }

  public String words(MarkedAnew.Mark mark) {
    return messages.say(
        mark.passed() ? "exams.item.anew.passed" : "exams.item.anew.not-passed", mark.score());
  }

  public String mark() {
    int papers = getEffect().papers().size();
    MarkAnew.Outcome outcome =
        markAnew.run(signedIn.person(), String.valueOf(unit), item, String.valueOf(shown));
    if (outcome == MarkAnew.Outcome.CHANGED_SINCE) {
      effect = new Once<>(this::look);
      errors.add(null, "exams.item.anew.changed");
      return null;
    }
    errors.news("exams.item.anew.done", papers);
    return "/teach/item.xhtml?faces-redirect=true&unit=" + unit + "&item=" + item;
  }
}
