package lapline.pages;

import jakarta.faces.component.html.HtmlForm;
import jakarta.faces.context.FacesContext;
import jakarta.faces.context.ResponseWriter;
import jakarta.faces.context.ResponseWriterWrapper;
import java.io.IOException;
import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A form that is sent to the whole address of its page, which panel or person it is about included,
 * so that the address still says so after an error, after Back and after a new sign-in.
 */
public class AddressedForm extends HtmlForm {
  /** What an address says only once. */
  private static final Set<String> SAID_ONCE = Set.of("expired", "photograph");

  @Override
  public void encodeBegin(FacesContext faces) throws IOException {
    ResponseWriter plain = faces.getResponseWriter();
    faces.setResponseWriter(new Addressing(plain, kept(query(faces))));
    try {
      super.encodeBegin(faces);
    } finally {
      faces.setResponseWriter(plain);
    }
  }

  private static String query(FacesContext faces) {
    return faces
        .getApplication()
        .evaluateExpressionGet(faces, "#{request.queryString}", String.class);
  }

  /** The part of an address after its question mark, without what it says only once. */
  static String kept(String query) {
    return query == null || query.isEmpty()
        ? ""
        : Arrays.stream(query.split("&"))
            .filter(part -> !part.isEmpty() && !SAID_ONCE.contains(part.replaceFirst("=.*", "")))
            .collect(Collectors.joining("&"));
  }

  /** Writes the form's own tag with the query behind its address. */
  private static final class Addressing extends ResponseWriterWrapper {
    private final String query;

    Addressing(ResponseWriter wrapped, String query) {
      super(wrapped);
      this.query = query;
    }

    @Override
    public void writeAttribute(String name, Object value, String property) throws IOException {
      super.writeAttribute(name, addressed(name, value, query), property);
    }
  }

  /** Where the form is sent, with the query behind it; any other attribute as it is. */
  static Object addressed(String attribute, Object value, String query) {
    return "action".equals(attribute) && !query.isEmpty() ? value + "?" + query : value;
  }
}
