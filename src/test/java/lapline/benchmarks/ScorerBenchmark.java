package lapline.benchmarks;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import lapline.practice.ClearPanel;
import lapline.practice.FilmField;
import lapline.practice.PanelEntry;
import lapline.practice.PanelScore;
import lapline.practice.PanelScorer;

/**
 * The score of a full clear panel, in processor time so that other work on the machine does not
 * count. References: one hand fitted to the same film by a general optimiser, and the reading of
 * what was typed.
 */
final class ScorerBenchmark {
  private static final int WARM = 150;
  private static final int MEASURED = 200;
  private static final ThreadMXBean PROCESSOR = ManagementFactory.getThreadMXBean();

  private ScorerBenchmark() {}

  static void run(Table table) {
    ClearPanel panel = ClearPanel.good().film(45, 1);
    PanelEntry entry = panel.read().entry();
    FilmField film = panel.score().film();
    GeneralFit fit = new GeneralFit(ClearPanel.TASK.panel(), film.places());
    Times score = new Times();
    Times general = new Times();
    Times reading = new Times();
    for (int i = 0; i < WARM + MEASURED; i++) {
      boolean counts = i >= WARM;
      time(counts ? score : new Times(), () -> score(entry));
      time(counts ? general : new Times(), fit::run);
      time(counts ? reading : new Times(), panel::read);
    }
    table.heading("Processor time, a full clear panel", "to general fit", "to reading");
    table.line("score: verdicts, film map, causes", score, general, reading);
    table.line("one hand of 4 unknowns by a general fit", general, general, reading);
    table.line("reading of what was typed", reading, general, reading);
  }

  private static void score(PanelEntry entry) {
    PanelScore score = PanelScorer.score(ClearPanel.TASK, entry);
    if (score.accepted() || score.findings().isEmpty()) {
      throw new IllegalStateException("a thin panel is not accepted and has a cause");
    }
  }

  private static void time(Times into, Runnable work) {
    long began = PROCESSOR.getCurrentThreadCpuTime();
    work.run();
    into.add(PROCESSOR.getCurrentThreadCpuTime() - began);
  }
}
