package lapline.practice;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import lapline.content.YamlNode;
import lapline.practice.Criterion.Judged;
import lapline.practice.quantity.PanelQuantities;
import lapline.practice.quantity.PanelQuantity;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.SpokenUnits;
import lapline.trade.measure.TargetRange;

/** Reads the criteria of a practice task. */
final class CriterionReader {
  private static final TargetRange OPEN =
      new TargetRange(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

  private final Measurands measurands;

  CriterionReader(Measurands measurands) {
    this.measurands = measurands;
  }

  List<Criterion> readAll(List<YamlNode> nodes) {
    List<Criterion> all = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    for (YamlNode node : nodes) {
      Criterion c = criterion(node);
      if (!ids.add(c.id())) {
        node.problem("criterion '" + c.id() + "' stands here twice", "give it another id");
      }
      all.add(c);
      node.refuseOtherKeys();
    }
    return all;
  }

  private Criterion criterion(YamlNode node) {
    String quantity = node.text("quantity");
    Judged judged =
        node.has("judged")
            ? MeasurandsReader.word(node, "judged", Judged.class).orElse(Judged.MEAN)
            : Judged.MEAN;
    Optional<Dimension> dimension = dimension(node, quantity, judged);
    return new Criterion(
        node.text("id"),
        node.text("label"),
        quantity,
        dimension.orElse(Dimension.NUMBER),
        spoken(quantity, dimension.orElse(Dimension.NUMBER)),
        judged,
        target(node, dimension),
        node.yesNo("critical", false),
        weight(node),
        fade(node, dimension),
        node.optionalText("card").orElse(""),
        node.text("why"),
        node.text("source"));
  }

  /** Empty where nobody knows the quantity, and so its units. */
  private Optional<Dimension> dimension(YamlNode node, String quantity, Judged judged) {
    Optional<Dimension> computed = PanelQuantities.find(quantity).map(PanelQuantity::dimension);
    Optional<Dimension> direct = measurands.find(quantity).map(Measurand::dimension);
    if (computed.isEmpty() && direct.isEmpty()) {
      node.problem(
          "there is no quantity '" + quantity + "'",
          "take a measurand's id, or one of " + PanelQuantities.ids());
      return Optional.empty();
    }
    return judged == Judged.SHARE
        ? Optional.of(Dimension.SHARE)
        : computed.or(() -> direct).map(d -> d == Dimension.CHOICE ? Dimension.NUMBER : d);
  }

  /** The units of what is judged, or of what it is computed from; a share of it is none of them. */
  private SpokenUnits spoken(String quantity, Dimension dimension) {
    return PanelQuantities.find(quantity)
        .map(q -> q.like().stream())
        .orElseGet(() -> Stream.of(quantity))
        .flatMap(id -> measurands.find(id).stream())
        .map(Measurand::spoken)
        .filter(s -> s.dimension() == dimension)
        .findFirst()
        .orElseGet(() -> SpokenUnits.usual(dimension));
  }

  private static TargetRange target(YamlNode node, Optional<Dimension> dimension) {
    Optional<YamlNode> written = node.at("target");
    if (written.isEmpty()) {
      node.problem("the criterion has no target", "write 'target: 3 to 5 in'");
    }
    return dimension.flatMap(d -> written.flatMap(n -> QuantityText.range(n, d))).orElse(OPEN);
  }

  private static double fade(YamlNode node, Optional<Dimension> dimension) {
    Optional<YamlNode> written = node.at("fade");
    if (dimension.isEmpty()) {
      return 1;
    }
    Dimension step =
        dimension.get() == Dimension.TEMPERATURE
            ? Dimension.TEMPERATURE_DIFFERENCE
            : dimension.get();
    return positive(node, "fade", written.map(n -> QuantityText.value(n, step)).orElse(0.0));
  }

  /** A yes-or-no rule that only decides on acceptance has no weight: the score moves smoothly. */
  private static double weight(YamlNode node) {
    double weight = node.number("weight");
    if (weight == 0 && node.yesNo("critical", false)) {
      return 0;
    }
    return positive(node, "weight", weight);
  }

  private static double positive(YamlNode node, String key, double value) {
    if (!(value > 0) && !Double.isNaN(value)) {
      node.problem("'" + key + "' is missing or not above 0", "write a " + key + " above 0");
    }
    return value > 0 ? value : 1;
  }
}
