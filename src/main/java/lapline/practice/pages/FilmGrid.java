package lapline.practice.pages;

import lapline.practice.FilmField;

/**
 * The film field carried to the panel's very edges: its values stand at the middles of the cells,
 * here a rim is added, and what lies off the panel takes the nearest value on it (the drawing is
 * cut to the outline).
 */
final class FilmGrid {
  private final FilmField field;
  private final double[][] film;

  FilmGrid(FilmField field) {
    this.field = field;
    this.film = new double[field.rows() + 2][field.columns() + 2];
    for (int row = 0; row < film.length; row++) {
      for (int column = 0; column < film[row].length; column++) {
        film[row][column] =
            field
                .film()
                .get(
                    clamp(row - 1, field.rows()) * field.columns()
                        + clamp(column - 1, field.columns()));
      }
    }
    for (int pass = 0; pass < film.length + film[0].length && spread(); pass++) {
      // one ring of unknown values is filled each time
    }
  }

  int rows() {
    return film.length;
  }

  int columns() {
    return film[0].length;
  }

  double film(int row, int column) {
    return film[row][column];
  }

  /** Metres from the panel's left edge. */
  double x(int column) {
    return spot(column, field.columns(), field.width());
  }

  /** Metres from the panel's lower edge. */
  double y(int row) {
    return spot(row, field.rows(), field.height());
  }

  private static double spot(int index, int cells, double length) {
    return Math.max(0, Math.min(1, (index - 0.5) / cells)) * length;
  }

  private static int clamp(int index, int size) {
    return Math.max(0, Math.min(size - 1, index));
  }

  /** Fills unknown values beside known ones; whether any were left to fill. */
  private boolean spread() {
    double[][] before = new double[film.length][];
    boolean unknown = false;
    for (int row = 0; row < film.length; row++) {
      before[row] = film[row].clone();
    }
    for (int row = 0; row < film.length; row++) {
      for (int column = 0; column < film[row].length; column++) {
        if (Double.isNaN(before[row][column])) {
          film[row][column] = meanAround(before, row, column);
          unknown = true;
        }
      }
    }
    return unknown;
  }

  private static double meanAround(double[][] film, int row, int column) {
    double sum = 0;
    int count = 0;
    for (int r = Math.max(0, row - 1); r <= Math.min(film.length - 1, row + 1); r++) {
      for (int c = Math.max(0, column - 1); c <= Math.min(film[r].length - 1, column + 1); c++) {
        if (!Double.isNaN(film[r][c])) {
          sum += film[r][c];
          count++;
        }
      }
    }
    return count == 0 ? Double.NaN : sum / count;
  }
}
