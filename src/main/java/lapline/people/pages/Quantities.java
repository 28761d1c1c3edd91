package lapline.people.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import lapline.people.Person;
import lapline.people.SignedIn;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.QuantityWriter;
import lapline.trade.measure.Unit;
import lapline.trade.measure.UnitSystem;

/**
 * Quantities on a page, in the units of the person who reads it: {@code #{q.write(value,
 * dimension)}}.
 */
@Named("q")
@RequestScoped
public class Quantities {
  @Inject private SignedIn signedIn;

  public String write(double si, Dimension dimension) {
    return QuantityWriter.write(si, dimension, units());
  }

  /** The value with its expanded uncertainty. */
  public String sure(Estimate estimate, Dimension dimension) {
    return QuantityWriter.write(estimate, dimension, units());
  }

  public String unit(Dimension dimension) {
    return Unit.preferred(dimension, units()).symbol();
  }

  /** Named here because a page cannot name a constant of its own. */
  public Dimension getShare() {
    return Dimension.SHARE;
  }

  public Dimension getFilm() {
    return Dimension.FILM;
  }

  public UnitSystem units() {
    return signedIn.maybe().map(Person::units).orElse(UnitSystem.METRIC);
  }
}
