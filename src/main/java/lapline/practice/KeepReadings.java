package lapline.practice;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.trade.measure.UnitSystem;

/**
 * Keeps what is typed about a panel, as typed, while it is a draft. Two windows on one draft merge
 * reading by reading; where both wrote at the same place, neither is lost: the person is told.
 */
@ApplicationScoped
public class KeepReadings {
  private AttemptRecords records;
  private ReadPanel read;
  private Clock clock;

  protected KeepReadings() {}

  @Inject
  public KeepReadings(AttemptRecords records, ReadPanel read, Clock clock) {
    this.records = records;
    this.read = read;
    this.clock = clock;
  }

  /**
   * @param since the attempt's revision that the person last saw; what others changed after it
   *     comes back with the answer
   */
  @Transactional
  public KeptReadings run(Person by, UUID id, long since, List<TypedReading> typed) {
    Attempt attempt = records.attemptToChange(id).orElseThrow(NotFoundException::new);
    attempt.mustBeWrittenBy(by);
    PracticeTask task = read.task(attempt);
    Sorting sorting = new Sorting(byCell(records.readings(id)), read.cellsOf(task));
    typed.forEach(sorting::take);
    long revision = attempt.revision();
    if (!sorting.news.isEmpty()) {
      revision++;
      records.keep(id, revision, clock.instant(), sorting.news);
    }
    return answer(attempt.units(), task, since, revision, typed, sorting);
  }

  private KeptReadings answer(
      UnitSystem units,
      PracticeTask task,
      long since,
      long revision,
      List<TypedReading> typed,
      Sorting sorting) {
    List<KeptReading> now = sorting.afterwards(clock.instant(), revision);
    PanelReading reading = read.run(units, task, now);
    Map<String, String> understood = read.understood(reading.entry(), units);
    List<FieldProblem> before =
        read.run(units, task, List.copyOf(sorting.before.values())).questions();
    Set<String> otherwise = askedOtherwise(before, reading.questions());
    Set<String> sent = typed.stream().map(TypedReading::cell).collect(Collectors.toSet());
    Set<String> clashing =
        sorting.conflicts.stream().map(KeptReadings.Conflict::cell).collect(Collectors.toSet());
    List<KeptReadings.KeptCell> cells =
        now.stream()
            .filter(
                r ->
                    sent.contains(r.cell()) || r.revision() > since || otherwise.contains(r.cell()))
            .filter(r -> !clashing.contains(r.cell()))
            .map(r -> cell(r, understood))
            .toList();
    return new KeptReadings(
        clock.instant(),
        revision,
        cells,
        reading.problems(),
        reading.questions(),
        List.copyOf(sorting.conflicts),
        List.copyOf(sorting.refused));
  }

  /** Cells about which something is asked now and was not before, or the other way round. */
  private static Set<String> askedOtherwise(List<FieldProblem> before, List<FieldProblem> now) {
    return Stream.concat(
            before.stream().filter(q -> !now.contains(q)),
            now.stream().filter(q -> !before.contains(q)))
        .map(FieldProblem::cell)
        .collect(Collectors.toSet());
  }

  private static KeptReadings.KeptCell cell(KeptReading r, Map<String, String> understood) {
    return new KeptReadings.KeptCell(
        r.cell(), r.typed(), r.revision(), understood.getOrDefault(r.cell(), ""));
  }

  private static Map<String, KeptReading> byCell(List<KeptReading> readings) {
    return readings.stream().collect(Collectors.toMap(KeptReading::cell, Function.identity()));
  }

  /** Sorts what was typed into what to keep, what clashes and what cannot be kept. */
  private static final class Sorting {
    private final Map<String, KeptReading> before;
    private final Set<String> room;
    private final Map<String, String> news = new LinkedHashMap<>();
    private final List<KeptReadings.Conflict> conflicts = new ArrayList<>();
    private final List<FieldProblem> refused = new ArrayList<>();

    Sorting(Map<String, KeptReading> before, Set<String> room) {
      this.before = before;
      this.room = room;
    }

    void take(TypedReading typed) {
      KeptReading kept = before.get(typed.cell());
      if (!room.contains(typed.cell())) {
        refused.add(new FieldProblem(typed.cell(), "entry.no-such-place", List.of(typed.cell())));
      } else if (typed.isTooLong()) {
        refused.add(
            new FieldProblem(typed.cell(), "entry.too-long", List.of("" + TypedReading.LONGEST)));
      } else if (typed.clashesWith(kept)) {
        conflicts.add(
            new KeptReadings.Conflict(typed.cell(), typed.typed(), kept.typed(), kept.revision()));
      } else if (typed.isNews(kept)) {
        news.put(typed.cell(), typed.typed());
      }
    }

    List<KeptReading> afterwards(java.time.Instant at, long revision) {
      Map<String, KeptReading> after = new LinkedHashMap<>(before);
      news.forEach((cell, text) -> after.put(cell, new KeptReading(cell, text, at, revision)));
      return List.copyOf(after.values());
    }
  }
}
