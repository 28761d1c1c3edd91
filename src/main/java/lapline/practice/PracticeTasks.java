package lapline.practice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lapline.content.ContentFile;
import lapline.content.ContentFiles;
import lapline.content.ContentReading;
import lapline.content.Problem;
import lapline.content.Problems;
import lapline.content.YamlFile;
import lapline.content.units.BothUnitsCheck;

/** All practice tasks of the course with the measurands they use, as they stand in the files. */
public final class PracticeTasks {
  private final Measurands measurands;
  private final Map<String, PracticeTask> byId;
  private final List<Problem> problems;

  private PracticeTasks(
      Measurands measurands, Map<String, PracticeTask> byId, List<Problem> problems) {
    this.measurands = measurands;
    this.byId = Collections.unmodifiableMap(byId);
    this.problems = List.copyOf(problems);
  }

  /** Never fails: a broken task is left out and told among the problems. */
  public static PracticeTasks read(ContentFiles files) {
    List<Problem> problems = new ArrayList<>();
    Measurands measurands = measurands(files, problems);
    PracticeTaskReader reader = new PracticeTaskReader(measurands);
    Map<String, PracticeTask> byId = new LinkedHashMap<>();
    for (String path : files.list("curriculum", ".yaml")) {
      if (path.contains("/tasks/")) {
        Problems own = new Problems(path);
        files
            .read(path, own)
            .map(reader::read)
            .ifPresent(
                reading -> {
                  problems.addAll(reading.problems());
                  reading.usable().ifPresent(t -> byId.put(t.id(), t));
                });
        problems.addAll(own.all());
      }
    }
    return new PracticeTasks(measurands, byId, problems);
  }

  private static Measurands measurands(ContentFiles files, List<Problem> problems) {
    Problems own = new Problems("curriculum/measurands.yaml");
    Optional<ContentFile> file = files.read(own.file(), own);
    List<Measurand> all =
        file.flatMap(f -> YamlFile.read(f, own))
            .map(root -> new MeasurandsReader().read(root))
            .orElse(List.of());
    file.ifPresent(f -> BothUnitsCheck.yaml(f.text(), own));
    ContentReading<List<Measurand>> reading = ContentReading.of(all, own);
    problems.addAll(reading.problems());
    return new Measurands(reading.usable().orElse(List.of()));
  }

  public Measurands measurands() {
    return measurands;
  }

  public Optional<PracticeTask> find(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  public List<PracticeTask> all() {
    return List.copyOf(byId.values());
  }

  public List<PracticeTask> ofUnit(String unit) {
    return byId.values().stream().filter(t -> t.unit().equals(unit)).toList();
  }

  public List<Problem> problems() {
    return problems;
  }
}
