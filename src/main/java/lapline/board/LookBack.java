package lapline.board;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import lapline.board.Recurring.Panel;
import lapline.people.Person;
import lapline.practice.Attempt;
import lapline.practice.Attempt.State;
import lapline.practice.AttemptQuery;
import lapline.practice.FindAttempts;
import lapline.practice.PanelScore.Finding;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Estimate;

/** What keeps coming back on a person's latest panels, task by task. */
@ApplicationScoped
public class LookBack {
  /** Among so many of a task's latest panels a cause has to have come back. */
  static final int LATEST = 6;

  /** So often at the least. */
  static final int TIMES = 2;

  /** So many of a task's latest panels are drawn, and say whether it shrinks. */
  static final int DRAWN = 12;

  /** Found on none of so many of the latest panels it is over. */
  static final int OVER = 3;

  /** What happened so long ago keeps coming back no more. */
  private static final Duration RECENT = Duration.ofDays(180);

  /** A person's latest panels, of all tasks. */
  private static final int LOOKED_AT = 60;

  /** As many as one can keep in mind. */
  private static final int MOST = 3;

  private FindAttempts find;
  private BoardRecords records;
  private Clock clock;

  protected LookBack() {}

  @Inject
  public LookBack(FindAttempts find, BoardRecords records, Clock clock) {
    this.find = find;
    this.records = records;
    this.clock = clock;
  }

  /** What came back most, of the task done last first; for themself, or for who teaches them. */
  @Transactional
  public List<Recurring> of(Person by, UUID learner) {
    Instant since = clock.instant().minus(RECENT);
    List<Attempt> panels =
        find
            .page(
                by,
                AttemptQuery.of(by.workshop(), 0, LOOKED_AT)
                    .by(learner)
                    .in(State.SCORED, State.RETURNED, State.ACCEPTED))
            .stream()
            .filter(a -> a.outcome().scored().isAfter(since))
            .toList();
    Map<UUID, List<FoundSize>> found =
        records.sizes(panels.stream().map(Attempt::id).toList()).stream()
            .filter(f -> !isDoubt(f.finding()))
            .collect(groupingBy(FoundSize::attempt));
    return panels.stream()
        .collect(groupingBy(Attempt::task, LinkedHashMap::new, toList()))
        .values()
        .stream()
        .flatMap(ofTask -> recurring(ofTask, found))
        .limit(MOST)
        .toList();
  }

  /**
   * Whether the cause of a scored panel is one that comes back: found on it and on others of the
   * same task just before it. One query.
   */
  @Transactional
  public Optional<CameBack> on(Person by, Attempt panel, String finding) {
    panel.mustBeSeenBy(by);
    if (isDoubt(finding) || panel.scored().isEmpty()) {
      return Optional.empty();
    }
    Instant since = panel.outcome().scored().minus(RECENT);
    List<Boolean> found = records.foundOn(panel, finding, since, LATEST);
    int times = Collections.frequency(found, true);
    return times < TIMES ? Optional.empty() : Optional.of(new CameBack(times, found.size()));
  }

  private static boolean isDoubt(String finding) {
    return finding.endsWith(Finding.DOUBT) || finding.endsWith(Finding.BLIND);
  }

  /**
   * @param panels of one task, newest first
   */
  static Stream<Recurring> recurring(List<Attempt> panels, Map<UUID, List<FoundSize>> found) {
    List<Attempt> latest = panels.subList(0, Math.min(LATEST, panels.size()));
    Map<String, Integer> times = new LinkedHashMap<>();
    for (Attempt a : latest) {
      for (FoundSize f : found.getOrDefault(a.id(), List.of())) {
        times.merge(f.finding(), 1, Integer::sum);
      }
    }
    List<Attempt> drawn = new ArrayList<>(panels.subList(0, Math.min(DRAWN, panels.size())));
    Collections.reverse(drawn);
    return times.entrySet().stream()
        .filter(e -> e.getValue() >= TIMES && isAmong(latest, e.getKey(), found))
        // of as many the one found last stands first
        .sorted(Comparator.comparing(e -> -e.getValue()))
        .map(e -> recurring(e.getKey(), e.getValue(), latest.size(), drawn, found));
  }

  private static boolean isAmong(
      List<Attempt> latest, String finding, Map<UUID, List<FoundSize>> found) {
    return latest.stream()
        .limit(OVER)
        .anyMatch(a -> find(found.getOrDefault(a.id(), List.of()), finding) != null);
  }

  private static Recurring recurring(
      String finding,
      int times,
      int looked,
      List<Attempt> drawn,
      Map<UUID, List<FoundSize>> found) {
    Dimension dimension = null;
    List<Panel> panels = new ArrayList<>();
    for (Attempt a : drawn) {
      FoundSize size = find(found.getOrDefault(a.id(), List.of()), finding);
      Estimate measured = size == null ? null : size.estimate();
      dimension = measured == null ? dimension : size.dimension();
      panels.add(new Panel(a.outcome().scored(), size != null, measured));
    }
    return new Recurring(drawn.get(0).task(), finding, panels, looked, times, dimension);
  }

  private static FoundSize find(List<FoundSize> all, String finding) {
    return all.stream().filter(f -> f.finding().equals(finding)).findFirst().orElse(null);
  }
}
