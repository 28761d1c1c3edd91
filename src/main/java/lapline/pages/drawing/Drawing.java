package lapline.pages.drawing;

import java.util.List;

/**
 * A drawing in millimetres, the same for the screen and for paper.
 *
 * @param id unique on the page it stands on
 * @param title what it is, in a few words
 * @param description what it shows, for those who cannot see it
 */
public record Drawing(
    String id, double width, double height, String title, String description, List<Shape> shapes) {

  public Drawing {
    shapes = List.copyOf(shapes);
  }
}
