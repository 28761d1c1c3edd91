package lapline.exams.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.annotation.ManagedProperty;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.List;
import lapline.exams.ItemStudied;
import lapline.exams.StudyItems;
import lapline.exams.bank.Bank;
import lapline.exams.bank.QuestionBanks;
import lapline.pages.Messages;
import lapline.people.NotFoundException;
import lapline.people.SignedIn;

/** Are the questions of this unit any good? */
@Named
@RequestScoped
public class ItemsPage {
  @Inject private SignedIn signedIn;
  @Inject private QuestionBanks banks;
  @Inject private StudyItems study;
  @Inject private Messages messages;

  @Inject
  @ManagedProperty("#{param.unit}")
  private String unit;

  private List<ItemStudied> studied;

  /** Refuses everybody else before anything is shown. */
  public void open() {
    getItems();
  }

  public String getTitle() {
    if (getItems().stream().allMatch(i -> i.worth() == ItemStudied.Worth.TOO_FEW)) {
      return messages.say("exams.study.title.too-few", getBank().title());
    }
    long looks = getItems().stream().filter(ItemStudied::needsALook).count();
    return messages.say("exams.study.title", getBank().title(), looks, getItems().size());
  }

  public List<ItemStudied> getItems() {
    if (studied == null) {
      studied = study.run(signedIn.person(), getBank().unit());
    }
    return studied;
  }

  /** The most papers that any item was on. */
  public long getPapers() {
    return getItems().stream().mapToLong(i -> i.sums().papers()).max().orElse(0);
  }

  /** From how many papers on a question is judged. */
  public int getEnough() {
    return ItemStudied.ENOUGH;
  }

  /** The unit asked for, else the first one. */
  public Bank getBank() {
    boolean none = unit == null || unit.isEmpty();
    return (none ? getBanks().stream().findFirst() : banks.bank(unit))
        .orElseThrow(NotFoundException::new);
  }

  public List<Bank> getBanks() {
    return banks.banks();
  }
}
