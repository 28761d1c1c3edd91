package lapline.benchmarks;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.time.LocalDate;
import java.util.Locale;

/** The table that is printed, line by line. */
final class Table {
  private final PrintStream out;

  Table(PrintStream out) {
    this.out = out;
  }

  /** What the figures depend on, beside the code. */
  void machine() {
    var machine = ManagementFactory.getOperatingSystemMXBean();
    say(
        "%s, %d cores, Java %s, load %.1f",
        LocalDate.now(),
        machine.getAvailableProcessors(),
        Runtime.version().feature(),
        machine.getSystemLoadAverage());
  }

  void heading(String what, String first, String second) {
    say("");
    say("%-44s %6s %9s %9s  %-16s %-16s", what, "n", "median ms", "p95 ms", first, second);
  }

  /** One thing that was measured, with how many times its references it took, by medians. */
  void line(String what, Times times, Times first, Times second) {
    say(
        "%-44s %6d %9.2f %9.2f  x %-14.2f x %-14.2f",
        what,
        times.count(),
        times.median(),
        times.quantile(0.95),
        times.median() / first.median(),
        times.median() / second.median());
  }

  void say(String format, Object... args) {
    out.printf(Locale.ROOT, format + "%n", args);
    out.flush();
  }
}
