package lapline.demo;

import java.util.HashMap;
import java.util.Map;
import lapline.practice.Cell;
import lapline.practice.PracticeTask;
import lapline.practice.fit.Hand;
import lapline.practice.fit.PanelSimulation;
import lapline.trade.spray.MassBalance;

/** The film that a hand lays, sprayed by the deposit model, with its gloss and its climate. */
final class FilmHabits {
  private static final double SOLIDS = 0.4;
  private static final double EFFICIENCY = 0.65;
  private static final double NOISE = 1e-6;

  private final PanelDay day;
  private final GunHabits gun;
  private final int coats;
  private final Map<Integer, Double> before = new HashMap<>();
  private final Map<Integer, Double> built;

  FilmHabits(PanelDay day, GunHabits gun, int coats) {
    this.day = day;
    this.gun = gun;
    this.coats = Math.max(1, coats);
    PracticeTask task = day.task();
    task.panel()
        .places()
        .forEach(p -> before.put(p.number(), 98e-6 + 2e-6 * day.chance().nextGaussian()));
    this.built = task.field("film-after").isPresent() ? sprayed() : Map.of();
  }

  Map<String, Habit> all() {
    double air = 21 + 2.5 * day.chance().nextGaussian();
    double slip = day.form().slip();
    Map<String, Habit> all = new HashMap<>();
    all.put("air-temperature", Habit.of(c -> air));
    all.put("panel-temperature", Habit.of(c -> air - 0.8));
    all.put("humidity", Habit.of(c -> Math.min(0.85, Math.max(0.2, day.near(0.48, 0.12, 0)))));
    all.put("film-before", Habit.of(c -> before.get(c.place())));
    all.put(
        "film-after", Habit.of(c -> before.get(c.place()) + built.getOrDefault(c.place(), 0.0)));
    all.put("wet-film", Habit.of(this::comb));
    all.put("gloss-60", Habit.of(c -> day.near(92 - 16 * slip, 0.008, 0.03)));
    all.put("gloss-20", Habit.of(c -> day.near(84 - 22 * slip, 0.012, 0.04)));
    return all;
  }

  private Map<Integer, Double> sprayed() {
    var simulated =
        new PanelSimulation(paint(), hand(), coats, new PanelSimulation.Gauge(NOISE, NOISE));
    return simulated.film(day.task().panel(), day.chance());
  }

  /** A gun that gives the wanted film when the hand does what the task wants. */
  private PanelSimulation.Gun paint() {
    double wantedSpacing = day.aim("fan-width", 0.23) * (1 - day.aim("overlap", 0.7));
    double coat = day.aim("film-build", 55e-6) / coats;
    double flow = coat * day.aim("stroke-speed", 0.4) * wantedSpacing / (EFFICIENCY * SOLIDS);
    MassBalance balance = new MassBalance(flow, EFFICIENCY, SOLIDS * gun.solidsLeft);
    return new PanelSimulation.Gun(gun.fan, 2.5, balance);
  }

  private Hand hand() {
    double slip = day.form().slip();
    double intended = day.aim("distance-mean", 0.11);
    return Hand.steady(gun.spacing, gun.speed)
        .straying(0.01 + 0.1 * slip, 0.01 + 0.1 * slip)
        .distances(gun.distanceAt(-1) / intended, gun.distanceAt(1) / intended);
  }

  /** Wet film is the coat's dry film before its solvent went. */
  private double comb(Cell cell) {
    double dry = built.getOrDefault(cell.place(), 55e-6) / coats;
    return dry / (0.45 * gun.solidsLeft);
  }
}
