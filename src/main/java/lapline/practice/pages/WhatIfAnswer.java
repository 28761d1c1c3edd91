package lapline.practice.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import lapline.practice.SprayPlan;
import lapline.trade.measure.Dimension;

/**
 * What a change does to the film, in words: the model's figures, and beside them what the model
 * leaves out, so that nobody learns that paint sprayed from farther away costs nothing.
 */
final class WhatIfAnswer {
  private final SprayPlan now;
  private final SprayPlan then;
  private final PhraseWriter words;

  WhatIfAnswer(SprayPlan now, SprayPlan then, PhraseWriter words) {
    this.now = now;
    this.then = then;
    this.words = words;
  }

  /** One line of the answer. */
  public record Line(String labelKey, String now, String then) {}

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
        line("what-if.answer.wet", SprayPlan::wetFilm, Dimension.FILM),
        line("what-if.answer.pass", SprayPlan::passFilm, Dimension.FILM),
        line("what-if.answer.dry", SprayPlan::dryFilm, Dimension.FILM),
        new Line("what-if.answer.overlap", overlap(now), overlap(then)),
        line("what-if.answer.spread", p -> p.ripple().variation(), Dimension.SHARE),
        line("what-if.answer.evenness", p -> p.ripple().evenness(), Dimension.SHARE));
  }

  private Line line(String key, ToDoubleFunction<SprayPlan> value, Dimension dimension) {
    return new Line(
        key,
        words.quantity(value.applyAsDouble(now), dimension),
        words.quantity(value.applyAsDouble(then), dimension));
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
