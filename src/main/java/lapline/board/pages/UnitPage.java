package lapline.board.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.annotation.ManagedProperty;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import lapline.board.LookAtLearner;
import lapline.board.UnitView;
import lapline.people.Person;
import lapline.people.SignedIn;
import lapline.practice.Attempt;
import lapline.practice.pages.NotYetWords;

/** What is this step, what do I have, what is left? */
@Named
@RequestScoped
public class UnitPage {
  @Inject private SignedIn signedIn;
  @Inject private LookAtLearner look;
  @Inject private NotYetWords notYet;

  @Inject
  @ManagedProperty("#{param.unit}")
  private String unit;

  private UnitView view;
  private NotYetWords.Said said;

  public UnitView getView() {
    if (view == null) {
      Person me = signedIn.person();
      view = look.unit(me, me.id(), String.valueOf(unit));
    }
    return view;
  }

  /** Accepted by its numbers; or not yet, and why. */
  public String numbers(Attempt panel) {
    if (said == null) {
      said = notYet.of(getView().panels().stream().map(Attempt::id).toList());
    }
    return said.of(panel.id(), panel.outcome().accepted());
  }
}
