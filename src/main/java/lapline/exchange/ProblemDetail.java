package lapline.exchange;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;

/**
 * What went wrong with a request, as RFC 9457 has it.
 *
 * @param type says nothing more than the status; {@code about:blank}
 * @param detail what happened and what would be right
 * @param errors field by field, where fields are wrong
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record ProblemDetail(
    String type, String title, int status, String detail, List<FieldError> errors) {

  /** The media type of a problem. */
  public static final String MEDIA_TYPE = "application/problem+json";

  /** One wrong field, and what would be right. */
  public record FieldError(String field, String says) {}

  static ProblemDetail of(int status, String title, String detail) {
    return new ProblemDetail("about:blank", title, status, detail, List.of());
  }
}
