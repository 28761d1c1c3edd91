package lapline.trade.blend;

import static lapline.trade.BadInput.isTaken;
import static lapline.trade.BadInput.numbers;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import lapline.trade.BadInput;
import lapline.trade.measure.Estimate;
import org.junit.jupiter.api.Test;
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
                BadInput.of("Outline.new", "corners", 0, () -> new Outline(List.of())),
                BadInput.of(
                    "Outline.new",
                    "corners",
                    2,
                    () -> new Outline(List.of(new Corner(0, 0), new Corner(1, 0)))),
                BadInput.of("Outline.rectangle", "corners", 4, () -> Outline.rectangle(0, 0, 0, 1)),
                BadInput.of(
                    "BlendRoom.new",
                    "primer",
                    1,
                    () -> new BlendRoom(ROOM.panel(), Outline.rectangle(0.5, 0, 1.5, 1))),
                BadInput.of("StepOut.new", "coats", 0, () -> new StepOut(List.of())),
                BadInput.of(
                    "StepOut.new", "reach", -1, () -> new StepOut(List.of(Estimate.of(-1, 0)))),
                BadInput.of(
                    "BlendRoom.toEachEdge", "reach", -1, () -> ROOM.toEachEdge(Estimate.of(-1, 0))),
                BadInput.of("BlendRoom.least", "reach", -1, () -> ROOM.least(Estimate.of(-1, 0))),
                BadInput.of("BlendPlan.new", "primer", -1, () -> plan(-1, 0, 0.05, 0.02)),
                BadInput.of("BlendPlan.new", "sealer", -1, () -> plan(0.02, -1, 0.05, 0.02)),
                BadInput.of("BlendPlan.new", "coat", -1, () -> plan(0.02, 0, -1, 0.02)),
                BadInput.of(
                    "BlendPlan.new",
                    "coats",
                    0,
                    () -> new BlendPlan(ROOM, none, none, List.of(), 0.02)),
                BadInput.of(
                    "BlendPlan.neighboursToBlend",
                    "edge",
                    5,
                    () -> plan(0.02, 0, 0.05, 0.02).neighboursToBlend(Set.of(5))),
                BadInput.of(
                    "BlendPlan.neighboursToBlend",
                    "edge",
                    0,
                    () -> plan(0.02, 0, 0.05, 0.02).neighboursToBlend(Set.of(0))),
                BadInput.of("PanelBreak.new", "length of the break", 0, () -> cleared(0, 0, 0, 0)),
                BadInput.of(
                    "PanelBreak.clear", "sides of the break", 1, () -> cleared(0, 0.3, 0.5, 0.3)),
                BadInput.of(
                    "PanelBreak.clear",
                    "distance from break to repair",
                    0,
                    () -> cleared(0, 0.2, 0.6, 0.2))),
            numbers("Corner.new", "x", x -> new Corner(x, 0)),
            numbers("Corner.new", "y", y -> new Corner(0, y)),
            numbers("Outline.rectangle", "x", x -> Outline.rectangle(x, 0, 1, 1)),
            numbers("BlendRoom.coat", "reach", ROOM::coat, -1),
            numbers("BlendRoom.shareCovered", "reach", ROOM::shareCovered, -1),
            numbers("BlendPlan.new", "keepFree", k -> plan(0.02, 0, 0.05, k), -1))
        .flatMap(s -> s);
  }

  @Test
  void no_public_method_that_takes_a_number_is_left_out() {
    BadInput.leavesNoneOut(
        all(), Corner.class, "AtEdge.new", "Clear.new", "EdgeRoom.new", "SealerCost.new");
  }

  @Test
  void the_ends_of_the_ranges_are_taken() {
    isTaken(v -> plan(v, v, v, v), 0);
    isTaken(ROOM::coat, 0);
    isTaken(v -> new StepOut(List.of(Estimate.of(v, 0))), 0);
    isTaken(e -> plan(0.02, 0, 0.05, 0.02).neighboursToBlend(Set.of((int) e)), 1, 4);
    isTaken(x -> new BlendRoom(ROOM.panel(), Outline.rectangle(0, 0, x, 0.4)), 0.6);
  }
}
