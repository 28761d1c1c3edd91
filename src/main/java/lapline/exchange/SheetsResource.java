package lapline.exchange;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import lapline.pages.drawing.Paper;
import lapline.pages.drawing.PdfPage;
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
   * @param paper {@code a4} or {@code letter}
   */
  @GET
  @Produces("application/pdf")
  public Response sheet(@PathParam("id") UUID attempt, @QueryParam("paper") String paper) {
    String address = here.getBaseUri().resolve("../..").toString().replaceAll("/+$", "");
    TaskSheet sheet = sheets.of(signedIn.person(), attempt, address);
    byte[] pdf = PdfPage.of(sheet.title(), Locale.ENGLISH, List.of(sheet.on(Paper.of(paper))));
    return Response.ok(pdf)
        .header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"task-sheet.pdf\"")
        .build();
  }
}
