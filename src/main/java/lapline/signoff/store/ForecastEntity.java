package lapline.signoff.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.OptionalInt;
import java.util.UUID;
import lapline.judgement.progress.PanelsNeeded;
import lapline.signoff.SkillForecast;

/** The row of what was foretold after one panel. */
@Entity
@Table(name = "skill_forecast")
class ForecastEntity {
  @Id
  @Column(name = "attempt_id")
  UUID attempt;

  @Column(name = "workshop_id")
  UUID workshop;

  @Column(name = "person_id")
  UUID person;

  @Column(name = "skill_id")
  String skill;

  @Column(name = "rule_version")
  String ruleVersion;

  int tried;

  @Column(name = "made_at")
  Instant made;

  @Column(name = "middle_panels")
  Integer middle;

  @Column(name = "least_panels")
  int least;

  @Column(name = "most_panels")
  Integer most;

  @Column(name = "held_probability")
  double held;

  @Enumerated(EnumType.STRING)
  SkillForecast.State state;

  @Column(name = "needed_panels")
  Integer needed;

  static ForecastEntity of(SkillForecast f) {
    ForecastEntity row = new ForecastEntity();
    row.attempt = f.attempt();
    row.workshop = f.workshop();
    row.person = f.person();
    row.skill = f.skill();
    row.ruleVersion = f.ruleVersion();
    row.tried = f.tried();
    row.made = f.made();
    row.middle = f.middle();
    row.least = f.panels().least();
    row.most = f.most();
    row.held = f.panels().held();
    row.state = f.state();
    row.needed = f.needed();
    return row;
  }

  SkillForecast asForecast() {
    return new SkillForecast(
        attempt,
        workshop,
        person,
        skill,
        ruleVersion,
        tried,
        made,
        new PanelsNeeded(number(middle), least, number(most), held),
        state,
        needed);
  }

  private static OptionalInt number(Integer kept) {
    return kept == null ? OptionalInt.empty() : OptionalInt.of(kept);
  }
}
