package lapline.exams.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.annotation.ManagedProperty;
import jakarta.faces.context.FacesContext;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import lapline.exams.ItemRecords.SetAside;
import lapline.exams.ItemStudied;
import lapline.exams.SetItemAside;
import lapline.exams.SetItemAside.Outcome;
import lapline.exams.StudyItems;
import lapline.exams.bank.QuestionBanks;
import lapline.pages.Errors;
import lapline.pages.Messages;
import lapline.people.NotFoundException;
import lapline.people.PeopleRecords;
import lapline.people.SignedIn;
import lapline.people.pages.When;

/** Is this question any good, and shall it be drawn on? */
@Named
@RequestScoped
public class ItemPage {
  private static final int LEAST_REASON = 4;
  private static final int MOST_REASON = 500;

  @Inject private SignedIn signedIn;
  @Inject private QuestionBanks banks;
  @Inject private StudyItems study;
  @Inject private SetItemAside setAside;
  @Inject private PeopleRecords people;
  @Inject private ItemWords words;
  @Inject private When when;
  @Inject private Errors errors;
  @Inject private Messages messages;

  // known before the form is read, since what is on the page depends on them
  @Inject
  @ManagedProperty("#{param.unit}")
  private String unit;

  @Inject
  @ManagedProperty("#{param.item}")
  private String item;

  private ItemStudied studied;
  private List<SetAside> history;
  private Map<UUID, String> names;
  private String reason = "";

  /** Refuses everybody else before anything is shown. */
  public void open() {
    getStudied();
  }

  public String getTitle() {
    return messages.say("exams.item.title", bankTitle(), words.worth(getStudied()));
  }

  private String bankTitle() {
    return banks.bank(getUnit()).orElseThrow(NotFoundException::new).title();
  }

  public ItemStudied getStudied() {
    if (studied == null) {
      studied = study.one(signedIn.person(), getUnit(), item);
    }
    return studied;
  }

  public String getFigures() {
    return words.figures(getStudied().sums());
  }

  public List<SetAside> getHistory() {
    if (history == null) {
      history = setAside.history(signedIn.person(), getUnit(), item);
    }
    return history;
  }

  public String name(UUID person) {
    if (names == null) {
      Set<UUID> ids = new HashSet<>();
      for (SetAside one : getHistory()) {
        ids.add(one.by());
        if (one.backBy() != null) {
          ids.add(one.backBy());
        }
      }
      names = people.names(ids);
    }
    return names.getOrDefault(person, "");
  }

  public String aside() {
    String written = reason.strip();
    if (written.length() < LEAST_REASON) {
      errors.add("reason", "exams.item.aside.no-reason", LEAST_REASON);
      return null;
    }
    if (written.length() > MOST_REASON) {
      errors.add("reason", "exams.item.aside.too-long", MOST_REASON, written.length());
      return null;
    }
    Outcome outcome = setAside.run(signedIn.person(), getUnit(), item, written);
    if (outcome == Outcome.NEEDED) {
      errors.add("reason", "exams.item.aside.needed");
      return null;
    }
    if (outcome == Outcome.DONE) {
      errors.news("exams.item.aside.done");
    } else {
      SetAside first = setAside.history(signedIn.person(), getUnit(), item).get(0);
      tell("exams.item.aside.already", first.by(), first.at(), first.reason());
    }
    return here();
  }

  public String bringBack() {
    if (setAside.bringBack(signedIn.person(), getUnit(), item) == Outcome.DONE) {
      errors.news("exams.item.back.done");
    } else {
      SetAside last = setAside.history(signedIn.person(), getUnit(), item).get(0);
      tell("exams.item.back.already", last.backBy(), last.back(), "");
    }
    return here();
  }

  /** Somebody was quicker: who, when and why. */
  private void tell(String key, UUID by, Instant at, String why) {
    String name = people.names(List.of(by)).getOrDefault(by, "–");
    errors.news(key, name, when.time(at), why);
  }

  /** Whether this button was pressed on a page made before somebody else was quicker. */
  public boolean pressed(String button) {
    return FacesContext.getCurrentInstance()
        .getExternalContext()
        .getRequestParameterMap()
        .containsKey(button);
  }

  private String here() {
    return "/teach/item.xhtml?faces-redirect=true&unit=" + getUnit() + "&item=" + item;
  }

  public String getUnit() {
    return String.valueOf(unit);
  }

  public String getReason() {
    return reason;
  }

  public void setReason(String reason) {
    this.reason = reason == null ? "" : reason;
  }
}
