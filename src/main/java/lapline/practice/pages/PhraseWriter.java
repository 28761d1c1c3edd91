package lapline.practice.pages;

import java.util.ArrayList;
import java.util.List;
import lapline.content.units.BothUnits;
import lapline.pages.Messages;
import lapline.practice.Cell;
import lapline.practice.PanelOutline;
import lapline.practice.Phrase;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Limits;
import lapline.trade.measure.QuantityWriter;
import lapline.trade.measure.SpokenUnits;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Unit;
import lapline.trade.measure.UnitSystem;

/** Writes what the numbers say in one person's words and units. */
public final class PhraseWriter {
  private final Messages messages;
  private final UnitSystem units;

  public PhraseWriter(Messages messages, UnitSystem units) {
    this.messages = messages;
    this.units = units;
  }

  /** The phrase as a sentence; empty for none. */
  public String phrase(Phrase phrase) {
    if (phrase == null) {
      return "";
    }
    if (phrase.key().isEmpty()) {
      return words(phrase.text());
    }
    return say(phrase.key(), phrase.args().stream().map(this::argument).toArray());
  }

  /**
   * A change as it is noted on the next panel: what is done otherwise, without what spoke for it on
   * the panel before.
   */
  public String noted(Phrase change) {
    String noted = change.key() + ".noted";
    return messages.has(noted) ? messages.get(noted) : phrase(change);
  }

  /** A text of the course, its quantities in the reader's units. */
  public String words(String text) {
    return BothUnits.shown(text, units);
  }

  public String say(String key, Object... values) {
    return values.length == 0 ? messages.get(key) : messages.say(key, values);
  }

  /**
   * A word as it stands, or, where it is a message key such as {@code area.lower-edge}, its text.
   */
  public String word(String word) {
    return word.indexOf('.') > 0 && word.indexOf(' ') < 0 && messages.has(word)
        ? messages.get(word)
        : word;
  }

  public String quantity(double si, Dimension dimension) {
    return QuantityWriter.write(si, dimension, units);
  }

  public String quantity(double si, SpokenUnits spoken) {
    return QuantityWriter.write(si, spoken, units);
  }

  /** A distance on the panel as one points it out: whole millimetres, or tenths of an inch. */
  public String spot(double metres) {
    return quantity(pointedOut(metres), Dimension.LENGTH);
  }

  /** The same without its unit. */
  String spotFigure(double metres) {
    return figure(pointedOut(metres), Dimension.LENGTH);
  }

  private double pointedOut(double metres) {
    Unit unit = SpokenUnits.usual(Dimension.LENGTH).in(units);
    double step = unit.toSi(unit == Unit.INCH ? 0.1 : 1);
    return Math.round(metres / step) * step;
  }

  /**
   * How large a panel is cut: whole millimetres, or about so many inches. It is the size that its
   * task says it in; 23.6 in would be another panel than the 24 in of the sheet's words.
   */
  String cutSize(double width, double height) {
    Unit unit = SpokenUnits.usual(Dimension.LENGTH).in(units);
    String key =
        unit == Unit.INCH ? "practice-sheet.panel-size.about" : "practice-sheet.panel-size";
    return say(key, whole(width, unit), whole(height, unit));
  }

  private String whole(double metres, Unit unit) {
    return QuantityWriter.inField(
        unit.toSi(Math.round(unit.fromSi(metres))), SpokenUnits.usual(Dimension.LENGTH), units);
  }

  /** The value with its expanded uncertainty. */
  public String quantity(Estimate estimate, Dimension dimension) {
    return quantity(estimate, SpokenUnits.usual(dimension));
  }

  public String quantity(Estimate estimate, SpokenUnits spoken) {
    return QuantityWriter.write(estimate, spoken, units);
  }

  /** The value's figures alone, for a drawing whose legend says the unit. */
  public String figure(double si, Dimension dimension) {
    return QuantityWriter.number(si, dimension, units);
  }

  /** The units that all of it is written in. */
  UnitSystem system() {
    return units;
  }

  public String unit(Dimension dimension) {
    return unit(SpokenUnits.usual(dimension));
  }

  public String unit(SpokenUnits spoken) {
    return spoken.in(units).symbol();
  }

  public String range(TargetRange range, Dimension dimension) {
    return range(range, SpokenUnits.usual(dimension));
  }

  public String range(TargetRange range, SpokenUnits spoken) {
    Limits limits = Limits.of(range, spoken, units);
    if (range.hasLeast() && range.hasMost()) {
      return closed(range, limits);
    }
    if (spoken.dimension() == Dimension.COUNT && range.most() == 0) {
      return say("drawing.range.none");
    }
    if (range.hasLeast()) {
      return say("drawing.range.least", limits.least());
    }
    return range.hasMost() ? say("drawing.range.most", limits.most()) : say("drawing.range.open");
  }

  /** The ends of a range as its words have them, for a drawing whose axis says the unit. */
  public Limits figures(TargetRange range, Dimension dimension) {
    return Limits.of(range, SpokenUnits.usual(dimension), units).bare();
  }

  private String closed(TargetRange range, Limits limits) {
    if (range.least() == range.most()) {
      return limits.most();
    }
    if (range.least() == -range.most()) {
      return say("drawing.range.around", limits.most());
    }
    return say("drawing.range.both", limits.leastBesideMost(), limits.most());
  }

  /** Where a reading stands: 'coat 2, pass 3'; empty for the whole panel. */
  public String where(Cell cell) {
    List<String> parts = new ArrayList<>();
    addWhere(parts, "drawing.where.coat", cell.coat());
    addWhere(parts, "drawing.where.pass", cell.pass());
    if (cell.place() > 0) {
      parts.add(say("drawing.where.place", PanelOutline.nameOf(cell.place())));
    }
    addWhere(parts, "drawing.where.step", cell.step());
    return String.join(", ", parts);
  }

  private void addWhere(List<String> parts, String key, int number) {
    if (number > 0) {
      parts.add(say(key, number));
    }
  }

  private Object argument(Phrase.Arg arg) {
    if (arg.value() == null) {
      return word(arg.word());
    }
    if (arg.dimension() == Dimension.COUNT) {
      // a sentence chooses between one and many by the number itself
      return Math.round(arg.value());
    }
    if (arg.end() != null) {
      return limit(arg);
    }
    if (arg.standardUncertainty() != null) {
      return quantity(arg.estimate(), arg.spoken());
    }
    return arg.spoken().equals(SpokenUnits.usual(Dimension.LENGTH))
        ? marked(arg.value())
        : quantity(arg.value(), arg.spoken());
  }

  /** A length that a sentence tells to mark or keep; one too short for that stands as it is. */
  private String marked(double metres) {
    String spot = spot(metres);
    return spot.equals(spot(0)) ? quantity(metres, Dimension.LENGTH) : spot;
  }

  private String limit(Phrase.Arg arg) {
    return switch (arg.end()) {
      case LEAST -> Limits.of(TargetRange.atLeast(arg.value()), arg.spoken(), units).least();
      case MOST -> Limits.of(TargetRange.atMost(arg.value()), arg.spoken(), units).most();
    };
  }
}
