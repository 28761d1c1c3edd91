package lapline.demo;

import java.util.random.RandomGenerator;
import lapline.practice.PracticeTask;

/** One panel on one day: the task, the form of who does it, and chance. */
record PanelDay(PracticeTask task, Form form, RandomGenerator chance) {

  /** The middle of what the task wants of a quantity, in SI; a one-sided target gives its limit. */
  double aim(String quantity, double otherwise) {
    return task.criteria().stream()
        .filter(c -> c.quantity().equals(quantity))
        .map(c -> c.target())
        .filter(t -> t.hasLeast() || t.hasMost())
        .findFirst()
        .map(
            t ->
                t.hasLeast() && t.hasMost()
                    ? (t.least() + t.most()) / 2
                    : t.hasMost() ? t.most() : t.least())
        .orElse(otherwise);
  }

  /** A value near another: spread by a share of it that shrinks with practice. */
  double near(double value, double steadySpread, double newSpread) {
    double spread = steadySpread + newSpread * form.slip();
    return value * Math.max(0.3, 1 + spread * chance.nextGaussian());
  }

  /** Whether something goes wrong that befalls beginners with this chance. */
  boolean mishap(double forBeginners) {
    return chance.nextDouble() < forBeginners * form.slip();
  }

  /** 1 when it befalls, 0 when it does not; the way choices are kept. */
  double fault(double forBeginners) {
    return mishap(forBeginners) ? 1 : 0;
  }
}
