package lapline.lessons;

/**
 * A hand-made drawing that stands in a lesson's page itself, so that it takes the page's ink and
 * prints in grey.
 *
 * @param svg checked: shapes and words only, every id made its own
 */
record Drawing(String title, String svg) {

  /**
   * @param caption as HTML; shown below the drawing
   */
  String figure(String caption) {
    return "<figure class=\"drawing\">"
        + svg
        + "<figcaption>"
        + caption
        + "</figcaption></figure>\n";
  }
}
