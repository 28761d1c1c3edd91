package lapline.trade.spray;

import lapline.trade.measure.Valid;

/**
 * The film that a coat leaves over a whole grid of places at once.
 *
 * <p>Same numbers as {@link CoatField#filmAt} at each place, to 1e-12 relative, but the hand is
 * asked once for each column instead of once for each place, a pass is not looked for outside its
 * fan, and one whose distance stays gives a profile once for each row: where its speed stays too,
 * the row is one number.
 */
public final class DepositField {
  private final FilmGrid grid;
  private final double[] film;

  private DepositField(FilmGrid grid) {
    this.grid = grid;
    this.film = new double[grid.columns() * grid.rows()];
  }

  /** The film of a coat at the places of a grid, metres; 0 where no pass reaches. */
  public static DepositField of(CoatField coat, FilmGrid grid) {
    DepositField field = new DepositField(grid);
    coat.passes().forEach(field::add);
    return field;
  }

  /** The places. */
  public FilmGrid grid() {
    return grid;
  }

  /**
   * Film in metres.
   *
   * @param column from 0 at the left; row from 0 below
   * @throws lapline.trade.measure.MeasureException outside the grid
   */
  public double at(int column, int row) {
    Valid.between("column", column, 0, grid.columns() - 1.0);
    Valid.between("row", row, 0, grid.rows() - 1.0);
    return film[row * grid.columns() + column];
  }

  /** All of it in metres, row by row from below; a copy. */
  public double[] film() {
    return film.clone();
  }

  /** Mean, spread and extremes, metres. */
  public Ripple ripple() {
    return Ripple.ofEqualAreas(film);
  }

  /**
   * Dry paint on the rectangle, m³: film times area, cell by cell.
   *
   * <p>Accuracy: that of the grid; an end of a fan or stroke within a cell counts as at its middle.
   */
  public double volume() {
    double sum = 0;
    for (double f : film) {
      sum += f;
    }
    return sum * grid.cell();
  }

  private void add(Pass pass) {
    double[] distance = new double[grid.columns()];
    double[] gain = new double[grid.columns()];
    boolean straight = true;
    boolean even = true;
    double furthest = 0;
    for (int i = 0; i < distance.length; i++) {
      distance[i] = pass.stroke().distance(grid.x(i));
      gain[i] = pass.meanFilm() * pass.stroke().deposit(grid.x(i)) / distance[i];
      straight &= distance[i] == distance[0];
      even &= gain[i] == gain[0];
      furthest = Math.max(furthest, distance[i]);
    }
    int first = grid.firstRowFrom(pass.centreline() - pass.fanWidth() * furthest / 2);
    int end = grid.endRowAt(pass.centreline() + pass.fanWidth() * furthest / 2);
    for (int row = first; row < end; row++) {
      double across = 2 * (grid.y(row) - pass.centreline()) / pass.fanWidth();
      if (straight) {
        addStraight(row, pass.profile().at(across / distance[0]), gain, even);
      } else {
        addVarying(row, across, pass.profile(), distance, gain);
      }
    }
  }

  /** The same profile value along the whole row. */
  private void addStraight(int row, double profile, double[] gain, boolean even) {
    int from = row * gain.length;
    if (even) {
      double value = profile * gain[0];
      for (int i = from; i < from + gain.length; i++) {
        film[i] += value;
      }
      return;
    }
    for (int i = 0; i < gain.length; i++) {
      film[from + i] += profile * gain[i];
    }
  }

  private void addVarying(
      int row, double across, FanProfile profile, double[] distance, double[] gain) {
    int from = row * gain.length;
    double reach = Math.abs(across);
    for (int i = 0; i < gain.length; i++) {
      if (reach <= distance[i]) {
        film[from + i] += profile.at(across / distance[i]) * gain[i];
      }
    }
  }
}
