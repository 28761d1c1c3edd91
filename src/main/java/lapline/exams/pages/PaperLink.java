package lapline.exams.pages;

import java.util.UUID;
import lapline.people.NotFoundException;

/** Addresses of a paper's pages. */
final class PaperLink {
  private PaperLink() {}

  static UUID id(String text) {
    try {
      return UUID.fromString(String.valueOf(text));
    } catch (IllegalArgumentException e) {
      throw new NotFoundException();
    }
  }

  static String review(UUID paper) {
    return "/learn/paper-review.xhtml?faces-redirect=true&paper=" + paper;
  }

  static String result(UUID paper) {
    return "/learn/paper-result.xhtml?faces-redirect=true&paper=" + paper;
  }
}
