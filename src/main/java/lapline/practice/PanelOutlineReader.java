package lapline.practice;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import lapline.content.YamlNode;
import lapline.practice.PanelOutline.Feature;
import lapline.practice.PanelOutline.Place;
import lapline.practice.PanelOutline.Point;
import lapline.trade.measure.Dimension;

/** Reads the panel of a practice task; points are written {@code [x, y]} in millimetres. */
final class PanelOutlineReader {
  private static final List<String> KINDS = List.of("spot", "aperture", "edge", "area");
  private static final double MILLIMETRE = 1e-3;

  private double width;
  private double height;

  PanelOutline read(YamlNode node) {
    width = node.at("width").map(n -> QuantityText.value(n, Dimension.LENGTH)).orElse(Double.NaN);
    height = node.at("height").map(n -> QuantityText.value(n, Dimension.LENGTH)).orElse(Double.NaN);
    if (!(width > 0) || !(height > 0)) {
      node.problem("the panel has no size", "write width and height, like 'width: 600 mm'");
    }
    PanelOutline panel =
        new PanelOutline(
            width,
            height,
            node.optionalList("outline").stream().map(this::point).toList(),
            places(node.optionalList("places")),
            node.optionalList("features").stream().map(this::feature).toList());
    node.refuseOtherKeys();
    return panel;
  }

  private List<Place> places(List<YamlNode> nodes) {
    List<Place> places = new ArrayList<>();
    Set<Integer> numbers = new HashSet<>();
    for (YamlNode n : nodes) {
      Point at = n.at("at").map(this::point).orElse(new Point(0, 0));
      Place place =
          new Place(n.wholeNumber("number"), at.x(), at.y(), n.optionalText("name").orElse(""));
      if (!numbers.add(place.number())) {
        n.problem("place " + place.number() + " stands here twice", "number the places 1, 2, 3 …");
      }
      places.add(place);
      n.refuseOtherKeys();
    }
    return places;
  }

  private Feature feature(YamlNode node) {
    Feature feature =
        new Feature(
            node.text("id"),
            node.oneOf("kind", KINDS),
            node.text("label"),
            node.list("corners").stream().map(this::point).toList());
    node.refuseOtherKeys();
    return feature;
  }

  private Point point(YamlNode node) {
    List<YamlNode> xy = node.items();
    if (xy.size() != 2) {
      node.problem("a point has two numbers", "write it like [120, 80], in millimetres");
      return new Point(0, 0);
    }
    Point p = new Point(xy.get(0).number() * MILLIMETRE, xy.get(1).number() * MILLIMETRE);
    if (p.x() < 0 || p.y() < 0 || p.x() > width || p.y() > height) {
      node.problem("this point is off the panel", "stay between 0 and the panel's size");
    }
    return p;
  }
}
