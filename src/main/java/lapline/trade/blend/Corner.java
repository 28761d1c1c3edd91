package lapline.trade.blend;

/** A corner of an outline, in metres from the panel's lower left. */
public record Corner(double x, double y) {}
