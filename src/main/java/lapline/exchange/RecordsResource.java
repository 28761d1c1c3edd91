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
import lapline.board.pages.RecordSheets;
import lapline.pages.drawing.Drawing;
import lapline.people.Person;
import lapline.people.SignedIn;

/** The training record of a person as a file of one page, for an inspector. */
@RequestScoped
@Path("/people/{id}/record.pdf")
public class RecordsResource {
  @Inject private SignedIn signedIn;
  @Inject private RecordSheets sheets;
  @Context private UriInfo here;

  /**
   * @param paper {@code a4} or {@code letter}; the one usual in the person's units where it is left
   *     out
   */
  @GET
  @Produces("application/pdf")
  public Response sheet(@PathParam("id") UUID person, @QueryParam("paper") String paper) {
    Person by = signedIn.person();
    Drawing sheet = sheets.of(by, person, PrintedPage.paper(paper, by), PrintedPage.address(here));
    return PrintedPage.of(sheet, "training-record");
  }
}
