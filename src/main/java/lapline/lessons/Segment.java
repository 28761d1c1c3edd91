package lapline.lessons;

/** A stretch of a lesson: prose that is ready to show, or a check that stands in it. */
public sealed interface Segment {

  /** The check, or null for prose; for pages, which cannot tell types apart. */
  default Check check() {
    return null;
  }

  /** The prose as HTML, or null for a check. */
  default String html() {
    return null;
  }

  /** Prose, with its drawings, as safe HTML. */
  record Prose(@Override String html) implements Segment {}

  /** A check where it stands. */
  record Stop(@Override Check check) implements Segment {}
}
