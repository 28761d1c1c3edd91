package lapline.signoff;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import lapline.judgement.progress.LearnerBelief;
import lapline.judgement.progress.PanelRule;
import lapline.judgement.progress.PanelsNeeded;
import lapline.signoff.ForecastRecords.Done;

/**
 * Keeps after each panel how many more are foretold until the skill's rule is met, and looks what
 * came of the forecasts before.
 */
@ApplicationScoped
public class KeepForecasts {
  /** As many other learners are looked at, those who came on most lately. */
  private static final int OTHERS = 60;

  private ForecastRecords records;
  private Clock clock;

  /** Of whom, where, and of which skill something is foretold. */
  private record Learner(UUID person, UUID workshop, Skill skill) {}

  protected KeepForecasts() {}

  @Inject
  public KeepForecasts(ForecastRecords records, Clock clock) {
    this.records = records;
    this.clock = clock;
  }

  /** Keeps what is foretold of a skill, and what came of it, by the evidence as it is now. */
  void keep(Evidence evidence, UUID workshop) {
    Learner learner = new Learner(evidence.person(), workshop, evidence.skill());
    List<Done> panels = panels(learner, Set.of(learner.person()));
    if (!panels.isEmpty()) {
      keep(learner, evidence, panels);
    }
  }

  private void keep(Learner learner, Evidence evidence, List<Done> panels) {
    Skill skill = learner.skill();
    boolean met = evidence.counting() >= skill.rule().accepted();
    records.open(learner.person(), skill.id()).forEach(f -> look(f, skill, panels.size(), met));
    if (!met) {
      Done last = panels.get(panels.size() - 1);
      needed(learner, panels, evidence.panels().size())
          .map(n -> forecast(learner, last.attempt(), panels.size(), n))
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

  private Optional<PanelsNeeded> needed(Learner learner, List<Done> panels, int young) {
    Skill.Rule rule = learner.skill().rule();
    if (rule.ofLast() > PanelRule.MOST || panels.size() < PanelsNeeded.FEWEST) {
      return Optional.empty();
    }
    LearnerBelief before = LearnerBelief.usual().among(others(learner));
    return PanelsNeeded.of(
        before, new PanelRule(rule.accepted(), rule.ofLast()), counting(panels), young);
  }

  private List<List<Boolean>> others(Learner learner) {
    List<UUID> people =
        records.learners(learner.workshop(), learner.skill().id(), OTHERS + 1).stream()
            .filter(other -> !other.equals(learner.person()))
            .toList();
    return List.copyOf(
        panels(learner, people).stream()
            .collect(groupingBy(Done::person, mapping(Done::counts, toList())))
            .values());
  }

  private List<Done> panels(Learner learner, Collection<UUID> people) {
    return records.panels(learner.workshop(), learner.skill().id(), people).stream()
        .filter(done -> learner.skill().rule().covers(done.task()))
        .toList();
  }

  private static List<Boolean> counting(List<Done> panels) {
    return panels.stream().map(Done::counts).toList();
  }

  private SkillForecast forecast(Learner learner, UUID attempt, int tried, PanelsNeeded needed) {
    return new SkillForecast(
        attempt,
        learner.workshop(),
        learner.person(),
        learner.skill().id(),
        learner.skill().rule().version(),
        tried,
        clock.instant(),
        needed,
        SkillForecast.State.OPEN,
        null);
  }
}
