package lapline.board;

import static java.util.stream.Collectors.groupingBy;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import lapline.board.NeedRecords.Returned;
import lapline.board.NeedRecords.Stuck;
import lapline.grading.Grading;
import lapline.grading.GradingRecords;
import lapline.people.LearnerAdvanced;

/**
 * Keeps up who is stuck and whose panel was sent back, whenever a panel is scored or graded, so
 * that nobody searches everybody's panels for it.
 */
@ApplicationScoped
public class KeepNeeds {
  /** So many panels in a row with the same first finding show that somebody is stuck. */
  public static final int IN_A_ROW = 3;

  /** As many of a unit's latest panels as are looked at. */
  private static final int LOOKED_AT = 40;

  private NeedRecords records;
  private GradingRecords gradings;

  protected KeepNeeds() {}

  @Inject
  public KeepNeeds(NeedRecords records, GradingRecords gradings) {
    this.records = records;
    this.gradings = gradings;
  }

  @Transactional
  public void advanced(@Observes LearnerAdvanced news) {
    Collection<List<LastPanel>> byTask =
        records.lastPanels(news.person(), news.unit(), LOOKED_AT).stream()
            .collect(groupingBy(LastPanel::task))
            .values();
    records.keep(
        news,
        byTask.stream().map(KeepNeeds::stuck).flatMap(Optional::stream).toList(),
        byTask.stream().map(this::returned).flatMap(Optional::stream).toList());
  }

  /** Whether the last panels of a task, latest first, were all missed in the same way. */
  static Optional<Stuck> stuck(List<LastPanel> panels) {
    LastPanel last = panels.get(0);
    if (last.finding() == null) {
      return Optional.empty();
    }
    int alike = (int) panels.stream().takeWhile(p -> p.isMissedBy(last.finding())).count();
    return alike < IN_A_ROW
        ? Optional.empty()
        : Optional.of(new Stuck(last.task(), last.finding(), alike, last.scored()));
  }

  /** The last panel of a task, where it was sent back. */
  private Optional<Returned> returned(List<LastPanel> panels) {
    LastPanel last = panels.get(0);
    if (!last.returned()) {
      return Optional.empty();
    }
    Optional<Grading> grading = gradings.latest(last.attempt());
    return grading.map(
        g -> new Returned(last.attempt(), last.task(), last.begun(), g.at(), g.remark()));
  }
}
