package lapline.practice.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import lapline.pages.Messages;
import lapline.people.pages.Quantities;
import lapline.practice.Cell;
import lapline.practice.Criterion;
import lapline.practice.FilmField;
import lapline.practice.Phrase;
import lapline.practice.PracticeTasks;
import lapline.practice.TargetText;
import lapline.trade.measure.SpokenUnits;

/** Writes what the numbers say for the person who reads the page: {@code #{say.phrase(p)}}. */
@Named("say")
@RequestScoped
public class Say {
  @Inject private Messages messages;
  @Inject private Quantities quantities;
  @Inject private PracticeTasks tasks;

  public String phrase(Phrase phrase) {
    return writer().phrase(phrase);
  }

  /** The phrase with a full stop at its end, whether it was written with one or not. */
  public String sentence(Phrase phrase) {
    String said = phrase(phrase);
    return said.isEmpty() || said.matches("(?s).*[.!?…]") ? said : said + ".";
  }

  /** What a criterion asks for: a range, a choice by its name, a rule that is to be kept. */
  public String target(Criterion criterion) {
    return criteria().target(criterion);
  }

  /** A target that was typed, in the reader's units; as typed where it is none any more. */
  public String written(String target, SpokenUnits spoken) {
    return TargetText.understand(target, spoken, quantities.units())
        .asRange()
        .map(range -> writer().range(range, spoken))
        .orElse(target);
  }

  /** A text of the course, its quantities in the reader's units. */
  public String words(String text) {
    return writer().words(text);
  }

  public String where(Cell cell) {
    return writer().where(cell);
  }

  public String area(FilmField.Area area) {
    return PanelMap.area(area, writer());
  }

  CriterionWriter criteria() {
    return CriterionWriter.of(messages, quantities.units(), tasks);
  }

  public PhraseWriter writer() {
    return new PhraseWriter(messages, quantities.units());
  }
}
