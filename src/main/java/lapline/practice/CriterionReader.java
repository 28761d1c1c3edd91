package lapline.practice;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lapline.content.YamlNode;
import lapline.practice.Criterion.Judged;
import lapline.practice.quantity.PanelQuantities;
import lapline.practice.quantity.PanelQuantity;
import lapline.trade.measure.Dimension;
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
    Dimension dimension = dimension(node, quantity, judged);
    return new Criterion(
        node.text("id"),
        node.text("label"),
        quantity,
        dimension,
        judged,
        node.at("target")
            .flatMap(n -> QuantityText.range(n, dimension))
            .orElseGet(() -> noTarget(node)),
        node.yesNo("critical", false),
        positive(node, "weight", node.number("weight")),
        positive(node, "fade", fade(node, dimension)),
        node.optionalText("card").orElse(""),
        node.text("why"),
        node.text("source"));
  }

  private Dimension dimension(YamlNode node, String quantity, Judged judged) {
    Optional<Dimension> computed = PanelQuantities.find(quantity).map(PanelQuantity::dimension);
    Optional<Dimension> direct = measurands.find(quantity).map(Measurand::dimension);
    if (computed.isEmpty() && direct.isEmpty()) {
      node.problem(
          "there is no quantity '" + quantity + "'",
          "take a measurand's id, or one of " + PanelQuantities.ids());
    }
    if (judged == Judged.SHARE) {
      return Dimension.SHARE;
    }
    Dimension d = computed.or(() -> direct).orElse(Dimension.NUMBER);
    return d == Dimension.CHOICE ? Dimension.NUMBER : d;
  }

  private static TargetRange noTarget(YamlNode node) {
    if (!node.has("target")) {
      node.problem("the criterion has no target", "write 'target: 3 to 5 in'");
    }
    return OPEN;
  }

  private static double fade(YamlNode node, Dimension dimension) {
    Dimension step =
        dimension == Dimension.TEMPERATURE ? Dimension.TEMPERATURE_DIFFERENCE : dimension;
    return node.at("fade").map(n -> QuantityText.value(n, step)).orElse(0.0);
  }

  private static double positive(YamlNode node, String key, double value) {
    if (!(value > 0) && !Double.isNaN(value)) {
      node.problem("'" + key + "' is missing or not above 0", "write a " + key + " above 0");
    }
    return value > 0 ? value : 1;
  }
}
