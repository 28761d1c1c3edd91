package lapline.practice.pages;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.joining;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import lapline.pages.Messages;
import lapline.practice.AttemptRecords;
import lapline.practice.Criterion;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTasks;
import lapline.practice.Shortfall;
import lapline.trade.measure.Verdict;

/** Says in a few words what keeps a panel from being accepted by its numbers. */
@ApplicationScoped
public class NotYetWords {
  private AttemptRecords records;
  private PracticeTasks tasks;
  private Messages messages;

  protected NotYetWords() {}

  @Inject
  public NotYetWords(AttemptRecords records, PracticeTasks tasks, Messages messages) {
    this.records = records;
    this.tasks = tasks;
    this.messages = messages;
  }

  /** One thing that is missing: missed weighs more than in doubt, and that more than unread. */
  private record Gap(String label, Verdict verdict) {
    int order() {
      return verdict == null ? 2 : verdict == Verdict.MISSED ? 0 : 1;
    }
  }

  /** What the numbers say about some panels: accepted, or not yet and why. */
  public final class Said {
    private final Map<UUID, String> reasons = new HashMap<>();

    private Said(Collection<UUID> attempts) {
      records.shortfalls(attempts).stream()
          .collect(groupingBy(Shortfall::attempt))
          .forEach((attempt, all) -> words(all).ifPresent(w -> reasons.put(attempt, w)));
    }

    public String of(UUID attempt, boolean accepted) {
      return accepted
          ? messages.get("practice-result.by-numbers.accepted")
          : reasons.getOrDefault(attempt, messages.get("practice-result.by-numbers.not-yet"));
    }
  }

  /** Of all these panels at once. */
  public Said of(Collection<UUID> attempts) {
    return new Said(attempts);
  }

  private Optional<String> words(List<Shortfall> all) {
    List<Gap> gaps =
        all.stream()
            .flatMap(s -> gap(s).stream())
            .sorted(Comparator.comparing(Gap::order))
            .toList();
    if (gaps.isEmpty()) {
      return Optional.empty();
    }
    String first = gaps.stream().limit(2).map(this::words).collect(joining(", "));
    return Optional.of(
        messages.say("practice-result.not-yet", first, Math.max(0, gaps.size() - 2)));
  }

  private String words(Gap gap) {
    String how = gap.verdict() == null ? "UNREAD" : gap.verdict().name();
    return messages.say("practice-result.not-yet." + how, gap.label());
  }

  /** Only a critical criterion of the task keeps a panel from being accepted. */
  private Optional<Gap> gap(Shortfall s) {
    return tasks.find(s.task()).map(PracticeTask::criteria).stream()
        .flatMap(List::stream)
        .filter(c -> c.id().equals(s.criterion()) && c.critical())
        .map(Criterion::label)
        .map(label -> new Gap(label, s.verdict()))
        .findFirst();
  }
}
