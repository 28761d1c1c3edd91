package lapline.board.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.Comparator;
import java.util.List;
import lapline.board.LookAtLearner;
import lapline.board.UnitView;
import lapline.lessons.NextStep.Step;
import lapline.people.Person;
import lapline.people.SignedIn;
import lapline.signoff.SignOff;

/** What do I do next, and why that? */
@Named
@RequestScoped
public class TodayPage {
  @Inject private SignedIn signedIn;
  @Inject private LookAtLearner look;
  private List<UnitView> units;

  public List<UnitView> getUnits() {
    if (units == null) {
      Person me = signedIn.person();
      units = look.units(me, me.id());
    }
    return units;
  }

  /** An entry that was begun comes first, then the units in their order; null when all is done. */
  public UnitView getNext() {
    return getUnits().stream()
        .filter(u -> u.next().step().yours())
        .min(Comparator.comparing(u -> u.next().step() == Step.FINISH_ENTRY ? 0 : 1))
        .orElse(null);
  }

  /** How many sign-offs are good today. */
  public long getGood() {
    return getUnits().stream().filter(u -> u.standing() == SignOff.Standing.GOOD).count();
  }
}
