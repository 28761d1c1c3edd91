package lapline.exchange;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.UUID;
import lapline.people.Person;
import lapline.people.SignedIn;
import lapline.practice.pages.TaskSheet;
import lapline.practice.pages.TaskSheets;

/** The task sheet of a panel as a file to print. */
@RequestScoped
@Path("/attempts/{id}/sheet.pdf")
public class SheetsResource {
  @Inject private SignedIn signedIn;
  @Inject private TaskSheets sheets;
  @Context private UriInfo here;

  /**
   * @param paper {@code a4} or {@code letter}; the one usual in the person's units where it is left
   *     out
   */
  @GET
  @Produces("application/pdf")
  public Response sheet(@PathParam("id") UUID attempt, @QueryParam("paper") String paper) {
    Person by = signedIn.person();
    TaskSheet sheet = sheets.of(by, attempt, PrintedPage.address(here));
    return PrintedPage.of(sheet.title(), sheet.on(PrintedPage.paper(paper, by)), "task-sheet");
  }
}
