package lapline.signoff;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import lapline.judgement.progress.LearnerBelief;
import lapline.judgement.progress.PanelRule;
import lapline.judgement.progress.PanelsNeeded;
import lapline.people.LearnerAdvanced;
import lapline.signoff.ForecastRecords.Done;

/**
 * Keeps after each panel how many more are foretold until the skill's rule is met, and looks what
 * came of the forecasts before, in the transaction that keeps the panel's score.
 */
@ApplicationScoped
public class KeepForecasts {
  /** As many other learners are looked at, those who came on most lately. */
  private static final int OTHERS = 60;

  private Skills skills;
  private GatherEvidence gather;
  private ForecastRecords records;
  private Clock clock;

  protected KeepForecasts() {}

  @Inject
  public KeepForecasts(Skills skills, GatherEvidence gather, ForecastRecords records, Clock clock) {
    this.skills = skills;
    this.gather = gather;
    this.records = records;
    this.clock = clock;
  }

  @Transactional
  public void advanced(@Observes LearnerAdvanced news) {
    for (Skill skill : skills.ofUnit(news.unit())) {
      List<Done> panels = panels(news.workshop(), skill, Set.of(news.person()));
      if (!panels.isEmpty()) {
        keep(news, skill, panels);
      }
    }
  }

  private void keep(LearnerAdvanced news, Skill skill, List<Done> panels) {
    Instant now = clock.instant();
    Evidence evidence = gather.of(news.person(), news.workshop(), skill, now);
    boolean met = evidence.counting() >= skill.rule().accepted();
    records.open(news.person(), skill.id()).forEach(f -> look(f, skill, panels.size(), met));
    if (!met) {
      Done last = panels.get(panels.size() - 1);
      needed(news, skill, panels, evidence.panels().size())
          .map(n -> forecast(news, skill, last.attempt(), panels.size(), now, n))
          .ifPresent(records::keep);
    }
  }

  /** What came of a forecast; one under another rule, or of a panel judged anew, is none. */
  private void look(SkillForecast open, Skill skill, int tried, boolean met) {
    boolean later = met ? open.tried() < tried : open.tried() <= tried;
    boolean stands = later && open.ruleVersion().equals(skill.rule().version());
    if (!stands) {
      records.remove(open);
    } else if (met) {
      open.met(tried).ifPresentOrElse(records::keep, () -> records.remove(open));
    } else {
      records.keep(open.notYet(tried));
    }
  }

  private Optional<PanelsNeeded> needed(
      LearnerAdvanced news, Skill skill, List<Done> panels, int young) {
    Skill.Rule rule = skill.rule();
    if (rule.ofLast() > PanelRule.MOST || panels.size() < PanelsNeeded.FEWEST) {
      return Optional.empty();
    }
    LearnerBelief before = LearnerBelief.usual().among(others(news, skill));
    return PanelsNeeded.of(
        before, new PanelRule(rule.accepted(), rule.ofLast()), counting(panels), young);
  }

  private List<List<Boolean>> others(LearnerAdvanced news, Skill skill) {
    List<UUID> people =
        records.learners(news.workshop(), skill.id(), OTHERS + 1).stream()
            .filter(other -> !other.equals(news.person()))
            .toList();
    return List.copyOf(
        panels(news.workshop(), skill, people).stream()
            .collect(groupingBy(Done::person, mapping(Done::counts, toList())))
            .values());
  }

  private List<Done> panels(UUID workshop, Skill skill, Collection<UUID> people) {
    return records.panels(workshop, skill.id(), people).stream()
        .filter(done -> skill.rule().covers(done.task()))
        .toList();
  }

  private static List<Boolean> counting(List<Done> panels) {
    return panels.stream().map(Done::counts).toList();
  }

  private static SkillForecast forecast(
      LearnerAdvanced news,
      Skill skill,
      UUID attempt,
      int tried,
      Instant now,
      PanelsNeeded needed) {
    return new SkillForecast(
        attempt,
        news.workshop(),
        news.person(),
        skill.id(),
        skill.rule().version(),
        tried,
        now,
        needed,
        SkillForecast.State.OPEN,
        null);
  }
}
