package lapline.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lapline.content.ContentReading;
import lapline.exchange.ProblemDetail.FieldError;
import lapline.pages.Messages;
import lapline.people.SignedIn;
import lapline.practice.FieldProblem;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTasks;
import lapline.practice.ScoreReadings;
import lapline.practice.pages.CriterionWriter;
import lapline.trade.measure.UnitSystem;

/** Scores readings against a task without keeping anything. */
@RequestScoped
@Path("/scores")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class ScoresResource {
  @Inject private SignedIn signedIn;
  @Inject private ScoreReadings score;
  @Inject private Messages words;
  @Inject private PracticeTasks tasks;

  /**
   * @param task id of a task, or a task in the shape of a task file
   * @param units {@code metric} or {@code us}: what numbers without a unit are in; the person's own
   *     where it is left out
   * @param readings reading by cell key, as a person would type it
   */
  public record Question(JsonNode task, String units, Map<String, String> readings) {}

  @POST
  public ScoreText score(Question question) {
    if (question == null || question.readings() == null) {
      throw new RefusedException(400, "exchange.wrong-member", "readings");
    }
    UnitSystem units = units(question.units());
    PracticeTask task = task(question.task());
    ScoreReadings.Answer answer = score.run(task, question.readings(), units);
    if (!answer.problems().isEmpty()) {
      throw new InvalidException("exchange.readings-wrong", inWords(answer.problems()));
    }
    return ScoreText.of(task, answer.score(), CriterionWriter.of(words, units, tasks));
  }

  private UnitSystem units(String named) {
    if (named == null) {
      return signedIn.person().units();
    }
    return switch (named.toLowerCase(Locale.ROOT)) {
      case "metric" -> UnitSystem.METRIC;
      case "us" -> UnitSystem.US;
      default -> throw new RefusedException(400, "exchange.units", named);
    };
  }

  private PracticeTask task(JsonNode given) {
    if (given == null || given.isNull()) {
      throw new RefusedException(400, "exchange.wrong-member", "task");
    }
    if (given.isTextual()) {
      return score
          .task(given.asText())
          .orElseThrow(() -> new RefusedException(400, "exchange.no-task", given.asText()));
    }
    ContentReading<PracticeTask> reading = score.inline(given.toPrettyString());
    return reading
        .usable()
        .orElseThrow(
            () ->
                new InvalidException(
                    "exchange.task-wrong",
                    reading.problems().stream()
                        .map(
                            p ->
                                new FieldError(
                                    "task:" + p.line(), p.whatIsWrong() + "; " + p.whatToWrite()))
                        .toList()));
  }

  private List<FieldError> inWords(List<FieldProblem> problems) {
    return problems.stream()
        .map(p -> new FieldError("readings." + p.cell(), words.say(p.key(), p.args().toArray())))
        .toList();
  }
}
