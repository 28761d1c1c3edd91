package lapline.journeys;

import java.io.IOException;
import java.net.URI;
import java.net.URL;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import lapline.content.Json;
import lapline.demo.ArrangeWorkshop;
import lapline.demo.Arranged;
import lapline.demo.ArrangedPeople;
import lapline.inside.BuiltWar;
import org.jboss.shrinkwrap.api.spec.WebArchive;

/**
 * Has a workshop arranged for a journey whose beginning would take a person half a year. It is done
 * inside the server, beside the running application, through the use cases that people use.
 */
public final class Arranging {
  private Arranging() {}

  public static WebArchive desk() {
    return BuiltWar.with(ArrangeWorkshop.class, Arranged.class, ArrangedPeople.class);
  }

  /**
   * @param desk where the archive of {@link #desk} answers
   * @param surname of everybody in the workshop
   */
  public static Arranged workshop(URL desk, String surname)
      throws IOException, InterruptedException {
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(desk + "arrange?surname=" + surname))
            .POST(HttpRequest.BodyPublishers.noBody())
            .build();
    HttpResponse<String> answer = Web.client().send(request, HttpResponse.BodyHandlers.ofString());
    if (answer.statusCode() != 200) {
      throw new IllegalStateException("the workshop could not be arranged: " + answer.body());
    }
    return Json.read(answer.body(), Arranged.class);
  }
}
