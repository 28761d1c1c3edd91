package lapline.practice.pages;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;
import java.util.function.Function;
import java.util.stream.Collectors;
import lapline.pages.Messages;
import lapline.practice.Criterion;
import lapline.practice.Measurand;
import lapline.practice.PanelScore;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTasks;
import lapline.practice.Whereabouts;
import lapline.practice.quantity.PanelQuantities;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.UnitSystem;
import lapline.trade.measure.Verdict;

/**
 * Writes what a criterion asks for and what was found, in one person's words and units: numbers as
 * quantities, choices by their names, rules as kept or broken.
 */
public final class CriterionWriter {
  /** Begins the keys of sentences that only say that a value lies below or above its target. */
  private static final String OUTSIDE = "score.evidence.";

  private final PhraseWriter words;
  private final Function<String, Optional<Measurand>> measurands;

  CriterionWriter(PhraseWriter words, Function<String, Optional<Measurand>> measurands) {
    this.words = words;
    this.measurands = measurands;
  }

  /** For a reader of these units, with the choices of the course. */
  public static CriterionWriter of(Messages messages, UnitSystem units, PracticeTasks tasks) {
    return new CriterionWriter(new PhraseWriter(messages, units), tasks.measurands()::find);
  }

  public PhraseWriter words() {
    return words;
  }

  public String target(Criterion criterion) {
    if (isRule(criterion)) {
      return words.say("drawing.rule.kept");
    }
    if (criterion.judged() == Criterion.Judged.SHARE && criterion.target().most() == 0) {
      return words.say("drawing.range.none");
    }
    return choice(criterion)
        .map(m -> named(m, criterion.target()::contains))
        .orElseGet(() -> words.range(criterion.target(), criterion.spoken()));
  }

  public String value(Criterion criterion, Estimate estimate) {
    double si = estimate.value();
    if (isRule(criterion)) {
      return words.say(si == 0 ? "drawing.rule.broken" : "drawing.rule.kept");
    }
    if (criterion.dimension() == Dimension.COUNT && si == 0) {
      return words.say("drawing.range.none");
    }
    return choice(criterion)
        .map(m -> named(m, option -> option == si))
        .filter(name -> !name.isEmpty())
        .orElseGet(() -> words.quantity(estimate, criterion.spoken()));
  }

  /** What came out, with the places or the part it came from where they say more than a number. */
  String value(PracticeTask task, PanelScore score, PanelScore.Result r) {
    return Whereabouts.of(task, r)
        .filter(where -> !isNumberEnough(r))
        .map(words::phrase)
        .orElseGet(() -> number(score, r));
  }

  /** What came out as a number with its uncertainty. */
  public String number(PanelScore score, PanelScore.Result r) {
    return shareInside(score, r).orElseGet(() -> value(r.criterion(), r.estimate()));
  }

  /** A share of the area with the ends of its interval, which a plus-minus would put beyond 0 %. */
  private Optional<String> shareInside(PanelScore score, PanelScore.Result r) {
    return Optional.ofNullable(score.film())
        .filter(film -> r.shareOfArea())
        .map(film -> ShareInside.of(film, words));
  }

  /**
   * What speaks for a cause. What a criterion of the task says for its own is written anew, since
   * only here it is known what its choices and rules are called.
   */
  public List<String> evidence(PracticeTask task, PanelScore score, PanelScore.Finding finding) {
    return finding.evidence().stream()
        .map(
            said ->
                score.results().stream()
                    .filter(r -> said.key().startsWith(OUTSIDE) && finding.isAbout(r))
                    .findFirst()
                    .map(r -> evidence(task, score, r))
                    .orElseGet(() -> words.phrase(said)))
        .toList();
  }

  private String evidence(PracticeTask task, PanelScore score, PanelScore.Result r) {
    return words.say(
        "score.evidence", r.criterion().label(), value(task, score, r), target(r.criterion()));
  }

  /** A mix that will do is told by how far off it is; a jump by how many numbers it skips. */
  private static boolean isNumberEnough(PanelScore.Result r) {
    return r.criterion().quantity().equals("grit-step")
        || Whereabouts.namesItself(r) && r.verdict() == Verdict.MET;
  }

  /** What stands beside the value in small: where the one that decides lies, or the bare number. */
  String beside(PracticeTask task, PanelScore.Result r) {
    if (r.criterion().quantity().equals("grit-step")) {
      return Whereabouts.of(task, r).map(words::phrase).orElse("");
    }
    if (Whereabouts.namesItself(r) && !isNumberEnough(r)) {
      return value(r.criterion(), r.estimate());
    }
    return r.criterion().judged() == Criterion.Judged.EACH && r.instances().size() > 1
        ? r.instances().stream()
            .min(Comparator.comparingDouble(PanelScore.Instance::conformance))
            .map(i -> words.where(i.where()))
            .orElse("")
        : "";
  }

  /** The name of what went into a number: a measurand's label, or a word of its own. */
  String input(PanelScore.Input input) {
    return measurands
        .apply(input.name())
        .map(Measurand::label)
        .orElseGet(() -> ownWord(input.name()));
  }

  /** What is worked out has its word in the bundle; a part of a mix is called as on the sheet. */
  private String ownWord(String name) {
    String key = "input." + name;
    String said = words.word(key);
    return said.equals(key) ? name : said;
  }

  private static boolean isRule(Criterion criterion) {
    return PanelQuantities.find(criterion.quantity())
        .map(q -> q.dimension() == Dimension.CHOICE)
        .orElse(false);
  }

  /** What was chosen from; empty where a share of choices is judged, which is a number. */
  private Optional<Measurand> choice(Criterion criterion) {
    return criterion.judged() == Criterion.Judged.SHARE
        ? Optional.empty()
        : measurands.apply(criterion.quantity()).filter(m -> !m.options().isEmpty());
  }

  private static String named(Measurand choice, DoublePredicate which) {
    return choice.options().stream()
        .filter(o -> which.test(o.value()))
        .map(Measurand.Option::label)
        .collect(Collectors.joining(" / "));
  }
}
