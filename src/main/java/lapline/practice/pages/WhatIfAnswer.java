package lapline.practice.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import lapline.practice.SprayChange;
import lapline.practice.SprayPlan;
import lapline.trade.measure.Dimension;

/**
 * What a change does to the film, in words: the model's figures, from a least to a most where they
 * are not known for sure, and beside them what the model leaves out.
 */
final class WhatIfAnswer {
  private final SprayChange change;
  private final SprayPlan now;
  private final SprayPlan then;
  private final PhraseWriter words;

  WhatIfAnswer(SprayChange change, PhraseWriter words) {
    this.change = change;
    this.now = change.now();
    this.then = change.then();
    this.words = words;
  }

  /**
   * One line of the answer.
   *
   * @param band from the least to the most that may come of it; empty where that is known
   */
  public record Line(String labelKey, String now, String then, String band) {}

  String title() {
    if (isBare(then)) {
      return words.say("what-if.title.bare");
    }
    if (then.distance() != now.distance()) {
      String key = isFarther() ? "what-if.title.farther" : "what-if.title.nearer";
      return words.say(key, film(now.passFilm()), film(then.passFilm()));
    }
    return words.say("what-if.title.answer", film(then.dryFilm()));
  }

  /** What a reader of the figures has to know that is not in them. */
  List<String> notes() {
    List<String> notes = new ArrayList<>();
    if (then.distance() != now.distance()) {
      notes.add(words.say(isFarther() ? "what-if.note.farther" : "what-if.note.nearer"));
      notes.add(words.say("what-if.note.loss"));
    }
    if (isBare(then)) {
      notes.add(words.say("what-if.note.bare", length(then.spacing()), length(then.fanWidth())));
    } else if (isBare(now)) {
      notes.add(words.say("what-if.note.bare-now", length(now.spacing()), length(now.fanWidth())));
    }
    return notes;
  }

  List<Line> lines() {
    return List.of(
        film("what-if.answer.wet", SprayPlan::wetFilm),
        film("what-if.answer.pass", SprayPlan::passFilm),
        film("what-if.answer.dry", SprayPlan::dryFilm),
        new Line("what-if.answer.overlap", overlap(now), overlap(then), ""),
        share("what-if.answer.spread", p -> p.ripple().variation()),
        share("what-if.answer.evenness", p -> p.ripple().evenness()));
  }

  private Line share(String key, ToDoubleFunction<SprayPlan> value) {
    return new Line(
        key,
        words.quantity(value.applyAsDouble(now), Dimension.SHARE),
        words.quantity(value.applyAsDouble(then), Dimension.SHARE),
        "");
  }

  private Line film(String key, ToDoubleFunction<SprayPlan> value) {
    String band =
        change.isOpen()
            ? words.say(
                "what-if.answer.band",
                words.figure(value.applyAsDouble(change.thinnest()), Dimension.FILM),
                film(value.applyAsDouble(change.thickest())))
            : "";
    return new Line(key, film(value.applyAsDouble(now)), film(value.applyAsDouble(then)), band);
  }

  private String overlap(SprayPlan plan) {
    return isBare(plan)
        ? words.say("what-if.answer.bare", length(plan.spacing() - plan.fanWidth()))
        : words.quantity(plan.overlap(), Dimension.SHARE);
  }

  private static boolean isBare(SprayPlan plan) {
    return plan.spacing() > plan.fanWidth();
  }

  private boolean isFarther() {
    return then.distance() > now.distance();
  }

  private String film(double metres) {
    return words.quantity(metres, Dimension.FILM);
  }

  private String length(double metres) {
    return words.quantity(metres, Dimension.LENGTH);
  }
}
