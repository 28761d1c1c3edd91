package lapline.practice.pages;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import lapline.pages.Messages;
import lapline.people.Person;
import lapline.practice.Attempt;
import lapline.practice.FindAttempts;
import lapline.practice.PanelScore;

/** The one change that a panel asks of the next one of its task. */
@ApplicationScoped
public class LastAdvice {
  private FindAttempts find;
  private Messages messages;

  protected LastAdvice() {}

  @Inject
  public LastAdvice(FindAttempts find, Messages messages) {
    this.find = find;
    this.messages = messages;
  }

  /**
   * As it is noted on the next panel; empty of a draft, and while a doubt is to be settled first.
   */
  public String of(Person reader, Attempt panel) {
    PhraseWriter writer = new PhraseWriter(messages, reader.units());
    return find.judged(reader, panel.id()).stream()
        .flatMap(judged -> judged.score().findings().stream().limit(1))
        .filter(PanelScore.Finding::decided)
        .map(finding -> writer.noted(finding.change()))
        .findFirst()
        .orElse("");
  }
}
