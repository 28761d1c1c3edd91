package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.List;
import lapline.trade.measure.Valid;
import lapline.trade.spray.TransferLoss;

/**
 * The film of a panel as plain numbers, to be kept and to be sprayed again with one thing changed:
 * what a {@link FittedFilm} says, for whoever has no fit. The same equation as {@link StrokeModel}.
 *
 * @param width of the panel along the strokes, metres, more than 0
 * @param height of the panel across them, metres, more than 0
 * @param level mean film of many even passes, metres, more than 0
 * @param step mean step between passes, metres, more than 0
 * @param fanWidth metres, more than 0
 * @param shape of the fan, its beta, more than 0
 * @param lean share by which the upper side of the fan is heavier, finite
 * @param missingAtEnds share of the film that an arc takes at the ends of the strokes, 0 to 0.8
 * @param along change from the left to the right end, as a share, finite
 * @param across change from the lower to the upper edge, as a share, finite
 * @param ends more or less at the ends of the strokes
 * @param coats the passes of each, 1 or more
 * @param strips strokes more or less at single heights
 */
public record StrokeFilm(
    double width,
    double height,
    double level,
    double step,
    double fanWidth,
    double shape,
    double lean,
    double missingAtEnds,
    double along,
    double across,
    List<End> ends,
    List<List<Pass>> coats,
    List<Strip> strips) {

  public StrokeFilm {
    Valid.positive("width", width);
    Valid.positive("height", height);
    Valid.positive("level", level);
    Valid.positive("step", step);
    Valid.positive("fanWidth", fanWidth);
    Valid.positive("shape", shape);
    Valid.finite("lean", lean);
    Valid.between("missingAtEnds", missingAtEnds, 0, new Departure.Arc().most());
    Valid.finite("along", along);
    Valid.finite("across", across);
    Valid.positive("coats", coats.size());
    ends = List.copyOf(ends);
    coats = coats.stream().map(List::copyOf).toList();
    strips = List.copyOf(strips);
  }

  /** A pass at a height in metres, sprayed so many times; both finite. */
  public record Pass(double height, double times) {
    public Pass {
      Valid.finite("height", height);
      Valid.finite("times", times);
    }
  }

  /** A stroke's worth of each coat at a height in metres, so many times; both finite. */
  public record Strip(double height, double times) {
    public Strip {
      Valid.finite("height", height);
      Valid.finite("times", times);
    }
  }

  /**
   * More film right at an end.
   *
   * @param length over which it fades, metres, more than 0
   * @param share of the film, finite
   */
  public record End(Departure.End end, double length, double share) {
    public End {
      Valid.positive("length", length);
      Valid.finite("share", share);
    }
  }

  /**
   * What is done otherwise.
   *
   * @param step metres, more than 0
   * @param distance of the gun over what it was, more than 0
   * @param speed of the hand over what it was, more than 0
   * @param missingAtEnds 0 to 0.8
   * @param coats 1 or more
   */
  public record Change(
      double step, double distance, double speed, double missingAtEnds, int coats) {
    public Change {
      Valid.positive("step", step);
      Valid.positive("distance", distance);
      Valid.positive("speed", speed);
      Valid.between("missingAtEnds", missingAtEnds, 0, new Departure.Arc().most());
      Valid.positive("coats", coats);
    }
  }

  /** No change at all. */
  public Change asItWas() {
    return new Change(step, 1, 1, missingAtEnds, coats.size());
  }

  /**
   * The same panel with this changed: other steps are even ones from the same uppermost pass, a
   * larger distance widens the fan and loses paint, a faster hand leaves less, and a further coat
   * is like those before.
   */
  public StrokeFilm with(Change change) {
    boolean otherStep = change.step() != step;
    List<List<Pass>> passes = new ArrayList<>();
    for (int i = 0; i < change.coats(); i++) {
      List<Pass> coat = coats.get(i % coats.size());
      passes.add(otherStep ? even(coat, change.step(), fanWidth * change.distance()) : coat);
    }
    double arrives = TransferLoss.assumed().arriving(change.distance());
    return new StrokeFilm(
        width,
        height,
        level * step / change.step() * arrives / change.speed() * change.coats() / coats.size(),
        change.step(),
        fanWidth * change.distance(),
        shape,
        lean,
        change.missingAtEnds(),
        along,
        across,
        ends,
        passes,
        strips);
  }

  /** From the pass nearest to the upper edge, over the panel and past it. */
  private List<Pass> even(List<Pass> coat, double step, double fan) {
    double anchor = coat.get(0).height();
    for (Pass p : coat) {
      anchor = Math.abs(p.height() - height) < Math.abs(anchor - height) ? p.height() : anchor;
    }
    double reach = fan / 2 + step;
    List<Pass> even = new ArrayList<>();
    double lowest = anchor - Math.floor((anchor + reach) / step) * step;
    for (int i = 0; lowest + i * step <= height + reach; i++) {
      even.add(new Pass(lowest + i * step, 1));
    }
    return even;
  }

  /**
   * Film at a place, metres.
   *
   * @param x metres from the left edge, finite
   * @param y metres from the lower edge, finite
   */
  public double at(double x, double y) {
    Valid.finite("x", x);
    Valid.finite("y", y);
    FanShape fan = new FanShape(shape, lean);
    double fromMiddle = 2 * x / width - 1;
    double distance = Math.sqrt(1 + StrokeModel.bow(missingAtEnds) * fromMiddle * fromMiddle);
    double lost = Math.pow(distance, -StrokeModel.LOST_WITH_DISTANCE);
    double front = level * step / (fanWidth * coats.size());
    double sum = 0;
    for (List<Pass> coat : coats) {
      for (Pass p : coat) {
        sum += p.times() * across(fan, 2 * (y - p.height()) / (fanWidth * distance));
      }
    }
    double film = front * lost * Math.max(StrokeModel.LEAST_LEFT, share(x, y)) / distance * sum;
    for (Strip s : strips) {
      film += s.times() * front * coats.size() * across(fan, 2 * (y - s.height()) / fanWidth);
    }
    return film;
  }

  private double share(double x, double y) {
    double share = 1 + along * (x / width - 0.5) + across * (y / height - 0.5);
    for (End e : ends) {
      share += e.share() * new Departure.Ends(e.end(), e.length()).share(x, y, width, height);
    }
    return share;
  }

  private static double across(FanShape fan, double u) {
    if (!(Math.abs(u) < FanShape.REACH)) {
      return 0;
    }
    fan.place(u);
    return fan.at;
  }
}
