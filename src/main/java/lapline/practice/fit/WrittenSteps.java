package lapline.practice.fit;

/**
 * What the steps between passes, as they were written down, add to the film of even steps; relative
 * to the mean film. Before the first and after the last written step the passes go on evenly.
 */
final class WrittenSteps {
  private final double fan;
  private final double spacing;
  private final double[] shift;

  /** The first written centreline lies at y = 0. */
  WrittenSteps(Technique technique) {
    fan = technique.fanWidth();
    spacing = technique.spacing();
    shift = new double[technique.gaps().size()];
    double sum = 0;
    for (int i = 0; i < shift.length; i++) {
      sum += technique.gaps().get(i) - spacing;
      shift[i] = sum;
    }
  }

  double at(double y) {
    double sum = 0;
    for (int i = 0; i < shift.length; i++) {
      double even = (i + 1) * spacing;
      sum +=
          Deposit.UPRIGHT.stroke(2 * (y - even - shift[i]) / fan)
              - Deposit.UPRIGHT.stroke(2 * (y - even) / fan);
    }
    return sum * spacing / fan;
  }

  /** Most less least from 0 to a height. */
  double size(double height) {
    double least = 0;
    double most = 0;
    for (int i = 0; i <= 40; i++) {
      least = Math.min(least, at(height * i / 40));
      most = Math.max(most, at(height * i / 40));
    }
    return most - least;
  }
}
