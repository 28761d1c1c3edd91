package lapline.exams;

import java.time.Instant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** Papers kept in memory, for tests of the rules. */
public final class RememberedPapers implements PaperRecords {
  private final Map<UUID, Sitting> sittings = new LinkedHashMap<>();
  private final Map<UUID, Paper> papers = new LinkedHashMap<>();
  private final Map<UUID, Map<String, String>> answers = new LinkedHashMap<>();
  private final Map<UUID, PaperResult> results = new LinkedHashMap<>();

  @Override
  public void add(Sitting sitting, Paper paper) {
    if (open(sitting.person(), sitting.unit()).isPresent()) {
      throw new OpenPaperException();
    }
    sittings.put(sitting.id(), sitting);
    papers.put(sitting.id(), paper);
    answers.put(sitting.id(), new LinkedHashMap<>());
  }

  @Override
  public Optional<Sitting> sitting(UUID id) {
    return Optional.ofNullable(sittings.get(id));
  }

  @Override
  public Optional<Sitting> sittingToChange(UUID id) {
    return sitting(id);
  }

  @Override
  public Optional<Sitting> open(UUID person, String unit) {
    return sittings.values().stream()
        .filter(s -> s.isOpen() && s.person().equals(person) && s.unit().equals(unit))
        .findFirst();
  }

  @Override
  public Optional<Sitting> lastHandedIn(UUID person, String unit) {
    return handedIn(person, unit, 1).stream().findFirst();
  }

  @Override
  public List<Sitting> handedIn(UUID person, String unit, int size) {
    return sittings.values().stream()
        .filter(s -> !s.isOpen() && s.person().equals(person) && s.unit().equals(unit))
        .sorted(Comparator.comparing((Sitting s) -> s.outcome().handedIn()).reversed())
        .limit(size)
        .toList();
  }

  @Override
  public Map<String, Sitting> passed(UUID person) {
    Map<String, Sitting> passed = new LinkedHashMap<>();
    sittings.values().stream()
        .filter(s -> !s.isOpen() && s.person().equals(person) && s.outcome().passed())
        .forEach(s -> passed.put(s.unit(), s));
    return passed;
  }

  @Override
  public Optional<Paper> paper(UUID id) {
    return Optional.ofNullable(papers.get(id));
  }

  @Override
  public Map<String, String> answers(UUID id) {
    return Map.copyOf(answers.get(id));
  }

  @Override
  public void keep(UUID id, Map<String, String> typed, Instant at) {
    answers.get(id).putAll(typed);
  }

  @Override
  public void keepResult(Sitting handedIn, PaperResult result) {
    sittings.put(handedIn.id(), handedIn);
    results.put(handedIn.id(), result);
  }

  @Override
  public Optional<PaperResult> result(UUID id) {
    return Optional.ofNullable(results.get(id));
  }
}
