package lapline.trade.blend;

import static lapline.trade.BadInput.numbers;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import lapline.trade.BadInput;
import lapline.trade.measure.Estimate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BlendBadInputTest {
  private static final BlendRoom ROOM =
      new BlendRoom(Outline.rectangle(0, 0, 0.6, 0.4), Outline.rectangle(0.2, 0.15, 0.3, 0.25));

  @ParameterizedTest(name = "{0}")
  @MethodSource("all")
  void what_no_blend_can_be_is_refused_by_name(BadInput bad) {
    bad.isRefused();
  }

  private static BlendPlan plan(double primer, double sealer, double coat, double keepFree) {
    return new BlendPlan(
        ROOM,
        Estimate.of(primer, 0),
        Estimate.of(sealer, 0),
        List.of(Estimate.of(coat, 0)),
        keepFree);
  }

  private static Object cleared(double x1, double y1, double x2, double y2) {
    return new PanelBreak(new Corner(x1, y1), new Corner(x2, y2)).clear(ROOM, ROOM.coat(0.02));
  }

  static Stream<BadInput> all() {
    Estimate none = Estimate.of(0, 0);
    return Stream.of(
            Stream.of(
                BadInput.of("outline", "corners", 0, () -> new Outline(List.of())),
                BadInput.of(
                    "outline",
                    "corners",
                    2,
                    () -> new Outline(List.of(new Corner(0, 0), new Corner(1, 0)))),
                BadInput.of(
                    "outline without width", "corners", 4, () -> Outline.rectangle(0, 0, 0, 1)),
                BadInput.of(
                    "repair beside the panel",
                    "primer",
                    1,
                    () -> new BlendRoom(ROOM.panel(), Outline.rectangle(0.5, 0, 1.5, 1))),
                BadInput.of("reaches", "coats", 0, () -> new StepOut(List.of())),
                BadInput.of("reaches", "reach", -1, () -> new StepOut(List.of(Estimate.of(-1, 0)))),
                BadInput.of("edges", "reach", -1, () -> ROOM.toEachEdge(Estimate.of(-1, 0))),
                BadInput.of("least", "reach", -1, () -> ROOM.least(Estimate.of(-1, 0))),
                BadInput.of("plan", "primer", -1, () -> plan(-1, 0, 0.05, 0.02)),
                BadInput.of("plan", "sealer", -1, () -> plan(0.02, -1, 0.05, 0.02)),
                BadInput.of("plan", "coat", -1, () -> plan(0.02, 0, -1, 0.02)),
                BadInput.of(
                    "plan", "coats", 0, () -> new BlendPlan(ROOM, none, none, List.of(), 0.02)),
                BadInput.of(
                    "neighbours",
                    "edge",
                    5,
                    () -> plan(0.02, 0, 0.05, 0.02).neighboursToBlend(Set.of(5))),
                BadInput.of(
                    "neighbours",
                    "edge",
                    0,
                    () -> plan(0.02, 0, 0.05, 0.02).neighboursToBlend(Set.of(0))),
                BadInput.of(
                    "break of no length", "length of the break", 0, () -> cleared(0, 0, 0, 0)),
                BadInput.of(
                    "break that ends on the face",
                    "sides of the break",
                    1,
                    () -> cleared(0, 0.3, 0.5, 0.3)),
                BadInput.of(
                    "break through the repair",
                    "distance from break to repair",
                    0,
                    () -> cleared(0, 0.2, 0.6, 0.2))),
            numbers("corner", "x", x -> new Corner(x, 0)),
            numbers("corner", "y", y -> new Corner(0, y)),
            numbers("rectangle", "x", x -> Outline.rectangle(x, 0, 1, 1)),
            numbers("coat", "reach", ROOM::coat, -1),
            numbers("share", "reach", ROOM::shareCovered, -1),
            numbers("plan", "keepFree", k -> plan(0.02, 0, 0.05, k), -1))
        .flatMap(s -> s);
  }
}
