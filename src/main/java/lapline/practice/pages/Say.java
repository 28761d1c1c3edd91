package lapline.practice.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import lapline.pages.Messages;
import lapline.people.pages.Quantities;
import lapline.practice.Cell;
import lapline.practice.FilmField;
import lapline.practice.Phrase;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.TargetRange;

/** Writes what the numbers say for the person who reads the page: {@code #{say.phrase(p)}}. */
@Named("say")
@RequestScoped
public class Say {
  @Inject private Messages messages;
  @Inject private Quantities quantities;

  public String phrase(Phrase phrase) {
    return writer().phrase(phrase);
  }

  public String range(TargetRange range, Dimension dimension) {
    return writer().range(range, dimension);
  }

  public String where(Cell cell) {
    return writer().where(cell);
  }

  public String area(FilmField.Area area) {
    return PanelMap.area(area, writer());
  }

  public PhraseWriter writer() {
    return new PhraseWriter(messages, quantities.units());
  }
}
