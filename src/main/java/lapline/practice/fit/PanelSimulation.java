package lapline.practice.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import lapline.practice.PanelOutline;
import lapline.trade.spray.CoatField;
import lapline.trade.spray.FanProfile;
import lapline.trade.spray.Heel;
import lapline.trade.spray.HeeledProfile;
import lapline.trade.spray.MassBalance;
import lapline.trade.spray.Pass;

/**
 * Invents the film readings of a panel by spraying it with the deposit model; for the demo workshop
 * and for tests. Chance is passed in, so the same seed gives the same panel.
 *
 * @param coats 1 or more
 */
public record PanelSimulation(Gun gun, Hand hand, int coats, Gauge gauge) {

  /**
   * Gun and what is in it.
   *
   * @param fanWidth metres, at the intended distance
   * @param beta shape of the fan, see {@link FanProfile#beta}
   */
  public record Gun(double fanWidth, double beta, MassBalance paint) {
    public Gun withVolumeSolids(double solids) {
      return new Gun(
          fanWidth, beta, new MassBalance(paint.flow(), paint.transferEfficiency(), solids));
    }
  }

  /**
   * @param noise standard deviation of one reading, metres
   * @param texture standard deviation of the film itself from one place to the next, metres
   */
  public record Gauge(double noise, double texture) {}

  /** Film built at each place of the panel, in metres, as a gauge would read it; never below 0. */
  public Map<Integer, Double> film(PanelOutline panel, RandomGenerator chance) {
    CoatField field = field(panel, chance);
    Map<Integer, Double> film = new TreeMap<>();
    for (PanelOutline.Place place : panel.places()) {
      double read =
          field.filmAt(place.x(), place.y())
              + chance.nextGaussian() * Math.hypot(gauge.noise, gauge.texture);
      film.put(place.number(), Math.max(0, read));
    }
    return film;
  }

  /** All coats as they were sprayed, without gauge. */
  public CoatField field(PanelOutline panel, RandomGenerator chance) {
    List<Pass> passes = new ArrayList<>();
    for (int coat = 0; coat < coats; coat++) {
      passes.addAll(coat(panel, chance));
    }
    return new CoatField(passes);
  }

  /** Passes from below upwards; one lies on the lower edge when the hand does not stray. */
  private List<Pass> coat(PanelOutline panel, RandomGenerator chance) {
    List<Pass> passes = new ArrayList<>();
    double y = -Math.floor(hand.beyondEdges / hand.spacing) * hand.spacing;
    while (y <= panel.height() + hand.beyondEdges) {
      passes.add(pass(y, panel, chance));
      y += hand.spacing * Math.max(0.2, 1 + hand.spacingJitter * chance.nextGaussian());
      if (y > hand.widerStepAt && y - hand.spacing <= hand.widerStepAt) {
        y += hand.widerStepBy;
      }
    }
    return passes;
  }

  private Pass pass(double y, PanelOutline panel, RandomGenerator chance) {
    double speed = hand.speed * Math.max(0.3, 1 + hand.speedJitter * chance.nextGaussian());
    double across = 1 + hand.driftAcross * (y / panel.height() - 0.5);
    double film = gun.paint.strokeDryFilm(speed, gun.fanWidth) * across;
    return new Pass(y, gun.fanWidth, film, profile(), hand.stroke(panel.width()));
  }

  private FanProfile profile() {
    FanProfile upright = FanProfile.beta(gun.beta);
    // half angle of a fan 250 mm wide at 200 mm
    return hand.heel == 0
        ? upright
        : new HeeledProfile(upright, new Heel(hand.heel, Math.toRadians(32)));
  }
}
