package lapline.board.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.Map;
import java.util.UUID;
import lapline.pages.Messages;
import lapline.people.Person;
import lapline.people.SignedIn;
import lapline.signoff.Evidence;
import lapline.signoff.ForecastRecord;
import lapline.signoff.SeeForecasts;
import lapline.signoff.SkillForecast;

/**
 * How many more panels are foretold, in words: {@code #{forecastWords.needed(person, skill)}}. Of
 * one person on one page.
 */
@Named
@RequestScoped
public class ForecastWords {
  @Inject private SignedIn signedIn;
  @Inject private SeeForecasts see;
  @Inject private Messages messages;
  private UUID whose;
  private Map<String, SkillForecast> inForce;
  private ForecastRecord record;

  /** What is foretold of somebody's skill; empty where nothing is. */
  public String needed(UUID person, String skill) {
    SkillForecast forecast = of(person).get(skill);
    return forecast == null ? "" : written(forecast);
  }

  /** The same of the reader, who is told too when there is too little to foretell anything. */
  public String mine(Evidence evidence) {
    boolean enough = evidence.counting() >= evidence.skill().rule().accepted();
    String needed = enough ? "" : needed(signedIn.person().id(), evidence.skill().id());
    boolean early = !enough && evidence.tried() > 0 && evidence.tried() < SeeForecasts.FEWEST;
    return early
        ? messages.say("forecast.early", evidence.tried())
        : needed.isEmpty() ? "" : needed + " " + fewest(evidence);
  }

  /** Why it may be more than what is missing from those that count. */
  private String fewest(Evidence evidence) {
    var rule = evidence.skill().rule();
    return messages.say("forecast.fewest", rule.ofLast(), rule.accepted(), evidence.fewestMore());
  }

  /** Whether anything is foretold, so that it has to be said what it rests on. */
  public boolean isAny(UUID person) {
    return !of(person).isEmpty();
  }

  private Map<String, SkillForecast> of(UUID person) {
    Person by = signedIn.person();
    if (!person.equals(whose)) {
      inForce = see.of(by, person);
      whose = person;
    }
    return inForce;
  }

  private String written(SkillForecast forecast) {
    if (forecast.isFar()) {
      return messages.say("forecast.far", forecast.least());
    }
    String key = forecast.least() == forecast.most() ? ".one-number" : "";
    return messages.say(
        "forecast.panels" + key, forecast.middle(), forecast.least(), forecast.most());
  }

  /** How the workshop's forecasts have turned out. */
  public String getRecord() {
    ForecastRecord r = record();
    return r.due() == 0
        ? messages.get("forecast.record.none")
        : messages.say(
            "forecast.record", r.due(), r.held(), r.share(), r.promisedShare(), r.people());
  }

  /** How they are counted. */
  public String getCounted() {
    return messages.say("forecast.record.counted", record().open());
  }

  private ForecastRecord record() {
    if (record == null) {
      record = see.record(signedIn.person());
    }
    return record;
  }
}
