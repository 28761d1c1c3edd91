package lapline.practice.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import lapline.practice.Cell;
import lapline.practice.PanelEntry;
import lapline.practice.PanelOutline;
import lapline.practice.Reading;

/**
 * Reads the coats and passes out of what was written down, from the upper edge down. Where nobody
 * wrote where the first one lay, the row of passes is taken to lie evenly about the panel's middle.
 */
final class SprayedCoats {
  private static final String SPACING = "pass-spacing";
  private static final String FAN = "fan-width";
  private static final String FIRST = "first-pass";

  private final PanelOutline panel;
  private final PanelEntry entry;

  SprayedCoats(PanelOutline panel, PanelEntry entry) {
    this.panel = panel;
    this.entry = entry;
  }

  List<SprayedCoat> all() {
    TreeSet<Integer> numbers = new TreeSet<>();
    entry.readings().keySet().stream()
        .filter(c -> c.pass() > 0)
        .forEach(c -> numbers.add(c.coat()));
    return numbers.stream().map(this::coat).toList();
  }

  private SprayedCoat coat(int number) {
    List<Integer> passes =
        entry.readings().keySet().stream()
            .filter(c -> c.coat() == number && c.pass() > 0)
            .map(Cell::pass)
            .distinct()
            .sorted()
            .toList();
    List<Double> offsets = offsets(number, passes);
    double reach = offsets.get(offsets.size() - 1);
    double highest =
        entry
            .at(Cell.coat(FIRST, number))
            .filter(r -> passes.get(0) == 1)
            .map(r -> panel.height() - r.value())
            .orElse((panel.height() + reach) / 2);
    List<SprayedCoat.Pass> laid = new ArrayList<>();
    for (int i = 0; i < passes.size(); i++) {
      laid.add(pass(number, passes.get(i), highest - offsets.get(i)));
    }
    return new SprayedCoat(number, fan(number), laid);
  }

  /** How far each pass lies below the first. */
  private List<Double> offsets(int coat, List<Integer> passes) {
    double usual =
        passes.stream()
            .mapToDouble(p -> at(SPACING, coat, p))
            .filter(s -> !Double.isNaN(s))
            .average()
            .orElse(panel.height() / Math.max(1, passes.size()));
    List<Double> offsets = new ArrayList<>();
    double sum = 0;
    for (int pass : passes) {
      double spacing = at(SPACING, coat, pass);
      if (!offsets.isEmpty()) {
        sum += Double.isNaN(spacing) ? usual : spacing;
      }
      offsets.add(sum);
    }
    return offsets;
  }

  private SprayedCoat.Pass pass(int coat, int number, double centre) {
    return new SprayedCoat.Pass(
        number,
        centre,
        at(SPACING, coat, number),
        at("distance-start", coat, number),
        at("distance-middle", coat, number),
        at("distance-end", coat, number));
  }

  private double at(String measurand, int coat, int pass) {
    return entry.at(Cell.pass(measurand, coat, pass)).map(Reading::value).orElse(Double.NaN);
  }

  private double fan(int coat) {
    return entry
        .at(Cell.coat(FAN, coat))
        .or(() -> entry.at(Cell.panel(FAN)))
        .map(Reading::value)
        .orElse(Double.NaN);
  }
}
