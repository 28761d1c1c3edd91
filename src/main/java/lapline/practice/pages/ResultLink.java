package lapline.practice.pages;

import lapline.practice.Attempt;

/** The way from a scored panel to its result. */
final class ResultLink {
  private ResultLink() {}

  static String to(Attempt attempt) {
    return "/learn/result.xhtml?faces-redirect=true&attempt=" + attempt.id();
  }
}
