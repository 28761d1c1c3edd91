package lapline.practice;

import java.util.stream.IntStream;
import lapline.trade.film.VolumeSolids;
import lapline.trade.measure.Dimension;
import lapline.trade.spray.Fan;
import lapline.trade.spray.FanProfile;
import lapline.trade.spray.MassBalance;
import lapline.trade.spray.Overlap;
import lapline.trade.spray.Pass;
import lapline.trade.spray.Ripple;
import lapline.trade.spray.StrokePlan;

/**
 * A way of spraying a flat panel, and what film comes of it: even passes of a fan with tapered
 * ends, far from the panel's ends, at an unchanged flow of paint. What a change at the booth makes
 * of it says {@link SprayChange}.
 *
 * @param wetFilm mean of one coat, metres
 * @param solids share of the unthinned paint's volume that stays
 * @param reducer volume of reducer per volume of paint
 * @param spacing between centrelines, metres
 * @param fanWidth at this distance, metres
 * @param distance of the gun, metres
 * @param speed of the stroke, metres per second
 */
public record SprayPlan(
    double wetFilm,
    double solids,
    double reducer,
    double spacing,
    double fanWidth,
    double distance,
    double speed,
    int coats) {

  /**
   * Share of the paint that reaches the panel. From so little even the most that may be gained from
   * nearer by stays below all of it, so that the figure itself does not matter.
   */
  private static final double ARRIVES = 0.6;

  /** One thing that can be changed, with what it is measured in. */
  public enum Thing {
    WET_FILM(Dimension.FILM, 1e-6, 1e-3),
    SOLIDS(Dimension.SHARE, 0.01, 1),
    REDUCER(Dimension.SHARE, 0, 5),
    SPACING(Dimension.LENGTH, 0.005, 0.5),
    FAN_WIDTH(Dimension.LENGTH, 0.02, 0.6),
    DISTANCE(Dimension.LENGTH, 0.02, 0.6),
    SPEED(Dimension.SPEED, 0.02, 3),
    COATS(Dimension.COUNT, 1, 10);

    private final Dimension dimension;
    private final double least;
    private final double most;

    Thing(Dimension dimension, double least, double most) {
      this.dimension = dimension;
      this.least = least;
      this.most = most;
    }

    /** Beyond these no gun sprays; SI. */
    public double least() {
      return least;
    }

    public double most() {
      return most;
    }

    public Dimension dimension() {
      return dimension;
    }
  }

  public double get(Thing thing) {
    return switch (thing) {
      case WET_FILM -> wetFilm;
      case SOLIDS -> solids;
      case REDUCER -> reducer;
      case SPACING -> spacing;
      case FAN_WIDTH -> fanWidth;
      case DISTANCE -> distance;
      case SPEED -> speed;
      case COATS -> coats;
    };
  }

  /** The same plan with another value, nothing else touched. */
  public SprayPlan with(Thing thing, double to) {
    return new SprayPlan(
        thing == Thing.WET_FILM ? to : wetFilm,
        thing == Thing.SOLIDS ? to : solids,
        thing == Thing.REDUCER ? to : reducer,
        thing == Thing.SPACING ? to : spacing,
        thing == Thing.FAN_WIDTH ? to : fanWidth,
        thing == Thing.DISTANCE ? to : distance,
        thing == Thing.SPEED ? to : speed,
        thing == Thing.COATS ? (int) Math.round(to) : coats);
  }

  /** The same with another value and the fan that goes with it, whatever film comes of it. */
  SprayPlan shapedBy(Thing thing, double to) {
    SprayPlan shaped = with(thing, to);
    return thing == Thing.DISTANCE
        ? shaped.with(Thing.FAN_WIDTH, new Fan(fanWidth, distance).widthAt(to))
        : shaped;
  }

  /**
   * One coat of it as a stroke. How much of the paint arrives is not asked for, and film goes by
   * how that changes alone, so {@link #ARRIVES} is taken.
   */
  StrokePlan stroke() {
    MassBalance paint =
        new MassBalance(
            wetFilm * speed * spacing / ARRIVES,
            ARRIVES,
            new VolumeSolids(solids).thinnedBy(reducer).share());
    return new StrokePlan(
        paint, new Fan(fanWidth, distance), FanProfile.parabola(), distance, speed, spacing);
  }

  /** This paint in as many coats, laid on as this stroke lays it. */
  SprayPlan laid(StrokePlan stroke) {
    return new SprayPlan(
        stroke.paint().meanWetFilm(stroke.speed(), stroke.spacing()),
        solids,
        reducer,
        stroke.spacing(),
        stroke.fanWidth(),
        stroke.distance(),
        stroke.speed(),
        coats);
  }

  public double overlap() {
    return 1 - spacing / fanWidth;
  }

  /**
   * Whether passes lie so that their film can be computed: up to twenty fans deep, no bare strip
   * wider than a fan.
   */
  public boolean isWithinReach() {
    return overlap() >= -1 && overlap() <= 0.95;
  }

  /** Wet film that one single pass leaves over the width of its fan, on the mean, metres. */
  public double passFilm() {
    return wetFilm * spacing / fanWidth;
  }

  /** Dry film of all coats, metres. */
  public double dryFilm() {
    return coats * new VolumeSolids(solids).thinnedBy(reducer).dryFrom(wetFilm);
  }

  /** How even one coat is, in units of its mean. */
  public Ripple ripple() {
    return Ripple.ofEvenPasses(FanProfile.parabola(), overlap());
  }

  /** Dry film of all coats at a height above the middle of a pass, metres. */
  public double dryFilmAt(double y) {
    double strokeMean = dryFilm() * spacing / fanWidth;
    Pass pass = Pass.steady(0, fanWidth, strokeMean, FanProfile.parabola());
    int reach = (int) Math.ceil(fanWidth / spacing) + 1;
    long nearest = Math.round(y / spacing);
    return IntStream.rangeClosed(-reach, reach)
        .mapToDouble(k -> pass.filmAt(0, y - (nearest + k) * spacing))
        .sum();
  }

  /** Step between passes that gives an overlap with this fan, metres. */
  public double spacingFor(double overlap) {
    return Overlap.spacing(overlap, fanWidth);
  }
}
