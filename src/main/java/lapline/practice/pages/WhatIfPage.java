package lapline.practice.pages;

import jakarta.annotation.PostConstruct;
import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.context.FacesContext;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lapline.pages.drawing.SvgWriter;
import lapline.people.pages.Quantities;
import lapline.practice.SprayChange;
import lapline.practice.SprayPlan;
import lapline.practice.SprayPlan.Thing;
import lapline.trade.measure.QuantityReader;
import lapline.trade.measure.QuantityWriter;
import lapline.trade.measure.ReadQuantity;
import lapline.trade.measure.ReadQuantity.NotUnderstood;
import lapline.trade.measure.ReadQuantity.Understood;
import lapline.trade.measure.UnitSystem;

/** What would the film be if one thing were changed? Everything stands in the page's address. */
@Named
@RequestScoped
public class WhatIfPage {
  /** A usual clear, to start from; common practice, no source. */
  private static final SprayPlan USUAL = new SprayPlan(55e-6, 0.45, 0.1, 0.06, 0.2, 0.1, 0.3, 2);

  /** The same where people think in inches and mil, in round numbers of these. */
  private static final SprayPlan USUAL_US =
      new SprayPlan(55.88e-6, 0.45, 0.1, 0.06096, 0.2032, 0.1016, 0.3048, 2);

  @Inject private Quantities quantities;
  @Inject private Say say;
  private final List<Field> fields = new ArrayList<>();
  private Thing changed = Thing.SPACING;
  private SprayPlan now;
  private boolean wrong;
  private SprayChange change;
  private Field to;

  /**
   * A value of the form.
   *
   * @param problem in words; empty where it was understood
   */
  public record Field(
      String id, String labelKey, String unit, String typed, WhatIfSlider slider, String problem) {}

  @PostConstruct
  void read() {
    Map<String, String> given =
        FacesContext.getCurrentInstance().getExternalContext().getRequestParameterMap();
    now = usual();
    for (Thing thing : Thing.values()) {
      String usual = written(thing, usual().get(thing));
      Field field = field(id(thing), thing, given.getOrDefault(id(thing), usual));
      fields.add(field);
      if (field.problem().isEmpty()) {
        now = now.with(thing, value(thing, field.typed()));
      }
      changed = id(thing).equals(given.get("change")) ? thing : changed;
    }
    to = field("to", changed, given.getOrDefault("to", written(changed, suggested())));
    wrong = !to.problem().isEmpty() || fields.stream().anyMatch(f -> !f.problem().isEmpty());
    if (!wrong) {
      change = SprayChange.of(now, changed, value(changed, to.typed())).orElse(null);
    }
  }

  private SprayPlan usual() {
    return usual(quantities.units());
  }

  static SprayPlan usual(UnitSystem units) {
    return units == UnitSystem.US ? USUAL_US : USUAL;
  }

  private double suggested() {
    return suggested(changed, now.get(changed), quantities.units());
  }

  /** A change large enough to be seen, to a number that is easily said. */
  static double suggested(Thing changed, double value, UnitSystem units) {
    double other = changed == Thing.COATS ? value + 1 : value * 1.25;
    return Math.min(changed.most(), WhatIfSlider.rounded(changed, other, units));
  }

  static String id(Thing thing) {
    return thing.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private Field field(String id, Thing thing, String typed) {
    String problem = problem(thing, typed);
    double at = problem.isEmpty() ? value(thing, typed) : usual().get(thing);
    return new Field(
        id,
        "what-if." + id(thing),
        quantities.unit(thing.dimension()),
        typed,
        WhatIfSlider.of(thing, at, quantities.units()),
        problem);
  }

  private String problem(Thing thing, String typed) {
    ReadQuantity read = QuantityReader.read(typed, thing.dimension(), quantities.units());
    if (read instanceof NotUnderstood not) {
      String why = not.reason().name().toLowerCase(Locale.ROOT).replace('_', '-');
      return say.writer().say("what-if.wrong." + why, not.args().toArray());
    }
    double si = ((Understood) read).si();
    return si >= thing.least() && si <= thing.most()
        ? ""
        : say.writer()
            .say(
                "what-if.wrong.range", written(thing, thing.least()), written(thing, thing.most()));
  }

  private double value(Thing thing, String typed) {
    return ((Understood) QuantityReader.read(typed, thing.dimension(), quantities.units())).si();
  }

  private String written(Thing thing, double si) {
    return QuantityWriter.number(si, thing.dimension(), quantities.units());
  }

  public boolean isAnswered() {
    return change != null;
  }

  /** Whether passes would lie so far apart, or so close, that there is no film to speak of. */
  public boolean isOutOfReach() {
    return !wrong && !isAnswered();
  }

  public List<WhatIfAnswer.Line> getLines() {
    return answer().lines();
  }

  public List<String> getNotes() {
    return answer().notes();
  }

  public String getTitle() {
    return isAnswered() ? answer().title() : say.writer().say("what-if.title");
  }

  private WhatIfAnswer answer() {
    return new WhatIfAnswer(change, say.writer());
  }

  public String getSvg() {
    return SvgWriter.write(new PlanDrawing(change.now(), change.then(), say.writer()).drawing());
  }

  public List<Field> getFields() {
    return fields;
  }

  public Field getTo() {
    return to;
  }

  public String getChanged() {
    return id(changed);
  }

  public boolean isWrong() {
    return wrong;
  }
}
