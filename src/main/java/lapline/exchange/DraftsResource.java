package lapline.exchange;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.PATCH;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import lapline.pages.Messages;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.SignedIn;
import lapline.practice.FieldProblem;
import lapline.practice.KeepReadings;
import lapline.practice.KeptReadings;
import lapline.practice.TypedReading;

/** The readings of a draft, as they are typed. */
@RequestScoped
@Path("/attempts/{id}/readings")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class DraftsResource {
  private static final int MOST_READINGS = 2000;
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm");

  @Inject private SignedIn signedIn;
  @Inject private KeepReadings keep;
  @Inject private Messages words;

  /**
   * @param since the attempt's revision last seen
   */
  public record Patch(long since, List<TypedReading> readings) {}

  /**
   * @param savedAt in UTC; {@code savedTime} the same in the workshop's zone
   */
  public record Answer(
      String savedAt,
      String savedTime,
      long revision,
      List<KeptReadings.KeptCell> cells,
      List<CellProblem> problems,
      List<KeptReadings.Conflict> conflicts,
      List<CellProblem> refused) {}

  /** What is wrong at one place of the record, in words. */
  public record CellProblem(String cell, String says) {}

  @PATCH
  public Answer keep(@PathParam("id") String id, Patch patch) {
    List<TypedReading> readings = checked(patch);
    Person person = signedIn.person();
    KeptReadings kept = keep.run(person, uuid(id), patch.since(), readings);
    return new Answer(
        kept.at().toString(),
        time(kept, person.zone()),
        kept.revision(),
        asked(kept),
        inWords(kept.problems()),
        kept.conflicts(),
        inWords(kept.refused()));
  }

  private static List<TypedReading> checked(Patch patch) {
    if (patch == null || patch.readings() == null || patch.readings().contains(null)) {
      throw new RefusedException(400, "exchange.wrong-member", "readings");
    }
    if (patch.readings().size() > MOST_READINGS) {
      throw new RefusedException(400, "exchange.too-many-readings", MOST_READINGS);
    }
    if (patch.readings().stream().anyMatch(r -> r.cell() == null)) {
      throw new RefusedException(400, "exchange.wrong-member", "readings.cell");
    }
    return patch.readings();
  }

  private static UUID uuid(String id) {
    try {
      return UUID.fromString(id);
    } catch (IllegalArgumentException e) {
      throw new NotFoundException();
    }
  }

  private static String time(KeptReadings kept, ZoneId zone) {
    return TIME.format(kept.at().atZone(zone));
  }

  /** The cells as they were understood, or what is asked back about them. */
  private List<KeptReadings.KeptCell> asked(KeptReadings kept) {
    Map<String, String> questions =
        kept.questions().stream()
            .collect(Collectors.toMap(FieldProblem::cell, this::inWords, (first, next) -> first));
    return kept.cells().stream()
        .map(c -> c.understoodAs(questions.getOrDefault(c.cell(), c.understood())))
        .toList();
  }

  private String inWords(FieldProblem problem) {
    return words.say(problem.key(), problem.args().toArray());
  }

  private List<CellProblem> inWords(List<FieldProblem> problems) {
    return problems.stream().map(p -> new CellProblem(p.cell(), inWords(p))).toList();
  }
}
