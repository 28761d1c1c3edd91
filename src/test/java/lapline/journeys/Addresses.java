package lapline.journeys;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import lapline.demo.Arranged;
import lapline.journeys.SiteMap.Way;

/**
 * What stands in the places of an address. A parameter that is not known here breaks the tests that
 * ask every address, so that whoever brings a new one says what it names.
 */
final class Addresses {
  /** Parameters that name a thing of a workshop, with the kinds of things they may name. */
  private static final Map<String, List<String>> THINGS =
      Map.of(
          "attempt", List.of("waiting", "draft", "attempt"),
          "person", List.of("learner"),
          "id", List.of("learner"),
          "paper", List.of("paper", "open-paper"),
          "card", List.of("gun-card"),
          "code", List.of("sheet-code"));

  /** Parameters that name nothing of a workshop. */
  private static final Map<String, String> PLAIN =
      Map.ofEntries(
          Map.entry("unit", "masking"),
          Map.entry("skill", "masking"),
          Map.entry("item", "tape-on-a-curve"),
          Map.entry("finding", "film.low"),
          Map.entry("task", ""),
          Map.entry("criterion", ""),
          Map.entry("asking", ""),
          Map.entry("namesake", ""),
          Map.entry("page", "1"),
          Map.entry("days", "90"),
          Map.entry("for", "eye"),
          Map.entry("part", ""),
          Map.entry("role", ""),
          Map.entry("back", "true"),
          Map.entry("photograph", "added"),
          Map.entry("caption", ""),
          Map.entry("seen", ""),
          Map.entry("shown", ""));

  private Addresses() {}

  /** The address with no thing named. */
  static String plain(Way way) {
    return address(way, Map.of());
  }

  /** The address once with each kind of thing that it may name. */
  static List<String> naming(Way way, Arranged workshop) {
    Set<String> named = new TreeSet<>(way.parameters());
    named.retainAll(THINGS.keySet());
    int most = named.stream().mapToInt(n -> THINGS.get(n).size()).max().orElse(0);
    List<String> all = new ArrayList<>();
    for (int i = 0; i < most; i++) {
      Map<String, String> things = new LinkedHashMap<>();
      for (String name : named) {
        List<String> kinds = THINGS.get(name);
        things.put(name, workshop.one(kinds.get(i % kinds.size())));
      }
      all.add(address(way, things));
    }
    return all;
  }

  private static String address(Way way, Map<String, String> things) {
    Map<String, String> query = new LinkedHashMap<>();
    for (String name : way.parameters()) {
      if (!PLAIN.containsKey(name) && !THINGS.containsKey(name)) {
        throw new AssertionError(
            way + " reads '" + name + "': say in Addresses what that parameter names");
      }
      if (!PLAIN.getOrDefault(name, "").isEmpty()) {
        query.put(name, PLAIN.get(name));
      }
    }
    query.putAll(things);
    String text =
        query.entrySet().stream()
            .map(e -> e.getKey() + "=" + Visitor.encoded(e.getValue()))
            .collect(Collectors.joining("&"));
    return way.path() + (text.isEmpty() ? "" : "?" + text);
  }
}
