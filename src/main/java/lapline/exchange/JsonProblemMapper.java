package lapline.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import jakarta.annotation.Priority;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.ext.ExceptionMapper;
import jakarta.ws.rs.ext.Provider;

/** Answers a body that is not the JSON it should be, before the server's own mapper does. */
@Provider
@Priority(1)
public class JsonProblemMapper implements ExceptionMapper<JsonProcessingException> {
  @Inject private ProblemMapper problems;

  @Override
  public Response toResponse(JsonProcessingException thrown) {
    return problems.toResponse(thrown);
  }
}
