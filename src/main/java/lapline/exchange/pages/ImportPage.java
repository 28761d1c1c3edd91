package lapline.exchange.pages;

import jakarta.faces.view.ViewScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import jakarta.servlet.http.Part;
import java.io.IOException;
import java.io.InputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import lapline.exchange.readings.ColumnChoices;
import lapline.exchange.readings.ColumnUse;
import lapline.exchange.readings.ReadingsTable;
import lapline.exchange.readings.ReadingsTableReader;
import lapline.exchange.readings.TableReading;
import lapline.pages.Errors;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.SignedIn;
import lapline.practice.Attempt;
import lapline.practice.FindAttempts;
import lapline.practice.KeepReadings;
import lapline.practice.KeptReadings;
import lapline.practice.TypedReading;

/**
 * What does my file say? Shows how each column is taken and every value understood, then takes it.
 */
@Named
@ViewScoped
public class ImportPage implements Serializable {
  // all of these are proxies of beans with a scope of their own, which a session can keep
  @Inject private SignedIn signedIn;
  @Inject private FindAttempts find;
  @Inject private KeepReadings keep;
  @Inject private PreviewFile preview;
  @Inject private Errors errors;

  private String attemptId;
  private transient Part file;
  private ReadingsTable table;
  private List<Column> columns = List.of();

  /** One column of the file and what it is taken for. */
  public static final class Column implements Serializable {
    private final int number;
    private final String name;
    private final String example;
    private String use;

    Column(int number, String name, String example, String use) {
      this.number = number;
      this.name = name;
      this.example = example;
      this.use = use;
    }

    public int getNumber() {
      return number;
    }

    public String getName() {
      return name;
    }

    public String getExample() {
      return example;
    }

    public String getUse() {
      return use;
    }

    public void setUse(String use) {
      this.use = use;
    }
  }

  /** Only a draft of one's own takes readings. */
  public void open() {
    attempt().mustBeWrittenBy(person());
  }

  public void read() throws IOException {
    if (file == null || file.getSize() == 0) {
      errors.add("file", "import.file.missing");
      return;
    }
    TableReading reading = ReadingsTableReader.read(bytes());
    if (reading instanceof TableReading.Refused refused) {
      errors.add("file", refused.key(), refused.values().toArray());
    } else if (reading instanceof TableReading.Readable readable) {
      show(readable.table());
    }
  }

  private byte[] bytes() throws IOException {
    try (InputStream in = file.getInputStream()) {
      // one more than is allowed is enough to know that it is too long
      return in.readNBytes(ReadingsTableReader.MOST_BYTES + 1);
    }
  }

  private void show(ReadingsTable found) {
    table = found;
    List<ColumnUse> guesses = choices().guess(found.header());
    columns = new ArrayList<>();
    for (int c = 0; c < guesses.size(); c++) {
      columns.add(
          new Column(
              c + 1, found.header().get(c), found.rows().get(0).get(c), guesses.get(c).code()));
    }
  }

  public void again() {
    if (!getPreview().anything()) {
      errors.add(null, "import.nothing");
    }
  }

  public String take() {
    FilePreview now = getPreview();
    if (!now.anything()) {
      errors.add(null, "import.nothing");
      return null;
    }
    long base = attempt().revision();
    List<TypedReading> typed =
        now.typed().entrySet().stream()
            .map(e -> new TypedReading(e.getKey(), e.getValue(), base))
            .toList();
    KeptReadings kept = keep.run(person(), uuid(), base, typed);
    kept.refused().forEach(p -> errors.add(null, p.key(), p.args().toArray()));
    if (!kept.complete()) {
      return null;
    }
    errors.news("import.taken", typed.size());
    return "/learn/entry.xhtml?faces-redirect=true&attempt=" + attemptId;
  }

  public String startOver() {
    table = null;
    columns = List.of();
    return null;
  }

  public FilePreview getPreview() {
    List<ColumnUse> uses = columns.stream().map(c -> ColumnUse.of(c.getUse())).toList();
    return preview.of(person(), attempt(), table, uses);
  }

  public List<PreviewFile.Choice> getUses() {
    return preview.choices(choices());
  }

  private ColumnChoices choices() {
    return preview.choicesFor(attempt());
  }

  public boolean isShown() {
    return table != null;
  }

  public List<Column> getColumns() {
    return columns;
  }

  private Person person() {
    return signedIn.person();
  }

  private Attempt attempt() {
    return find.attempt(person(), uuid());
  }

  private UUID uuid() {
    try {
      return UUID.fromString(attemptId);
    } catch (IllegalArgumentException | NullPointerException e) {
      throw new NotFoundException();
    }
  }

  public String getAttemptId() {
    return attemptId;
  }

  public void setAttemptId(String attemptId) {
    this.attemptId = attemptId;
  }

  public Part getFile() {
    return file;
  }

  public void setFile(Part file) {
    this.file = file;
  }
}
