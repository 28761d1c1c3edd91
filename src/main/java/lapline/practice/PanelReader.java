package lapline.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lapline.practice.Measurand.Option;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Limits;
import lapline.trade.measure.QuantityReader;
import lapline.trade.measure.QuantityWriter;
import lapline.trade.measure.ReadQuantity;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Unit;
import lapline.trade.measure.UnitSystem;

/**
 * Makes readings in SI, each with its uncertainty, of what was typed at the places of a task's
 * record, and says what cannot be understood or cannot be true. Never throws on any text.
 */
public final class PanelReader {
  private final PracticeTask task;
  private final Measurands measurands;
  private final UnitSystem units;
  private final List<Reading> readings = new ArrayList<>();
  private final List<FieldProblem> problems = new ArrayList<>();
  private final List<FieldProblem> questions = new ArrayList<>();

  private PanelReader(PracticeTask task, Measurands measurands, UnitSystem units) {
    this.task = task;
    this.measurands = measurands;
    this.units = units;
  }

  /**
   * @param typed by cell key; an empty text stands for 'not measured'
   * @param units the units that a bare number is in
   */
  public static PanelReading read(
      PracticeTask task, Measurands measurands, Map<String, String> typed, UnitSystem units) {
    PanelReader reader = new PanelReader(task, measurands, units);
    Map<String, String> left = new TreeMap<>(typed);
    left.values().removeIf(text -> text == null || text.isBlank());
    for (Cell cell : PanelCells.of(task, measurands)) {
      String text = left.remove(cell.key());
      if (text != null) {
        reader.take(cell, text.strip());
      }
    }
    left.keySet()
        .forEach(
            key -> reader.problems.add(new FieldProblem(key, "entry.no-such-place", List.of(key))));
    PanelEntry entry = PanelEntry.of(reader.readings);
    reader.problems.addAll(new ReadingsTogether(task.panel(), entry, units).problems());
    reader.questions.addAll(OddAmongPlaces.questions(entry, measurands, reader.questions, units));
    return new PanelReading(entry, reader.problems, reader.questions);
  }

  private void take(Cell cell, String text) {
    Measurand m = measurands.require(cell.measurand());
    if (m.dimension() == Dimension.CHOICE) {
      takeChoice(cell, m, text);
      return;
    }
    ReadQuantity read = QuantityReader.read(text, m.spoken(), units);
    if (read instanceof ReadQuantity.Understood understood) {
      takeValue(cell, m, text, understood.si());
    } else if (read instanceof ReadQuantity.NotUnderstood not) {
      String why = not.reason().name().toLowerCase(Locale.ROOT).replace('_', '-');
      problems.add(new FieldProblem(cell.key(), "entry.reading." + why, args(not, m)));
    }
  }

  /** What the reader found, and last how it is written in this field. */
  private List<String> args(ReadQuantity.NotUnderstood not, Measurand m) {
    List<String> args = new ArrayList<>(not.args());
    args.add(ReadingExample.of(m, units));
    return args;
  }

  private void takeChoice(Cell cell, Measurand m, String text) {
    for (Option option : m.options()) {
      if (isMeant(option, text)) {
        readings.add(new Reading(cell, option.value(), 0, text));
        return;
      }
    }
    String labels = String.join(", ", m.options().stream().map(Option::label).toList());
    problems.add(FieldProblem.at(cell, "entry.reading.no-choice", text, labels));
  }

  /** A choice may be typed as its word or, as a spreadsheet keeps it, as its number. */
  private static boolean isMeant(Option option, String text) {
    return option.id().equalsIgnoreCase(text)
        || option.label().equalsIgnoreCase(text)
        || QuantityReader.read(text, Dimension.NUMBER, UnitSystem.METRIC)
                instanceof ReadQuantity.Understood number
            && number.si() == option.value();
  }

  private void takeValue(Cell cell, Measurand m, String text, double value) {
    boolean whole = m.dimension() != Dimension.COUNT || value == Math.rint(value);
    if (!whole) {
      problems.add(FieldProblem.at(cell, "entry.reading.not-whole", text));
    } else if (value < m.possibleLeast() || value > m.possibleMost()) {
      problems.add(impossible(cell, m, text, value));
    } else {
      Reading reading = new Reading(cell, value, m.uncertaintyAt(value), text);
      readings.add(reading);
      OddReading.question(task, m, reading, TargetText.isBare(text), units)
          .ifPresent(questions::add);
    }
  }

  private FieldProblem impossible(Cell cell, Measurand m, String text, double value) {
    boolean below = value < m.possibleLeast();
    TargetRange possible = new TargetRange(m.possibleLeast(), m.possibleMost());
    Limits limits = Limits.inField(possible, m.spoken(), units);
    String key = below ? "entry.reading.below-possible" : "entry.reading.above-possible";
    String shown = QuantityWriter.inField(value, m.spoken(), units);
    String limit = below ? limits.least() : limits.most();
    Optional<Unit> meant =
        TargetText.isBare(text) ? new MeantUnit(m, units).possible(task, value) : Optional.empty();
    return meant
        .map(u -> FieldProblem.at(cell, key + "-unit", shown, limit, text + "\u00a0" + u.symbol()))
        .orElseGet(() -> FieldProblem.at(cell, key, shown, limit));
  }
}
