package lapline.board.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import lapline.board.LookBack;
import lapline.board.Recurring;
import lapline.judgement.progress.SizeTrend;
import lapline.pages.drawing.SvgWriter;
import lapline.people.SignedIn;
import lapline.people.pages.When;
import lapline.practice.Attempt;
import lapline.practice.pages.PhraseWriter;
import lapline.practice.pages.Say;
import lapline.practice.pages.SizeDrawing;
import lapline.trade.measure.Dimension;

/** What keeps coming back on a person's panels, in words: {@code #{recurringWords.of(person)}}. */
@Named
@RequestScoped
public class RecurringWords {
  @Inject private SignedIn signedIn;
  @Inject private LookBack look;
  @Inject private TaskWords tasks;
  @Inject private Say say;
  @Inject private When when;
  private UUID whose;
  private List<Told> told;
  private final Map<String, String> cameBack = new HashMap<>();

  /**
   * One cause.
   *
   * @param found on how many panels
   * @param trend whether it shrinks
   * @param svg its size from panel to panel; empty where it has none
   */
  public record Told(String cause, String found, String trend, String svg) {}

  public List<Told> of(UUID person) {
    if (!person.equals(whose)) {
      told = new ArrayList<>();
      for (Recurring r : look.of(signedIn.person(), person)) {
        told.add(told(r, told.size() + 1));
      }
      whose = person;
    }
    return told;
  }

  /** That the first cause of a panel came back; empty where it is new. */
  public String cameBack(Attempt panel, String finding) {
    return cameBack.computeIfAbsent(
        panel.id() + finding,
        asked ->
            look.on(signedIn.person(), panel, finding)
                .map(c -> say.writer().say("recurring.came-back", c.times(), c.looked()))
                .orElse(""));
  }

  private Told told(Recurring r, int number) {
    PhraseWriter words = say.writer();
    String cause = tasks.cause(r.task(), r.finding());
    String found =
        words.say(
            "recurring.found", r.times(), r.looked(), tasks.task(r.task()), r.isOnLast() ? 1 : 0);
    Optional<String> criterion = tasks.criterion(r.task(), r.finding());
    return new Told(cause, found, trend(r, criterion, words), svg(r, cause, number, words));
  }

  /**
   * How large, and whether it shrinks.
   *
   * @param criterion what the cause is about; empty for a cause of the film
   */
  static String trend(Recurring r, Optional<String> criterion, PhraseWriter words) {
    List<Recurring.Panel> measured = r.measured();
    if (measured.isEmpty()) {
      return words.say("recurring.trend.few", "", "", "", "", "", 0, "");
    }
    Dimension of = r.dimension();
    if (words.unit(of).isEmpty() && criterion.isEmpty()) {
      // a bare number of nothing says less than no number
      return "";
    }
    Optional<SizeTrend> trend = r.trend();
    double slope = trend.map(SizeTrend::slope).orElse(0.0);
    double least = trend.map(SizeTrend::least).orElse(0.0);
    double most = trend.map(SizeTrend::most).orElse(0.0);
    return words.say(
        "recurring.trend." + trend.map(t -> t.told().name()).orElse("few"),
        step(Math.abs(slope), of, words),
        lowerEnd(Math.min(Math.abs(least), Math.abs(most)), of, words),
        step(Math.max(Math.abs(least), Math.abs(most)), of, words),
        words.quantity(measured.get(0).size(), of),
        words.quantity(measured.get(measured.size() - 1).size(), of),
        measured.size(),
        out(of, criterion, words));
  }

  /** What a size says to be out; one without a unit means nothing but beside its criterion. */
  private static String out(Dimension of, Optional<String> criterion, PhraseWriter words) {
    return criterion
        .filter(label -> words.unit(of).isEmpty())
        .map(label -> words.say("recurring.out.criterion", label))
        .orElseGet(() -> words.say("recurring.out"));
  }

  /** A step from one share to another is in points: as so many per cent it would be of the size. */
  private static String step(double change, Dimension of, PhraseWriter words) {
    return of == Dimension.SHARE
        ? words.say("recurring.points", words.figure(change, of))
        : words.quantity(change, of);
  }

  /** The points are said once, at the upper end. */
  private static String lowerEnd(double change, Dimension of, PhraseWriter words) {
    return of == Dimension.SHARE ? words.figure(change, of) : words.quantity(change, of);
  }

  private String svg(Recurring r, String cause, int number, PhraseWriter words) {
    if (r.measured().isEmpty()) {
      return "";
    }
    List<SizeDrawing.Panel> panels =
        r.panels().stream()
            .map(p -> new SizeDrawing.Panel(when.day(p.scored()), p.found(), p.size()))
            .toList();
    return SvgWriter.write(
        new SizeDrawing("recurring-" + number, cause, panels, r.dimension(), words).drawing());
  }
}
