package lapline.practice;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import lapline.content.YamlNode;
import lapline.practice.Measurand.Option;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.QuantityReader;
import lapline.trade.measure.SpokenUnits;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Unit;

/** Reads {@code curriculum/measurands.yaml}. */
final class MeasurandsReader {
  private final Set<String> seen = new HashSet<>();

  List<Measurand> read(YamlNode root) {
    List<Measurand> all = new ArrayList<>();
    for (YamlNode item : root.list("measurands")) {
      Measurand m = measurand(item);
      if (!seen.add(m.id())) {
        item.problem("'" + m.id() + "' stands here twice", "give it another id, or take it away");
      }
      hasSource(m, item);
      all.add(m);
      item.refuseOtherKeys();
    }
    root.refuseOtherKeys();
    return all;
  }

  /** A figure nobody can trace is a figure nobody can put right. */
  private static void hasSource(Measurand m, YamlNode item) {
    boolean uncertain = m.standardUncertainty() > 0 || m.relativeUncertainty() > 0;
    if (uncertain && m.uncertaintySource().isEmpty()) {
      item.problem(
          "the uncertainty has no source",
          "write 'uncertainty-source:', at least 'common practice, no source'");
    }
  }

  private static Measurand measurand(YamlNode item) {
    Dimension dimension = word(item, "kind", Dimension.class).orElse(Dimension.NUMBER);
    Scope scope = word(item, "scope", Scope.class).orElse(Scope.PANEL);
    TargetRange possible =
        item.at("possible")
            .flatMap(n -> QuantityText.range(n, dimension))
            .orElse(new TargetRange(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY));
    return new Measurand(
        item.text("id"),
        item.text("label"),
        item.text("hint"),
        spoken(item, dimension),
        scope,
        between(item, scope),
        possible.least(),
        possible.most(),
        uncertainty(item, dimension),
        item.number("relative-uncertainty", 0),
        item.optionalText("uncertainty-source").orElse(""),
        options(item, dimension));
  }

  /** One unit for both systems, or 'm or ft': the metric one first. */
  private static SpokenUnits spoken(YamlNode item, Dimension dimension) {
    SpokenUnits usual = SpokenUnits.usual(dimension);
    return item.at("shown-in").map(node -> spoken(node, usual)).orElse(usual);
  }

  private static SpokenUnits spoken(YamlNode node, SpokenUnits usual) {
    String[] written = node.text().split(" or ", 2);
    Optional<Unit> metric = Unit.spelt(written[0], usual.dimension());
    Optional<Unit> us = Unit.spelt(written[written.length - 1], usual.dimension());
    if (metric.isEmpty() || us.isEmpty() || metric.get().symbol().isEmpty()) {
      node.problem(
          "'" + node.text() + "' is no unit for this kind",
          "write one of "
              + QuantityReader.symbols(usual.dimension())
              + ", or two such as 'm or ft'; leave 'shown-in' out for the usual ones");
      return usual;
    }
    return new SpokenUnits(metric.get(), us.get());
  }

  private static boolean between(YamlNode item, Scope scope) {
    boolean between = item.yesNo("between", false);
    if (between && scope != Scope.COAT && scope != Scope.PASS) {
      item.problem(
          "'between' is for what lies between two coats or two passes",
          "write 'scope: coat' or 'scope: pass', or leave 'between' out");
    }
    return between;
  }

  private static double uncertainty(YamlNode item, Dimension dimension) {
    Dimension step =
        switch (dimension) {
          case TEMPERATURE -> Dimension.TEMPERATURE_DIFFERENCE;
          case CLOCK -> Dimension.DURATION;
          default -> dimension;
        };
    return item.at("uncertainty").map(n -> QuantityText.value(n, step)).orElse(0.0);
  }

  private static List<Option> options(YamlNode item, Dimension dimension) {
    List<Option> options = new ArrayList<>();
    for (YamlNode o : item.optionalList("options")) {
      options.add(new Option(o.text("id"), o.text("label"), o.number("value")));
      o.refuseOtherKeys();
    }
    if ((dimension == Dimension.CHOICE) == options.isEmpty()) {
      item.problem(
          "only a choice has options, and it needs them",
          "write 'kind: choice' with 'options:', or another kind without");
    }
    return options;
  }

  /** One of the words of an enumeration, written small with dashes. */
  static <E extends Enum<E>> Optional<E> word(YamlNode node, String key, Class<E> type) {
    String written = node.text(key);
    for (E constant : type.getEnumConstants()) {
      if (constant.name().toLowerCase(Locale.ROOT).replace('_', '-').equals(written)) {
        return Optional.of(constant);
      }
    }
    if (!written.isEmpty()) {
      node.at(key)
          .orElseThrow()
          .problem(
              "'" + written + "' is not a known " + key,
              "see the head of measurands.yaml for the words");
    }
    return Optional.empty();
  }
}
