package lapline.exams;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** Papers kept in memory, for tests of the rules. */
public final class RememberedPapers implements PaperRecords {
  private final Map<UUID, Sitting> sittings = new LinkedHashMap<>();
  private final Map<UUID, Paper> papers = new LinkedHashMap<>();
  private final Map<UUID, Map<String, String>> answers = new LinkedHashMap<>();
  private final Map<UUID, PaperResult> results = new LinkedHashMap<>();
  private final Map<UUID, Set<String>> without = new LinkedHashMap<>();
  private final List<MarkedAnew> anew = new ArrayList<>();

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

  @Override
  public Set<String> without(UUID id) {
    return without.getOrDefault(id, Set.of());
  }

  @Override
  public List<MarkedAnew> markedAnew(UUID id) {
    return anew.stream()
        .filter(a -> a.paper().equals(id))
        .sorted(Comparator.comparing(MarkedAnew::at).reversed())
        .toList();
  }

  @Override
  public List<PaperHandedIn> counting(UUID workshop, String unit, String item, String version) {
    return handedIn(workshop, unit).stream()
        .filter(p -> !p.without().contains(item))
        .filter(
            p ->
                p.result().marks().stream()
                    .anyMatch(m -> m.item().equals(item) && m.version().equals(version)))
        .toList();
  }

  @Override
  public List<PaperHandedIn> leavingOut(UUID workshop, String unit, String item) {
    return handedIn(workshop, unit).stream().filter(p -> p.without().contains(item)).toList();
  }

  private List<PaperHandedIn> handedIn(UUID workshop, String unit) {
    return sittings.values().stream()
        .filter(s -> !s.isOpen() && s.workshop().equals(workshop) && s.unit().equals(unit))
        .map(s -> new PaperHandedIn(s, results.get(s.id()), without(s.id())))
        .toList();
  }

  @Override
  public void keep(MarkedAnew one) {
    anew.add(one);
    without.put(one.paper(), one.after().without());
    Sitting s = sittings.get(one.paper());
    Sitting.Outcome now =
        new Sitting.Outcome(s.outcome().handedIn(), one.after().score(), one.after().passed());
    sittings.put(s.id(), new Sitting(s.id(), s.workshop(), s.person(), s.unit(), s.drawn(), now));
  }
}
