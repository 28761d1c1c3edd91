package lapline.trade.stroke;

/**
 * Where one more reading is worth taking, and what it is to be expected to read.
 *
 * @param ifSo film there if the fault happened, metres
 * @param ifNot film there if what is in its place happened, metres
 */
public record NextSpot(Spot spot, double ifSo, double ifNot) {}
