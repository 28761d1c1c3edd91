package lapline.exchange;

import jakarta.enterprise.context.RequestScoped;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.function.Supplier;
import lapline.exchange.ProblemDetail.FieldError;
import lapline.exchange.ScoreText.Place;
import lapline.trade.measure.MeasureException;
import lapline.trade.stroke.FilmAt;
import lapline.trade.stroke.PassPlan;
import lapline.trade.stroke.ReadingPlan;
import lapline.trade.stroke.StrokeReading;
import lapline.trade.stroke.StrokeRecord;

/** What film says about a stroke, and where to read film; keeps nothing. */
@RequestScoped
@Path("/")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class StrokesResource {

  /**
   * @param count of readings
   * @param uncertainty of one reading as a share of the film
   */
  public record PlanQuestion(
      StrokeQuestion.Panel panel,
      StrokeQuestion.Fan fan,
      StrokeQuestion.Overlap overlap,
      List<StrokeQuestion.Coat> coats,
      int count,
      double uncertainty) {
    PassPlan passes() {
      return new StrokeQuestion(panel, fan, overlap, coats, null, null).passes().asMeant();
    }
  }

  /** Where to read, from below upwards. */
  public record Places(List<Place> places) {}

  @POST
  @Path("stroke-readings")
  public StrokeText read(StrokeQuestion question) {
    return answered(
        question,
        () -> {
          StrokeRecord record = question.record();
          List<FilmAt> film = question.film();
          return StrokeText.of(StrokeReading.of(record, film), film);
        });
  }

  @POST
  @Path("reading-plans")
  public Places plan(PlanQuestion question) {
    return answered(
        question,
        () ->
            new Places(
                ReadingPlan.of(question.passes(), question.count(), question.uncertainty()).stream()
                    .map(s -> new Place(s.x(), s.y()))
                    .toList()));
  }

  /** A number out of its range is answered with its name, the number and the range. */
  private static <T> T answered(Object question, Supplier<T> answer) {
    if (question == null) {
      throw new RefusedException(400, "exchange.empty-body");
    }
    try {
      return answer.get();
    } catch (MeasureException outOfRange) {
      throw new InvalidException(
          "exchange.numbers-wrong",
          List.of(new FieldError(outOfRange.argument(), outOfRange.getMessage())));
    }
  }
}
