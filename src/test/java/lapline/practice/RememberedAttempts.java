package lapline.practice;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Stream;
import lapline.trade.measure.Verdict;

/** Attempts kept in memory, for tests of the rules. */
public final class RememberedAttempts implements AttemptRecords {
  private final Map<UUID, Attempt> attempts = new LinkedHashMap<>();
  private final Map<UUID, Map<String, KeptReading>> readings = new LinkedHashMap<>();
  private final Map<UUID, String> submitKeys = new LinkedHashMap<>();
  private final Map<UUID, PracticeTask> tasks = new LinkedHashMap<>();
  private final Map<UUID, PanelScore> scores = new LinkedHashMap<>();

  @Override
  public void add(Attempt draft) {
    if (openDraft(draft.person(), draft.task()).isPresent()) {
      throw new OpenDraftException();
    }
    attempts.put(draft.id(), draft);
    readings.put(draft.id(), new LinkedHashMap<>());
  }

  @Override
  public Optional<Attempt> attempt(UUID id) {
    return Optional.ofNullable(attempts.get(id));
  }

  @Override
  public Optional<Attempt> attemptToChange(UUID id) {
    return attempt(id);
  }

  @Override
  public Optional<Attempt> openDraft(UUID person, String task) {
    return first(a -> a.isDraft() && a.belongsTo(person) && a.task().equals(task));
  }

  @Override
  public Optional<Attempt> bySheetCode(String code) {
    return first(a -> a.sheetCode().equals(code));
  }

  @Override
  public Optional<Attempt> bySubmitKey(UUID person, String submitKey) {
    return first(a -> a.belongsTo(person) && submitKey.equals(submitKeys.get(a.id())));
  }

  private Optional<Attempt> first(Predicate<Attempt> wanted) {
    return attempts.values().stream().filter(wanted).findFirst();
  }

  @Override
  public List<Attempt> page(AttemptQuery q) {
    return matching(q)
        .sorted(Comparator.comparing(Attempt::started).reversed())
        .skip(q.first())
        .limit(q.size())
        .toList();
  }

  @Override
  public int count(AttemptQuery q) {
    return (int) matching(q).count();
  }

  private Stream<Attempt> matching(AttemptQuery q) {
    return attempts.values().stream()
        .filter(a -> a.workshop().equals(q.workshop()))
        .filter(a -> q.person() == null || a.belongsTo(q.person()))
        .filter(a -> q.task() == null || a.task().equals(q.task()))
        .filter(a -> q.skill() == null || a.skill().equals(q.skill()))
        .filter(a -> q.states().isEmpty() || q.states().contains(a.state()))
        .filter(a -> q.until() == null || !a.started().isAfter(q.until()));
  }

  @Override
  public void changeChoices(Attempt attempt) {
    attempts.put(attempt.id(), attempt);
  }

  @Override
  public void draftsFollow(UUID gunCard, UUID correctedCard) {
    attempts.replaceAll(
        (id, a) ->
            a.isDraft() && gunCard.equals(a.gunCard())
                ? a.withChoices(correctedCard, a.changedWhat())
                : a);
  }

  @Override
  public List<KeptReading> readings(UUID attempt) {
    return new ArrayList<>(readings.get(attempt).values());
  }

  @Override
  public void keep(UUID attempt, long revision, Instant at, Map<String, String> typed) {
    typed.forEach(
        (cell, text) -> readings.get(attempt).put(cell, new KeptReading(cell, text, at, revision)));
    change(attempt, attempts.get(attempt).state(), revision, attempts.get(attempt).outcome());
  }

  private void change(UUID id, Attempt.State state, long revision, Attempt.Outcome outcome) {
    change(id, state, revision, outcome, attempts.get(id).again());
  }

  private void change(
      UUID id, Attempt.State state, long revision, Attempt.Outcome outcome, Again again) {
    Attempt a = attempts.get(id);
    attempts.put(
        id,
        new Attempt(
            a.id(),
            a.workshop(),
            a.person(),
            a.task(),
            a.taskVersion(),
            a.unit(),
            a.skill(),
            a.sheetCode(),
            a.changedWhat(),
            a.gunCard(),
            a.units(),
            state,
            revision,
            a.started(),
            outcome,
            again));
  }

  @Override
  public void keepJudgement(
      Attempt scored, String submitKey, PracticeTask asJudged, PanelScore score) {
    attempts.put(scored.id(), scored);
    submitKeys.put(scored.id(), submitKey);
    tasks.put(scored.id(), asJudged);
    scores.put(scored.id(), score);
  }

  @Override
  public void reopen(UUID attempt, Again again) {
    submitKeys.remove(attempt);
    tasks.remove(attempt);
    scores.remove(attempt);
    change(attempt, Attempt.State.DRAFT, attempts.get(attempt).revision(), null, again);
  }

  @Override
  public void changeState(UUID attempt, Attempt.State state) {
    change(attempt, state, attempts.get(attempt).revision(), attempts.get(attempt).outcome());
  }

  @Override
  public List<Shortfall> shortfalls(Collection<UUID> some) {
    return some.stream()
        .filter(scores::containsKey)
        .flatMap(
            id ->
                scores.get(id).results().stream()
                    .filter(r -> !r.judged() || r.verdict() != Verdict.MET)
                    .map(r -> shortfall(id, r)))
        .toList();
  }

  private Shortfall shortfall(UUID id, PanelScore.Result result) {
    return new Shortfall(
        id,
        attempts.get(id).task(),
        result.criterion().id(),
        result.judged() ? result.verdict() : null);
  }

  @Override
  public Optional<PracticeTask> taskAsJudged(UUID attempt) {
    return Optional.ofNullable(tasks.get(attempt));
  }

  @Override
  public Optional<PanelScore> score(UUID attempt) {
    return Optional.ofNullable(scores.get(attempt));
  }
}
