package lapline.practice.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.List;
import java.util.UUID;
import lapline.pages.Errors;
import lapline.people.SignedIn;
import lapline.practice.FieldProblem;
import lapline.practice.GunCard;
import lapline.practice.LookAfterGunCards;

/** What do the makers of our guns say? */
@Named
@RequestScoped
public class GunCardsPage {
  @Inject private SignedIn signedIn;
  @Inject private LookAfterGunCards cards;
  @Inject private Errors errors;
  private String name = "";
  private String distance = "";
  private String pressure = "";
  private String overlap = "";
  private String speed = "";
  private String fan = "";

  public List<GunCard> getCards() {
    return cards.inUse(signedIn.person());
  }

  /**
   * @param task the task whose targets the page shows, to come back to
   */
  public String add(String task) {
    GunCard.Ranges ranges = new GunCard.Ranges(distance, pressure, overlap, speed, fan);
    List<FieldProblem> problems = cards.add(signedIn.person(), name, ranges);
    problems.forEach(p -> errors.add(p.cell(), p.key(), p.args().toArray()));
    return problems.isEmpty() ? again("targets.card.saved", task) : null;
  }

  public String retire(UUID id, String task) {
    cards.retire(signedIn.person(), id);
    return again("targets.card.retired", task);
  }

  private String again(String news, String task) {
    errors.news(news);
    return "/office/targets.xhtml?faces-redirect=true&task=" + task;
  }

  public String getName() {
    return name;
  }

  public void setName(String name) {
    this.name = name;
  }

  public String getDistance() {
    return distance;
  }

  public void setDistance(String distance) {
    this.distance = distance;
  }

  public String getPressure() {
    return pressure;
  }

  public void setPressure(String pressure) {
    this.pressure = pressure;
  }

  public String getOverlap() {
    return overlap;
  }

  public void setOverlap(String overlap) {
    this.overlap = overlap;
  }

  public String getSpeed() {
    return speed;
  }

  public void setSpeed(String speed) {
    this.speed = speed;
  }

  public String getFan() {
    return fan;
  }

  public void setFan(String fan) {
    this.fan = fan;
  }
}
