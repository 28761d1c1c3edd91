package lapline.practice;

import java.util.List;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.TargetRange;

/**
 * The dry film over the panel, estimated between the reading places; all in metres.
 *
 * @param columns number of grid columns along x; the grid covers the panel evenly
 * @param film row by row from the lower edge, {@code columns × rows} values; NaN off the panel
 * @param shareInside estimated share of the panel's area inside the target
 * @param shareLow lower end of its 95 % interval
 * @param shareHigh upper end of its 95 % interval
 * @param areas thin and thick areas in words, worst first, at most four
 * @param setAside the places whose reading fits nothing around it and counts for nothing in all
 *     this, rising
 */
public record FilmField(
    double width,
    double height,
    int columns,
    int rows,
    List<Double> film,
    TargetRange target,
    double mean,
    double spread,
    double shareInside,
    double shareLow,
    double shareHigh,
    List<Area> areas,
    List<PlaceFilm> places,
    List<Integer> setAside) {

  public FilmField {
    // a panel that was judged before this was kept has none
    setAside = setAside == null ? List.of() : List.copyOf(setAside);
  }

  /** The places whose reading counts in all this. */
  public List<PlaceFilm> counted() {
    return places.stream().filter(p -> !isSetAside(p)).toList();
  }

  public boolean isSetAside(PlaceFilm place) {
    return setAside.contains(place.place());
  }

  /** One place's build. */
  public record PlaceFilm(int place, double x, double y, double film, double standardUncertainty) {

    public Estimate estimate() {
      return Estimate.of(film, standardUncertainty);
    }

    /** What the place is called. */
    public String label() {
      return PanelOutline.nameOf(place);
    }
  }

  /** A region outside the range: {@code where} is a message key such as {@code area.lower-edge}. */
  public record Area(String where, boolean thin, double by, double shareOfPanel) {}
}
