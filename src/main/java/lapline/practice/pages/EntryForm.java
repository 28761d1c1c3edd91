package lapline.practice.pages;

import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toUnmodifiableSet;

import java.util.List;
import java.util.Set;
import lapline.practice.Measurand;

/**
 * The record of a panel as fields to fill in: sections, in them blocks of single fields or tables.
 */
public record EntryForm(List<Section> sections) {

  /** How many places have something written. */
  public long filled() {
    return fields().stream().filter(f -> !f.typed().isEmpty()).count();
  }

  /** How many places there are. */
  public int room() {
    return fields().size();
  }

  public List<Field> fields() {
    return sections.stream()
        .flatMap(s -> s.parts().stream())
        .flatMap(p -> p.blocks().stream())
        .flatMap(b -> b.rows().stream())
        .flatMap(r -> r.fields().stream())
        .filter(Field::isAsked)
        .toList();
  }

  /** The field of a cell; null when there is none. */
  Field field(String key) {
    return fields().stream().filter(f -> f.key().equals(key)).findFirst().orElse(null);
  }

  public record Section(String id, String title, String note, List<Part> parts) {}

  /**
   * Blocks one below the other.
   *
   * @param drawn whether their readings are taken at places, so that the drawing stands beside them
   */
  public record Part(boolean drawn, List<Block> blocks) {

    /** Numbers of the places that are read in it. */
    Set<Integer> places() {
      return blocks.stream()
          .flatMap(b -> b.rows().stream())
          .map(Row::place)
          .collect(toUnmodifiableSet());
    }
  }

  /**
   * Fields that belong together.
   *
   * @param title such as 'Coat 2'; empty where the section's title says it
   * @param table whether a row has several columns or a row head of its own
   */
  public record Block(
      String id, String title, boolean table, String corner, List<Column> columns, List<Row> rows) {

    /** What the table holds, for those who go from table to table by ear. */
    public String name() {
      String heads = columns.stream().map(Column::label).distinct().collect(joining(", "));
      return title.isEmpty() || title.equals(heads) ? heads : title + ": " + heads;
    }

    /** The columns that say how to take their readings, each once. */
    public List<Column> hints() {
      return columns.stream().filter(c -> !c.hint().isBlank()).limit(sameHint() ? 1 : 99).toList();
    }

    /**
     * Whether a phone is too narrow for its columns, so that each row becomes a block of its own.
     */
    public boolean stacks() {
      return columns.size() > 2;
    }

    /** Columns of choices, of which the same can be said of all places that are still open. */
    public List<Column> choices() {
      return columns.stream().filter(c -> !c.choices().isEmpty()).toList();
    }

    /** The coats of one measurand have one hint between them. */
    private boolean sameHint() {
      return columns.stream().map(Column::hint).distinct().count() == 1;
    }
  }

  /**
   * @param number its place among the columns, from 1, the rows' heads not counted
   * @param needed how much of it there is no score without, in words; empty where it may stay open
   * @param choices what can be chosen; empty where something is measured
   */
  public record Column(
      int number,
      String label,
      String unit,
      String hint,
      String needed,
      List<Measurand.Option> choices) {

    public String head() {
      return label + EntryFields.inBrackets(unit);
    }
  }

  /**
   * @param place number of the reading place; 0 for none
   */
  public record Row(String head, int place, List<Field> fields) {

    boolean isAsked() {
      return fields.stream().anyMatch(Field::isAsked);
    }
  }

  /**
   * One place on the record.
   *
   * @param key of its cell
   * @param label what is read, where, in which unit, for those who do not see the table's heads
   * @param signed whether it may be less than 0: a phone's keys for numbers have no minus
   * @param revision of what stands in it
   * @param understood the value as understood; empty where it is not
   * @param problem what is wrong, in words; empty where nothing is
   */
  public record Field(
      String key,
      String label,
      String unit,
      boolean signed,
      String hint,
      boolean required,
      int place,
      String typed,
      long revision,
      String understood,
      String problem,
      List<Choice> choices) {

    /** Where a table has no field: the first pass has no step from the one before. */
    static final Field NONE = new Field("", "", "", false, "", false, 0, "", 0, "", "", List.of());

    public boolean isAsked() {
      return !key.isEmpty();
    }

    /** Its id on the page. */
    public String id() {
      return idOf(key);
    }

    /** The same of the field for this cell; a full stop would need escaping in style sheets. */
    static String idOf(String key) {
      return "r-" + key.replace('.', '-');
    }

    public boolean wrong() {
      return !problem.isEmpty();
    }

    public boolean choice() {
      return !choices.isEmpty();
    }
  }

  public record Choice(String id, String label, boolean chosen) {}
}
