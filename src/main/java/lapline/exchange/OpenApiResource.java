package lapline.exchange;

import jakarta.enterprise.context.RequestScoped;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** The description of this interface, for people and for programs that write clients. */
@RequestScoped
@Path(OpenApiResource.PATH)
public class OpenApiResource {
  static final String PATH = "openapi.yaml";

  @GET
  @Produces("application/yaml;charset=UTF-8")
  public String describe() throws IOException {
    try (InputStream in = getClass().getResourceAsStream("openapi.yaml")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
