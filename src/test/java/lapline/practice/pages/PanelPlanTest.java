package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lapline.content.ContentFiles;
import lapline.pages.Messages;
import lapline.pages.drawing.Point;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.TypeFace;
import lapline.practice.PanelOutline;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTasks;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The bare panel of every task, as large and as small as it is drawn. */
class PanelPlanTest {
  private static final double TYPE = 3;

  record Sized(PanelOutline panel, double width, String name) {
    @Override
    public String toString() {
      return name + ", " + width + " wide";
    }
  }

  static Stream<Sized> panels() {
    List<PracticeTask> tasks = PracticeTasks.read(new ContentFiles(Path.of(""))).all();
    assertThat(tasks).hasSizeGreaterThanOrEqualTo(5);
    return tasks.stream()
        .flatMap(
            t ->
                IntStream.of(69, 78, 90, 105, 130)
                    .mapToObj(wide -> new Sized(t.panel(), wide, t.id())));
  }

  @ParameterizedTest
  @MethodSource("panels")
  void no_line_and_no_place_lies_under_a_name(Sized sized) {
    PanelScale scale = PanelScale.fitting(sized.panel(), 0, 0, sized.width(), 1000);
    PanelPlan plan =
        new PanelPlan(scale, TYPE, new PhraseWriter(new Messages(), UnitSystem.METRIC));
    List<Line2D> lines = new ArrayList<>(sides(scale.edge()));
    sized.panel().features().forEach(f -> lines.addAll(sides(scale.ring(f.corners()))));
    for (Shape.Words name : names(plan)) {
      Rectangle2D box = box(name);
      assertThat(lines).as(name.text()).noneMatch(line -> line.intersects(box));
      assertThat(sized.panel().places())
          .as(name.text())
          .noneMatch(p -> distance(box, scale.x(p.x()), scale.y(p.y())) < TYPE * 0.85);
    }
  }

  private static List<Shape.Words> names(PanelPlan plan) {
    return plan.features().stream()
        .flatMap(s -> s instanceof Shape.Words words ? Stream.of(words) : Stream.empty())
        .toList();
  }

  /** The letters with what hangs below the line. */
  private static Rectangle2D box(Shape.Words words) {
    double width = TypeFace.width(words.text(), words.size());
    return new Rectangle2D.Double(
        words.x() - width / 2, words.y() - 0.75 * words.size(), width, 0.95 * words.size());
  }

  private static double distance(Rectangle2D box, double x, double y) {
    double across = Math.max(0, Math.max(box.getMinX() - x, x - box.getMaxX()));
    double down = Math.max(0, Math.max(box.getMinY() - y, y - box.getMaxY()));
    return Math.hypot(across, down);
  }

  private static List<Line2D> sides(List<Point> ring) {
    List<Line2D> sides = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      Point from = ring.get(i);
      Point to = ring.get((i + 1) % ring.size());
      sides.add(new Line2D.Double(from.x(), from.y(), to.x(), to.y()));
    }
    return sides;
  }
}
