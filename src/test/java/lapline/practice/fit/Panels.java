package lapline.practice.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import lapline.practice.Cell;
import lapline.practice.Criterion;
import lapline.practice.PanelEntry;
import lapline.practice.PanelOutline;
import lapline.practice.PanelScore;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTask.MixPart;
import lapline.practice.Reading;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.TargetRange;
import lapline.trade.spray.MassBalance;

/** Practice panels for the tests of this package: 24 by 18 inches, clear, 50 to 65 µm. */
final class Panels {
  static final double WIDTH = 0.61;
  static final double HEIGHT = 0.46;
  static final double FAN = 0.23;
  static final double NOISE = 1.5e-6;
  static final TargetRange CLEAR = new TargetRange(50e-6, 65e-6);

  private Panels() {}

  /** Places on an even grid, the outer ones 30 mm from the edge, row by row from below. */
  static PanelOutline outline(int columns, int rows) {
    List<PanelOutline.Place> places = new ArrayList<>();
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        places.add(
            new PanelOutline.Place(
                places.size() + 1,
                0.03 + (WIDTH - 0.06) * c / (columns - 1),
                0.03 + (HEIGHT - 0.06) * r / (rows - 1),
                ""));
      }
    }
    return new PanelOutline(WIDTH, HEIGHT, List.of(), places, List.of());
  }

  /** Places spread evenly but in no rows, so that no stripe can hide between them. */
  static PanelOutline staggered(int count) {
    List<PanelOutline.Place> places = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double golden = i * 0.6180339887498949;
      places.add(
          new PanelOutline.Place(
              i + 1,
              0.03 + (WIDTH - 0.06) * (golden - Math.floor(golden)),
              0.03 + (HEIGHT - 0.06) * (i + 0.5) / count,
              ""));
    }
    return new PanelOutline(WIDTH, HEIGHT, List.of(), places, List.of());
  }

  /** Five columns of three, each column a fifteenth of the height further up or down. */
  static PanelOutline fifteenHeights() {
    int[] shift = {0, 3, 1, 4, 2};
    List<PanelOutline.Place> places = new ArrayList<>();
    for (int i = 0; i < 15; i++) {
      double up = (i / 5 + (shift[i % 5] + 0.5) / 5) / 3;
      places.add(
          new PanelOutline.Place(
              i + 1, 0.03 + (WIDTH - 0.06) * (i % 5) / 4, 0.03 + (HEIGHT - 0.06) * up, ""));
    }
    return new PanelOutline(WIDTH, HEIGHT, List.of(), places, List.of());
  }

  /** The same panel with places more. */
  static PanelOutline with(PanelOutline panel, List<PanelScore.NextPlace> more) {
    List<PanelOutline.Place> places = new ArrayList<>(panel.places());
    for (PanelScore.NextPlace p : more) {
      places.add(new PanelOutline.Place(places.size() + 1, p.x(), p.y(), ""));
    }
    return new PanelOutline(panel.width(), panel.height(), List.of(), places, List.of());
  }

  static PracticeTask task(PanelOutline panel) {
    return new PracticeTask(
        "clear/two-coats",
        "clear",
        "Two coats",
        "v",
        "clear",
        "",
        panel,
        2,
        2,
        12,
        List.of(),
        List.of(),
        List.of(),
        List.of(
            criterion("film", "film-build", Dimension.FILM, CLEAR),
            criterion("overlap", "overlap", Dimension.SHARE, new TargetRange(0.65, 0.75))),
        List.of(),
        List.of(),
        List.of(),
        List.of(new MixPart("Clear", 4), new MixPart("Hardener", 1), new MixPart("Reducer", 1)));
  }

  private static Criterion criterion(
      String id, String quantity, Dimension dimension, TargetRange target) {
    return new Criterion(
        id, id, quantity, dimension, null, Criterion.Judged.MEAN, target, true, 1, 1, "", "", "");
  }

  /** A gun that builds 57.5 µm in two coats with steady passes of this step at 0.4 m/s. */
  static PanelSimulation.Gun gun(double spacing) {
    double solids = 0.45;
    double transfer = 0.65;
    double flow = 57.5e-6 / 2 * 0.4 * spacing / (solids * transfer);
    return new PanelSimulation.Gun(FAN, 2, new MassBalance(flow, transfer, solids));
  }

  static PanelSimulation sprayed(Hand hand) {
    return new PanelSimulation(
        gun(hand.spacing), hand, 2, new PanelSimulation.Gauge(NOISE, 0.5e-6));
  }

  static PanelEntry entry(Map<Integer, Double> film, Reading... more) {
    List<Reading> readings = new ArrayList<>(List.of(more));
    film.forEach((place, f) -> readings.add(reading(Cell.place("film-after", place), f, NOISE)));
    return PanelEntry.of(readings);
  }

  static PanelEntry entry(
      PanelSimulation simulation, PanelOutline panel, long seed, Reading... more) {
    return entry(simulation.film(panel, new Random(seed)), more);
  }

  static Reading reading(Cell cell, double value, double u) {
    return new Reading(cell, value, u, "");
  }

  /** A step between passes, as written down for one coat. */
  static Reading[] steps(double... gaps) {
    Reading[] steps = new Reading[gaps.length];
    for (int i = 0; i < gaps.length; i++) {
      steps[i] = reading(Cell.pass("pass-spacing", 1, i + 2), gaps[i], 0.003);
    }
    return steps;
  }
}
