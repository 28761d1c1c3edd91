package lapline.exchange;

import com.fasterxml.jackson.annotation.JsonInclude;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import lapline.exchange.ProblemDetail.FieldError;
import lapline.pages.Messages;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.Role;
import lapline.people.SignedIn;
import lapline.practice.Attempt;
import lapline.practice.AttemptQuery;
import lapline.practice.FindAttempts;
import lapline.practice.KeepReadings;
import lapline.practice.KeptReading;
import lapline.practice.PracticeTasks;
import lapline.practice.ScoreAttempt;
import lapline.practice.StartAttempt;
import lapline.practice.TypedReading;
import lapline.practice.pages.CriterionWriter;

/** The panels that are kept: list them, look at one, start one, have it scored. */
@RequestScoped
@Path("/attempts")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class AttemptsResource {
  private static final int SIZE = 50;

  @Inject private SignedIn signedIn;
  @Inject private FindAttempts find;
  @Inject private StartAttempt start;
  @Inject private KeepReadings keep;
  @Inject private ScoreAttempt score;
  @Inject private Messages words;
  @Inject private PracticeTasks tasks;

  /** A panel in short. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Short(
      UUID id,
      UUID person,
      String task,
      String state,
      String changed,
      Instant started,
      Instant scored,
      Double practiceScore,
      Boolean accepted) {

    static Short of(Attempt a) {
      Attempt.Outcome outcome = a.outcome();
      return new Short(
          a.id(),
          a.person(),
          a.task(),
          a.state().name().toLowerCase(Locale.ROOT),
          a.changedWhat(),
          a.started(),
          outcome == null ? null : outcome.scored(),
          outcome == null ? null : outcome.practiceScore(),
          outcome == null ? null : outcome.accepted());
    }
  }

  /** One page of panels. */
  public record Page(int page, int size, int count, List<Short> attempts) {}

  /** A panel with its readings as typed, and its score once it has one. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Whole(Short attempt, Map<String, String> readings, ScoreText score) {}

  /** What a new panel begins with; readings may follow later. */
  public record New(String task, String changed, Map<String, String> readings) {}

  @GET
  public Page list(
      @QueryParam("person") UUID person,
      @QueryParam("task") String task,
      @QueryParam("page") @DefaultValue("1") int page) {
    if (page < 1 || page > 1_000_000) {
      throw new RefusedException(400, "exchange.page", page);
    }
    Person by = signedIn.person();
    UUID whose =
        person == null && by.roles().equals(java.util.Set.of(Role.APPRENTICE)) ? by.id() : person;
    AttemptQuery query =
        AttemptQuery.of(by.workshop(), (page - 1) * SIZE, SIZE).by(whose).under(task);
    List<Short> rows = find.page(by, query).stream().map(Short::of).toList();
    return new Page(page, SIZE, find.count(by, query), rows);
  }

  @GET
  @Path("/{id}")
  public Whole one(@PathParam("id") String id) {
    Person by = signedIn.person();
    Attempt attempt = find.attempt(by, uuid(id));
    ScoreText text =
        find.judged(by, attempt.id())
            .map(
                j ->
                    ScoreText.of(j.task(), j.score(), CriterionWriter.of(words, by.units(), tasks)))
            .orElse(null);
    Map<String, String> readings = new TreeMap<>();
    for (KeptReading r : find.readings(by, attempt.id())) {
      readings.put(r.cell(), r.typed());
    }
    return new Whole(Short.of(attempt), readings, text);
  }

  @POST
  public Response begin(New wanted) {
    if (wanted == null || wanted.task() == null) {
      throw new RefusedException(400, "exchange.wrong-member", "task");
    }
    Person by = signedIn.person();
    Attempt attempt = start.run(by, wanted.task(), null, wanted.changed());
    if (wanted.readings() != null) {
      List<TypedReading> typed =
          wanted.readings().entrySet().stream()
              .map(e -> new TypedReading(e.getKey(), e.getValue(), 0))
              .toList();
      keep.run(by, attempt.id(), 0, typed);
    }
    return Response.created(URI.create("attempts/" + attempt.id()))
        .entity(one(attempt.id().toString()))
        .build();
  }

  /** Has the panel judged; sent again with the same key, it is judged once. */
  @POST
  @Path("/{id}/score")
  @Consumes(MediaType.WILDCARD)
  public Whole score(@PathParam("id") String id, @HeaderParam("Idempotency-Key") String key) {
    Person by = signedIn.person();
    String submitKey = key == null || key.isBlank() ? UUID.randomUUID().toString() : key;
    if (submitKey.length() > 80) {
      throw new RefusedException(400, "exchange.key-long", 80);
    }
    if (score.run(by, uuid(id), submitKey) instanceof ScoreAttempt.NotYet notYet) {
      throw new InvalidException(
          "exchange.readings-wrong",
          notYet.problems().stream()
              .map(
                  p ->
                      new FieldError(
                          "readings." + p.cell(), words.say(p.key(), p.args().toArray())))
              .toList());
    }
    return one(id);
  }

  private static UUID uuid(String id) {
    try {
      return UUID.fromString(id);
    } catch (IllegalArgumentException e) {
      throw new NotFoundException();
    }
  }
}
