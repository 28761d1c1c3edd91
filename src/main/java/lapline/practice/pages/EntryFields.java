package lapline.practice.pages;

import java.util.Set;
import lapline.content.units.BothUnits;
import lapline.pages.Messages;
import lapline.practice.Cell;
import lapline.practice.Measurand;
import lapline.practice.PanelOutline;
import lapline.practice.PracticeTask;
import lapline.practice.Scope;
import lapline.trade.measure.UnitSystem;

/** The single fields of a panel's record and the heads of its columns, as they are labelled. */
final class EntryFields {
  private final PracticeTask task;
  private final UnitSystem units;
  private final EntryValues values;
  private final Messages words;

  /** All that the task asks for; a table may have gaps. */
  private final Set<Cell> room;

  /** A field of the task with its measurand. */
  record Asked(PracticeTask.Field field, Measurand measurand) {
    Scope scope() {
      return measurand.scope();
    }
  }

  EntryFields(
      PracticeTask task, UnitSystem units, EntryValues values, Messages words, Set<Cell> room) {
    this.task = task;
    this.units = units;
    this.values = values;
    this.words = words;
    this.room = room;
  }

  EntryForm.Column column(int number, Asked a, String label, int coat) {
    Measurand m = a.measurand();
    return new EntryForm.Column(number, label, unit(a), hint(m), needed(a, coat), m.options());
  }

  private String hint(Measurand measurand) {
    return BothUnits.shown(measurand.hint(), units);
  }

  private String needed(Asked asked, int coat) {
    if (!isNeeded(asked, coat)) {
      return "";
    }
    int places = asked.field().placesNeeded();
    return places > 0 ? words.say("entry.needed.at", places) : words.get("entry.needed");
  }

  /** A coat that need not be sprayed need not be read. */
  private boolean isNeeded(Asked asked, int coat) {
    return asked.field().required() && coat <= task.coatsNeeded();
  }

  EntryForm.Field field(Asked asked, Cell cell, String where) {
    if (!room.contains(cell)) {
      return EntryForm.Field.NONE;
    }
    Measurand m = asked.measurand();
    String unit = unit(asked);
    String label = m.label() + (where.isEmpty() ? "" : ", " + where) + inBrackets(unit);
    String typed = values.typed(cell.key());
    return new EntryForm.Field(
        cell.key(),
        label,
        unit,
        m.possibleLeast() < 0,
        hint(m),
        isNeeded(asked, cell.coat()),
        cell.place(),
        typed,
        values.revision(cell.key()),
        values.understood(cell.key()),
        values.problem(cell.key()),
        m.options().stream()
            .map(o -> new EntryForm.Choice(o.id(), o.label(), o.id().equals(typed)))
            .toList());
  }

  static String inBrackets(String unit) {
    return unit.isEmpty() ? "" : " (" + unit + ")";
  }

  private String unit(Asked asked) {
    return asked.measurand().spoken().in(units).symbol();
  }

  String coat(int coat) {
    return words.say("entry.coat", coat);
  }

  String place(int number) {
    return words.say("entry.at-place", PanelOutline.nameOf(number));
  }

  String placeName(int number) {
    return task.panel()
        .place(number)
        .map(PanelOutline.Place::name)
        .filter(n -> n != null && !n.isBlank())
        .map(n -> number + " " + n)
        .orElse(PanelOutline.nameOf(number));
  }
}
