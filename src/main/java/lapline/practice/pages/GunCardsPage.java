package lapline.practice.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import lapline.pages.Once;
import lapline.people.PeopleRecords;
import lapline.people.Role;
import lapline.people.SignedIn;
import lapline.practice.GunCard;
import lapline.practice.GunFigure;
import lapline.practice.LookAfterGunCards;
import lapline.trade.measure.SpokenUnits;

/** What do the makers of our guns say, and who wrote it down? */
@Named
@RequestScoped
public class GunCardsPage {
  @Inject private SignedIn signedIn;
  @Inject private LookAfterGunCards cards;
  @Inject private PeopleRecords people;
  @Inject private Say say;

  private final Once<List<GunCard>> inUse = new Once<>(() -> cards.inUse(signedIn.person()));
  private final Once<Map<UUID, String>> names =
      new Once<>(() -> people.names(getCards().stream().map(GunCard::madeBy).distinct().toList()));

  public void check() {
    signedIn.person().mustBe(Role.REGISTRAR, Role.INSTRUCTOR);
  }

  public List<GunCard> getCards() {
    return inUse.get();
  }

  public String name(UUID person) {
    return names.get().getOrDefault(person, "–");
  }

  public GunFigure[] getFigures() {
    return GunFigure.values();
  }

  /** One figure of a card in the reader's units; empty where the card does not say it. */
  public String figure(GunCard card, GunFigure figure) {
    String typed = card.byName().getOrDefault(figure.id(), "");
    return typed.isEmpty() ? "" : say.written(typed, SpokenUnits.usual(figure.dimension()));
  }
}
