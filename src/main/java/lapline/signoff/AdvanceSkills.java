package lapline.signoff;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import lapline.people.LearnerAdvanced;

/**
 * Brings up to date, whenever a learner advanced, where they stand with each skill of the unit and
 * what is foretold of it, in the transaction that keeps what they did. Their evidence is gathered
 * once for both.
 */
@ApplicationScoped
public class AdvanceSkills {
  private Skills skills;
  private KeepStandings standings;
  private KeepForecasts forecasts;

  protected AdvanceSkills() {}

  @Inject
  public AdvanceSkills(Skills skills, KeepStandings standings, KeepForecasts forecasts) {
    this.skills = skills;
    this.standings = standings;
    this.forecasts = forecasts;
  }

  @Transactional
  public void advanced(@Observes LearnerAdvanced news) {
    for (Skill skill : skills.ofUnit(news.unit())) {
      forecasts.keep(standings.advance(news.person(), news.workshop(), skill), news.workshop());
    }
  }
}
