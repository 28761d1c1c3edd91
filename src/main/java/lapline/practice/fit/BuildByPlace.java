package lapline.practice.fit;

import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import lapline.practice.PanelEntry;
import lapline.practice.PanelOutline;
import lapline.practice.Reading;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Summary;

/** How much film was put on at each place, from the readings before and after. */
public final class BuildByPlace {
  public static final String AFTER = "film-after";
  public static final String BEFORE = "film-before";
  public static final String WET = "wet-film";

  private BuildByPlace() {}

  /**
   * Dry film by place in metres: after less before. Where nothing at all was read before, the panel
   * is taken as bare and the reading after is the build; where some was, a place without its
   * reading before is left out, but for a further place, of which nobody thought then: there the
   * film before is taken as elsewhere on the panel, with the scatter it has from place to place.
   * Readings count as independent. Empty where there is no dry film.
   */
  public static Map<Integer, Estimate> dryByPlace(PanelEntry entry) {
    Map<Integer, Reading> before = entry.byPlace(BEFORE, 0);
    Map<Integer, Estimate> build = new TreeMap<>();
    entry
        .byPlace(AFTER, 0)
        .forEach(
            (place, after) -> {
              if (before.isEmpty()) {
                build.put(place, Estimate.of(after.value(), after.standardUncertainty()));
              } else if (before.containsKey(place)) {
                build.put(place, difference(after, before.get(place).estimate()));
              } else if (PanelOutline.isFurther(place) && before.size() > 1) {
                build.put(place, difference(after, elsewhere(before.values())));
              }
            });
    return build;
  }

  /** Wet film by place in metres, the mean over the coats that were read there. */
  public static Map<Integer, Estimate> wetByPlace(PanelEntry entry) {
    Map<Integer, Estimate> mean = new TreeMap<>();
    var readings = entry.of(WET);
    var places = new TreeSet<Integer>();
    readings.forEach(r -> places.add(r.cell().place()));
    long coats = readings.stream().map(r -> r.cell().coat()).distinct().count();
    for (int place : places) {
      var here = readings.stream().filter(r -> r.cell().place() == place).toList();
      // a place missed in one coat would be compared with the others on another footing
      if (place > 0 && here.size() == coats) {
        double sum = here.stream().mapToDouble(Reading::value).sum();
        double squares =
            here.stream().mapToDouble(r -> r.standardUncertainty() * r.standardUncertainty()).sum();
        mean.put(place, Estimate.of(sum / coats, Math.sqrt(squares) / coats));
      }
    }
    return mean;
  }

  /** What one more reading would come to: their mean, and the spread of one about that mean. */
  private static Estimate elsewhere(Collection<Reading> before) {
    Summary s = Summary.of(before.stream().mapToDouble(Reading::value).toArray());
    double read = before.stream().mapToDouble(Reading::standardUncertainty).average().orElseThrow();
    double spread = Math.max(s.standardDeviation(), read);
    return Estimate.of(s.mean(), spread * Math.sqrt(1 + 1.0 / s.count()));
  }

  private static Estimate difference(Reading after, Estimate before) {
    return Estimate.of(
        after.value() - before.value(),
        Math.hypot(after.standardUncertainty(), before.standardUncertainty()));
  }
}
