package lapline.pages.drawing;

/** A spot on a drawing, in millimetres from its upper left corner, y downwards. */
public record Point(double x, double y) {}
