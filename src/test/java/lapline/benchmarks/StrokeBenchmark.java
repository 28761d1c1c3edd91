package lapline.benchmarks;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import lapline.trade.stroke.TimedReading;

/**
 * What the film of 108 places says about the stroke, in processor time. References: one fit of it,
 * and the same fit by a general-purpose optimiser without our slopes, which must not end at a
 * better point.
 */
final class StrokeBenchmark {
  private static final int WARM = 60;
  private static final int MEASURED = 100;
  private static final double SAME = 0.01;
  private static final ThreadMXBean PROCESSOR = ManagementFactory.getThreadMXBean();

  private StrokeBenchmark() {}

  static void run(Table table) {
    TimedReading panel = new TimedReading();
    if (panel.oneFit() > panel.generalFit() + SAME) {
      throw new IllegalStateException("the general optimiser found a better point");
    }
    Times all = new Times();
    Times one = new Times();
    Times general = new Times();
    for (int i = 0; i < WARM + MEASURED; i++) {
      boolean counts = i >= WARM;
      time(counts ? all : new Times(), panel::all);
      time(counts ? one : new Times(), panel::oneFit);
      time(counts ? general : new Times(), panel::generalFit);
    }
    String heading = "Processor time, stroke of 108 places, %d passes".formatted(panel.passes());
    table.heading(heading, "to one fit", "to general fit");
    table.line("all faults, with intervals", all, one, general);
    table.line("one fit, analytic slopes", one, one, general);
    table.line("one fit, general optimiser", general, one, general);
  }

  private static void time(Times into, Runnable work) {
    long began = PROCESSOR.getCurrentThreadCpuTime();
    work.run();
    into.add(PROCESSOR.getCurrentThreadCpuTime() - began);
  }
}
