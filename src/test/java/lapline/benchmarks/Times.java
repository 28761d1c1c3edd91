package lapline.benchmarks;

import java.util.ArrayList;
import java.util.List;

/** How long something took, each time it was done. */
final class Times {
  private final List<Double> milliseconds = new ArrayList<>();

  void add(long nanoseconds) {
    milliseconds.add(nanoseconds / 1e6);
  }

  int count() {
    return milliseconds.size();
  }

  double median() {
    return quantile(0.5);
  }

  /** The smallest time that this share of all did not exceed. */
  double quantile(double share) {
    List<Double> sorted = milliseconds.stream().sorted().toList();
    return sorted.get((int) Math.ceil(share * sorted.size()) - 1);
  }
}
