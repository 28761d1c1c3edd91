package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import lapline.trade.measure.Valid;

/**
 * Where to read the film of a panel so that the faults of a hand can be told: places chosen one
 * after the other, each the one that adds most to the {@link Worth} of those before, then each once
 * more with all others there (a D_s-optimal design found by exchange, see Atkinson and Donev,
 * Optimum Experimental Designs, 1992; from memory).
 *
 * <p>Deterministic, so that a task's sheet stays the same. Where the first pass will lie nobody
 * knows, so that what places tell is the mean over where it may; and since the passes of a real
 * hand stray, no two places lie side by side.
 */
public final class ReadingPlan {
  /** Fewer than this cannot tell the faults and the film apart. */
  public static final int LEAST = StrokeReading.LEAST_PLACES;

  public static final int MOST = 200;

  /** What a hand leaves to chance at any place, as a share of the film; course assumption. */
  private static final double HAND = 0.03;

  /** Places keep apart by this share of the distance that as many even ones would have. */
  private static final double APART = 0.5;

  /** Places that mirror each other are worth the same, whatever the last digits say. */
  private static final double ALIKE = 1e-9;

  private final List<Spot> spots;
  private final List<Lying> lyings;
  private final double apart;

  /** The passes as they may lie, with the slopes of the film at the spots and what those tell. */
  private record Lying(double[][] slopes, Worth worth) {
    void add(int spot, int sign) {
      worth.add(slopes[spot], sign);
    }
  }

  private ReadingPlan(PassPlan plan, int count, double uncertainty) {
    this(plan, PanelSpots.of(plan), count, uncertainty);
  }

  private ReadingPlan(PassPlan plan, List<Spot> spots, int count, double uncertainty) {
    StrokeModel model = model(plan);
    this.spots = spots;
    this.lyings =
        Arrays.stream(FirstGuess.phases(plan))
            .mapToObj(
                phase -> new Lying(slopes(model, phase, spots, uncertainty), new Worth(model)))
            .toList();
    this.apart = APART * Math.sqrt(plan.width() * plan.height() / count);
  }

  private static StrokeModel model(PassPlan plan) {
    return new StrokeModel(plan, new Forms(plan).beside(List.of()));
  }

  /** For a film of 1, so that slopes are shares of the film. */
  private static double[][] slopes(
      StrokeModel model, double phase, List<Spot> spots, double uncertainty) {
    double[] parameters = new double[model.parameters()];
    for (int coat = 0; StrokeModel.SHIFT + coat < model.first(); coat++) {
      double lies = (coat + 1) * phase;
      parameters[StrokeModel.SHIFT + coat] = (lies - Math.rint(lies)) * model.plan().meanStep();
    }
    StrokeModel.At at = model.at(parameters);
    double scatter = Math.hypot(HAND, uncertainty);
    double[][] slopes = new double[spots.size()][];
    for (int i = 0; i < slopes.length; i++) {
      at.film(spots.get(i).x(), spots.get(i).y());
      slopes[i] = at.slopes.clone();
      for (int j = 0; j < slopes[i].length; j++) {
        slopes[i][j] /= scatter;
      }
    }
    return slopes;
  }

  /**
   * @param plan of the passes, as they are meant
   * @param count of readings, {@link #LEAST} to {@link #MOST}
   * @param uncertainty of one reading as a share of the film, more than 0
   * @return places from below upwards
   */
  public static List<Spot> of(PassPlan plan, int count, double uncertainty) {
    Valid.between("count", count, LEAST, MOST);
    Valid.positive("uncertainty", uncertainty);
    ReadingPlan search = new ReadingPlan(plan, count, uncertainty);
    List<Integer> chosen = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      search.addBest(chosen);
    }
    for (int i = 0; i < count; i++) {
      search.add(chosen.remove(0), -1);
      search.addBest(chosen);
    }
    return chosen.stream()
        .map(search.spots::get)
        .sorted(Comparator.comparingDouble(Spot::y).thenComparingDouble(Spot::x))
        .toList();
  }

  /**
   * What readings at these places would tell about the faults: 0 for nothing; more is better, and 1
   * more is a fault known e^½ times better in the mean.
   *
   * @param places 1 or more
   * @param uncertainty of one reading as a share of the film, more than 0
   */
  public static double worth(PassPlan plan, List<Spot> places, double uncertainty) {
    Valid.positive("places", places.size());
    Valid.positive("uncertainty", uncertainty);
    ReadingPlan given = new ReadingPlan(plan, places, places.size(), uncertainty);
    for (int i = 0; i < places.size(); i++) {
      given.add(i, 1);
    }
    return given.worth();
  }

  private void add(int spot, int sign) {
    lyings.forEach(l -> l.add(spot, sign));
  }

  private double worth() {
    return lyings.stream().mapToDouble(l -> l.worth.value()).average().orElseThrow();
  }

  private void addBest(List<Integer> chosen) {
    int best = -1;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < spots.size(); i++) {
      if (standsApart(i, chosen)) {
        add(i, 1);
        double value = worth();
        add(i, -1);
        if (value > most + ALIKE) {
          most = value;
          best = i;
        }
      }
    }
    chosen.add(best);
    add(best, 1);
  }

  private boolean standsApart(int spot, List<Integer> chosen) {
    return chosen.stream().allMatch(c -> spots.get(c).from(spots.get(spot)) >= apart);
  }
}
