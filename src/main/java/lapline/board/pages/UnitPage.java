package lapline.board.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.annotation.ManagedProperty;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import lapline.board.LookAtLearner;
import lapline.board.UnitView;
import lapline.people.Person;
import lapline.people.SignedIn;

/** What is this step, what do I have, what is left? */
@Named
@RequestScoped
public class UnitPage {
  @Inject private SignedIn signedIn;
  @Inject private LookAtLearner look;

  @Inject
  @ManagedProperty("#{param.unit}")
  private String unit;

  private UnitView view;

  public UnitView getView() {
    if (view == null) {
      Person me = signedIn.person();
      view = look.unit(me, me.id(), String.valueOf(unit));
    }
    return view;
  }
}
