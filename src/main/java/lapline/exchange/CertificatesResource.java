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
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.Paper;
import lapline.people.Person;
import lapline.people.SignedIn;
import lapline.signoff.pages.Certificates;

/** The certificate of a sign-off that is good, as a file to print. */
@RequestScoped
@Path("/sign-offs/{id}/certificate.pdf")
public class CertificatesResource {
  @Inject private SignedIn signedIn;
  @Inject private Certificates certificates;
  @Context private UriInfo here;

  /**
   * @param paper {@code a4} or {@code letter}; the one usual in the person's units where it is left
   *     out
   */
  @GET
  @Produces("application/pdf")
  public Response certificate(@PathParam("id") UUID signOff, @QueryParam("paper") String paper) {
    Person by = signedIn.person();
    Paper sheet = PrintedPage.paper(paper, by);
    Drawing drawing = certificates.of(by, signOff, PrintedPage.address(here)).on(sheet);
    return PrintedPage.of(drawing, "certificate");
  }
}
