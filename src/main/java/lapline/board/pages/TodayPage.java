package lapline.board.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import lapline.board.LookAtLearner;
import lapline.board.UnitView;
import lapline.grading.SeeGradings;
import lapline.lessons.NextStep.Step;
import lapline.pages.Once;
import lapline.people.Person;
import lapline.people.SignedIn;
import lapline.practice.Attempt;
import lapline.practice.Attempt.State;
import lapline.practice.AttemptQuery;
import lapline.practice.FindAttempts;
import lapline.practice.pages.LastAdvice;

/** What do I do next, and why that? */
@Named
@RequestScoped
public class TodayPage {
  /** What an instructor said is news for so long. */
  private static final Duration NEWS = Duration.ofDays(7);

  @Inject private SignedIn signedIn;
  @Inject private LookAtLearner look;
  @Inject private FindAttempts find;
  @Inject private SeeGradings see;
  @Inject private LastAdvice advice;
  @Inject private Clock clock;
  private final Once<String> change = new Once<>(this::change);
  private final Once<Decided> decided = new Once<>(this::decided);
  private List<UnitView> units;

  /** A panel of the person's own, and what an instructor decided about it. */
  public record Decided(Attempt panel, SeeGradings.Signed by) {}

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

  /** What the last panel asks to be changed on the one to take next; empty for nothing. */
  public String getChange() {
    return change.get();
  }

  private String change() {
    UnitView next = getNext();
    return next == null || next.next().step() != Step.TAKE_PANEL
        ? ""
        : next.lastOfNextTask().map(panel -> advice.of(signedIn.person(), panel)).orElse("");
  }

  /** The latest panel that an instructor decided on, while that is news; else null. */
  public Decided getDecided() {
    return decided.get();
  }

  private Decided decided() {
    Person me = signedIn.person();
    Instant since = clock.instant().minus(NEWS);
    AttemptQuery latest =
        AttemptQuery.of(me.workshop(), 0, 1).by(me.id()).in(State.ACCEPTED, State.RETURNED);
    return find.page(me, latest).stream()
        .flatMap(panel -> see.of(me, panel.id()).stream().map(by -> new Decided(panel, by)))
        .filter(d -> d.by().grading().decision().name().equals(d.panel().state().name()))
        .filter(d -> d.by().grading().at().isAfter(since))
        .findFirst()
        .orElse(null);
  }
}
