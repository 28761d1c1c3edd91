package lapline.practice;

import java.util.Map;
import java.util.TreeMap;
import lapline.trade.measure.UnitSystem;

/** The readings of an invented panel of two coats of clear, well sprayed until told otherwise. */
public final class ClearPanel {
  public static final PracticeTask TASK = WrittenPanel.COURSE.find("clear/two-coats").orElseThrow();

  /** A hand is not a machine: film over the mean at places 1 to 15, micrometres. */
  private static final double[] HAND = {
    -1.5, 0.5, 2, 1, -2, -0.5, 1.5, 2.5, 1, -1, -2, 0, 1.5, -1, -2
  };

  private final Map<String, String> typed = new TreeMap<>();

  private ClearPanel() {}

  public static ClearPanel good() {
    ClearPanel panel = new ClearPanel();
    panel.gunMixAndClimate();
    panel.passes();
    for (int coat = 1; coat <= 2; coat++) {
      for (int place : new int[] {3, 6, 15}) {
        panel.put("wet-film.c" + coat + ".at" + place, 62 + place % 2 + " µm");
      }
    }
    for (int place : new int[] {1, 3, 5, 13, 15}) {
      panel.put("gloss-60.at" + place, "" + (91 + place % 3));
      panel.put("gloss-20.at" + place, "" + (82 + place % 3));
    }
    return panel.film(57.5, 1);
  }

  private void gunMixAndClimate() {
    put("tip-size", "1.3 mm").put("fluid-turns", "2 1/2").put("fan-width", "230 mm");
    put("gun-pressure", "165 kPa");
    put("mix-amount.s1", "400 ml").put("mix-amount.s2", "100 ml").put("mix-amount.s3", "100 ml");
    put("air-temperature", "21").put("panel-temperature", "20").put("humidity", "50");
    put("coat-start.c1", "14:05").put("coat-start.c2", "14:17").put("flash.c2", "8 min");
  }

  private void passes() {
    for (int coat = 1; coat <= 2; coat++) {
      for (int pass = 1; pass <= 6; pass++) {
        String at = ".c" + coat + ".p" + pass;
        if (pass > 1) {
          put("pass-spacing" + at, 68 + pass % 3 + " mm");
        }
        put("distance-start" + at, "100").put("distance-middle" + at, "98");
        put("distance-end" + at, "103").put("stroke-time" + at, 1.5 + 0.02 * (pass % 3) + " s");
      }
    }
  }

  /**
   * @param mean of the clear, micrometres
   * @param unevenness 1 for a good hand, 0 for the same film everywhere
   */
  public ClearPanel film(double mean, double unevenness) {
    for (int place = 1; place <= HAND.length; place++) {
      double before = 80 + place % 4;
      put("film-before.at" + place, before + " µm");
      put("film-after.at" + place, before + mean + unevenness * HAND[place - 1] + " µm");
    }
    return this;
  }

  ClearPanel put(String cell, String text) {
    typed.put(cell, text);
    return this;
  }

  ClearPanel without(String measurand) {
    typed.keySet().removeIf(key -> Cell.of(key).measurand().equals(measurand));
    return this;
  }

  WrittenPanel written() {
    WrittenPanel panel = WrittenPanel.under(TASK.id());
    typed.forEach(panel::put);
    return panel;
  }

  public PanelReading read() {
    return PanelReader.read(TASK, WrittenPanel.COURSE.measurands(), typed, UnitSystem.METRIC);
  }

  public PanelScore score() {
    PanelReading reading = read();
    if (!reading.problems().isEmpty()) {
      throw new IllegalStateException(reading.problems().toString());
    }
    return PanelScorer.score(TASK, reading.entry());
  }
}
