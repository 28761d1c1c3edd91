package lapline.practice;

import java.util.List;
import java.util.stream.IntStream;

/** Good work under each task of the course, carefully measured and written down. */
final class GoodPanels {
  private GoodPanels() {}

  static List<WrittenPanel> all() {
    return List.of(prepared(), masked(), card(), blended(), ClearPanel.good().written());
  }

  static WrittenPanel prepared() {
    WrittenPanel panel = WrittenPanel.under("preparing/flat-panel");
    IntStream.rangeClosed(1, 14).forEach(n -> panel.put("shine-left.at" + n, "dull"));
    IntStream.of(1, 2, 3, 4, 5, 6, 7, 8, 13, 14)
        .forEach(n -> panel.put("edge-missed.at" + n, "done"));
    IntStream.rangeClosed(1, 14).forEach(n -> panel.put("dust-left.at" + n, "clean"));
    panel.put("grit.s1", "P240").put("grit.s2", "P400").put("grit.s3", "P600");
    return panel.put("water-break", "holds").put("work-time", "38 min");
  }

  static WrittenPanel masked() {
    WrittenPanel panel = WrittenPanel.under("masking/hatch-lid-aperture");
    IntStream.rangeClosed(1, 8).forEach(n -> panel.put("jamb-overhang.at" + n, 23 + n % 4 + " mm"));
    panel.put("slack-film", "tight").put("tape-used", "6.5 m").put("work-time", "31 min");
    return panel.put("apertures-missed", "0").put("bleed-length", "0").put("hard-edge-length", "0");
  }

  private static WrittenPanel sprayedAt20Psi(String task) {
    WrittenPanel panel = WrittenPanel.under(task);
    panel.put("tip-size", "1.2 mm").put("fluid-turns", "2.5").put("gun-pressure", "20 psi");
    panel.put("fan-width", "9 in").put("mix-amount.s1", "200 ml").put("mix-amount.s2", "100 ml");
    panel.put("stroke-length", "600 mm");
    for (int coat = 1; coat <= 3; coat++) {
      for (int pass = 1; pass <= 3; pass++) {
        String at = ".c" + coat + ".p" + pass;
        panel.put("distance-start" + at, "5 in").put("distance-middle" + at, "4.8 in");
        panel.put("distance-end" + at, "5.1 in").put("stroke-time" + at, "1.5 s");
        if (pass > 1) {
          panel.put("pass-spacing" + at, "2.7 in");
        }
      }
    }
    return panel.put("flash.c2", "10 min").put("flash.c3", "11 min");
  }

  static WrittenPanel card() {
    WrittenPanel panel = sprayedAt20Psi("coverage/spray-out-card");
    return panel
        .put("squares-seen.c1", "20")
        .put("squares-seen.c2", "6")
        .put("squares-seen.c3", "0");
  }

  static WrittenPanel blended() {
    WrittenPanel panel = sprayedAt20Psi("coverage/base-over-spot");
    panel.put("air-temperature", "21").put("panel-temperature", "20").put("humidity", "55");
    for (int place = 1; place <= 4; place++) {
      panel.put("film-before.at" + place, 95 + place + " um");
      panel.put("film-after.at" + place, 114 + place + place % 2 + " um");
    }
    panel.put("room-left.c3", "55 mm");
    return panel.put("step-out.c1", "5 mm").put("step-out.c2", "32 mm").put("step-out.c3", "95 mm");
  }
}
