package lapline.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import jakarta.inject.Inject;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.ext.ExceptionMapper;
import jakarta.ws.rs.ext.Provider;
import java.util.UUID;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Collectors;
import lapline.pages.Messages;
import lapline.people.NotAllowedException;
import lapline.people.NotFoundException;

/**
 * Answers whatever goes wrong with a problem in words. A trace goes to the log under a number; it
 * never leaves the server.
 */
@Provider
public class ProblemMapper implements ExceptionMapper<Throwable> {
  private static final Logger LOG = Logger.getLogger("lapline.exchange");

  @Inject private Messages words;

  @Override
  public Response toResponse(Throwable thrown) {
    ProblemDetail problem = problem(thrown);
    Response.ResponseBuilder answer =
        Response.status(problem.status()).type(ProblemDetail.MEDIA_TYPE).entity(problem);
    if (problem.status() == Response.Status.UNAUTHORIZED.getStatusCode()) {
      // RFC 9110 wants to be told which key opens
      answer.header(HttpHeaders.WWW_AUTHENTICATE, "Bearer realm=\"Lapline\"");
    }
    return answer.build();
  }

  private ProblemDetail problem(Throwable thrown) {
    for (Throwable t = thrown; t != null; t = t.getCause()) {
      if (t instanceof NotFoundException) {
        return say(404, "exchange.not-found");
      }
      if (t instanceof NotAllowedException refused) {
        return say(403, forPrograms(refused.key()));
      }
      if (t instanceof RefusedException refused) {
        return say(refused.status(), refused.key(), refused.values());
      }
      if (t instanceof InvalidException invalid) {
        return new ProblemDetail(
            "about:blank",
            words.get("exchange.title.422"),
            422,
            words.get(invalid.key()),
            invalid.errors());
      }
      if (t instanceof JsonProcessingException json) {
        return notJson(json);
      }
    }
    return thrown instanceof WebApplicationException web
        ? ofStatus(web.getResponse().getStatus())
        : broken(thrown);
  }

  /** A sentence about pages and their roles helps no program. */
  private static String forPrograms(String key) {
    return key.equals("people.not-allowed.role") ? "exchange.not-yours" : key;
  }

  private ProblemDetail say(int status, String key, Object... values) {
    return ProblemDetail.of(status, words.get("exchange.title." + status), words.say(key, values));
  }

  private ProblemDetail notJson(JsonProcessingException json) {
    String where =
        json instanceof JsonMappingException mapping
            ? mapping.getPath().stream()
                .map(p -> p.getFieldName() == null ? "[" + p.getIndex() + "]" : p.getFieldName())
                .collect(Collectors.joining("."))
            : "";
    if (!where.isEmpty()) {
      return say(400, "exchange.wrong-member", where);
    }
    return json.getLocation() == null
        ? say(400, "exchange.empty-body")
        : say(
            400,
            "exchange.not-json",
            json.getLocation().getLineNr(),
            json.getLocation().getColumnNr());
  }

  private ProblemDetail ofStatus(int status) {
    String title = "exchange.title." + status;
    String detail = "exchange.detail." + status;
    return words.has(detail)
        ? say(status, detail)
        : ProblemDetail.of(
            status,
            words.has(title)
                ? words.get(title)
                : Response.Status.fromStatusCode(status).getReasonPhrase(),
            "");
  }

  private ProblemDetail broken(Throwable thrown) {
    String number = UUID.randomUUID().toString().substring(0, 8);
    LOG.log(Level.SEVERE, "a request of a program broke, number " + number, thrown);
    return say(500, "exchange.broken", number);
  }
}
