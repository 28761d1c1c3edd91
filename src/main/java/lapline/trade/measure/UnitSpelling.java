package lapline.trade.measure;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The ways people type the units of each dimension, looked up without regard to capitals. */
final class UnitSpelling {
  private static final Map<Dimension, Map<String, Unit>> KNOWN = known();

  private UnitSpelling() {}

  static Optional<Unit> of(String spelling, Dimension dimension) {
    return Optional.ofNullable(KNOWN.get(dimension).get(plain(spelling)));
  }

  /** A unit of any dimension that is spelt so, to say what kind of unit was typed. */
  static Optional<Unit> anywhere(String spelling) {
    return KNOWN.values().stream()
        .map(units -> units.get(plain(spelling)))
        .filter(unit -> unit != null)
        .findFirst();
  }

  private static Map<Dimension, Map<String, Unit>> known() {
    Map<Dimension, Map<String, Unit>> known = new EnumMap<>(Dimension.class);
    for (Dimension dimension : Dimension.values()) {
      known.put(dimension, new HashMap<>());
    }
    for (Unit unit : Unit.values()) {
      unit.spellings().forEach(s -> learn(known.get(unit.dimension()), plain(s), unit));
    }
    return known;
  }

  /** A word is also learnt in the plural: 'mils', 'microns', 'mins'. */
  private static void learn(Map<String, Unit> units, String spelling, Unit unit) {
    if (!spelling.isEmpty()) {
      units.putIfAbsent(spelling, unit);
    }
    if (spelling.length() > 1 && spelling.chars().allMatch(Character::isLetter)) {
      units.putIfAbsent(spelling + "s", unit);
    }
  }

  private static String plain(String spelling) {
    String tidy = TypedText.tidy(spelling).toLowerCase(Locale.ROOT);
    return tidy.replaceAll("[\\s.]+", "");
  }
}
