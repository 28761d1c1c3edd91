package lapline.exchange;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.PATCH;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.format.DateTimeFormatter;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import lapline.grading.KeepGrading;
import lapline.grading.UnfinishedGrading;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.SignedIn;

/** What an instructor puts down at the bench, kept as it is written. */
@RequestScoped
@Path("/attempts/{id}/bench")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class BenchResource {
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm");

  @Inject private SignedIn signedIn;
  @Inject private KeepGrading keep;

  /**
   * @param grader whose bench it was written at; another who signed in since does not take it over
   * @param marks mark by rubric item
   */
  public record Written(String grader, String remark, Map<String, Integer> marks) {}

  public record Answer(String savedTime) {}

  @PATCH
  public Answer keep(@PathParam("id") String id, Written written) {
    Person person = signedIn.person();
    // whoever has no business with the panel hears of nothing else
    keep.of(person, uuid(id));
    if (written == null || written.remark() == null || !whole(written.marks())) {
      throw new RefusedException(400, "exchange.wrong-member", "remark, marks");
    }
    if (!person.id().toString().equals(written.grader())) {
      throw new RefusedException(409, "grading.bench.another-grader");
    }
    UnfinishedGrading kept = keep.run(person, uuid(id), written.remark(), written.marks());
    return new Answer(TIME.format(kept.at().atZone(person.zone())));
  }

  private static boolean whole(Map<String, Integer> marks) {
    return marks != null && marks.values().stream().allMatch(Objects::nonNull);
  }

  private static UUID uuid(String id) {
    try {
      return UUID.fromString(id);
    } catch (IllegalArgumentException e) {
      throw new NotFoundException();
    }
  }
}
