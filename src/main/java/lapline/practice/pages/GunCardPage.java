package lapline.practice.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.annotation.ManagedProperty;
import jakarta.faces.context.FacesContext;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;
import lapline.pages.Errors;
import lapline.pages.Messages;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.Role;
import lapline.people.SignedIn;
import lapline.practice.FieldProblem;
import lapline.practice.GunCard;
import lapline.practice.GunFigure;
import lapline.practice.LookAfterGunCards;
import lapline.trade.measure.Unit;

/** What does the maker of this gun say? A new card, or one that is corrected. */
@Named
@RequestScoped
public class GunCardPage {
  @Inject private SignedIn signedIn;
  @Inject private LookAfterGunCards cards;
  @Inject private PeopleRecords people;
  @Inject private Errors errors;
  @Inject private Messages words;

  @Inject
  @ManagedProperty("#{param.card}")
  private String cardId;

  private GunCard card;
  private String name;
  private Map<String, String> figures;

  public void check() {
    signedIn.person().mustBe(Role.REGISTRAR, Role.INSTRUCTOR);
    getCard();
  }

  /** The card that is corrected; null for a new one. */
  public GunCard getCard() {
    if (card == null && cardId != null && !cardId.isBlank()) {
      card = cards.find(signedIn.person(), EntryPage.uuid(cardId));
    }
    return card;
  }

  /** Whether there is anything to write on: also what was written on a card put away meanwhile. */
  public boolean isWritable() {
    return getCard() == null || getCard().inUse() || isSent();
  }

  private static boolean isSent() {
    return FacesContext.getCurrentInstance()
        .getExternalContext()
        .getRequestParameterMap()
        .containsKey("gun:save");
  }

  public String save() {
    Person by = signedIn.person();
    GunCard.Ranges ranges = GunCard.Ranges.of(getFigures());
    List<FieldProblem> problems =
        getCard() == null
            ? cards.add(by, name, ranges)
            : cards.correct(by, getCard().id(), name, ranges);
    problems.forEach(this::tell);
    return problems.isEmpty() ? again("targets.card.saved", name.strip()) : null;
  }

  /** With the figure's label in front, since the summary tells of several. */
  private void tell(FieldProblem p) {
    String says = words.say(p.key(), p.args().toArray());
    errors.add(p.cell(), "targets.in-field", words.get("targets.card." + p.cell()), says);
  }

  public String retire() {
    cards.retire(signedIn.person(), getCard().id());
    return again("targets.card.retired", getCard().name());
  }

  private String again(String news, String which) {
    errors.news(news, which);
    return "/office/gun-cards.xhtml?faces-redirect=true";
  }

  /** The cards before this one, the last one first. */
  public List<GunCard> getBefore() {
    return getCard() == null ? List.of() : cards.before(signedIn.person(), getCard());
  }

  public String person(UUID id) {
    return id == null ? "–" : people.names(List.of(id)).getOrDefault(id, "–");
  }

  /** The sign of the reader's unit for a figure, as the label names it. */
  public String unit(String figure) {
    GunFigure kind = GunFigure.valueOf(figure.toUpperCase(java.util.Locale.ROOT));
    return Unit.preferred(kind.dimension(), signedIn.person().units()).symbol();
  }

  /** What a card says, in one line and as it was typed. */
  public String line(GunCard of) {
    return Stream.of(GunFigure.values())
        .map(f -> of.byName().get(f.id()))
        .filter(Objects::nonNull)
        .reduce((a, b) -> a + ", " + b)
        .orElse("");
  }

  /** The figures by name, as typed or as they stand on the card. */
  public Map<String, String> getFigures() {
    if (figures == null) {
      figures = new HashMap<>(getCard() == null ? Map.of() : getCard().byName());
    }
    return figures;
  }

  public String getName() {
    return name == null && getCard() != null ? getCard().name() : name;
  }

  public void setName(String name) {
    this.name = name;
  }
}
