package lapline.practice.fit;

/**
 * How much film a fitted pattern shifts among the places, thickest less thinnest: what was seen,
 * not what it implies between them.
 *
 * @param metres the difference
 * @param standardUncertainty of it
 */
record PatternSize(double metres, double standardUncertainty) {

  /**
   * @param shapes the pattern's shapes at the places
   * @param amounts of each shape
   */
  static PatternSize of(double[][] shapes, double[] amounts, FilmRegression fit) {
    int least = 0;
    int most = 0;
    for (int i = 1; i < shapes[0].length; i++) {
      double here = at(shapes, amounts, i);
      least = here < at(shapes, amounts, least) ? i : least;
      most = here > at(shapes, amounts, most) ? i : most;
    }
    double[] difference = new double[fit.columns()];
    int first = difference.length - shapes.length;
    for (int j = 0; j < shapes.length; j++) {
      difference[first + j] = shapes[j][most] - shapes[j][least];
    }
    return new PatternSize(
        at(shapes, amounts, most) - at(shapes, amounts, least), fit.uncertaintyOf(difference));
  }

  private static double at(double[][] shapes, double[] amounts, int place) {
    double sum = 0;
    for (int j = 0; j < shapes.length; j++) {
      sum += amounts[j] * shapes[j][place];
    }
    return sum;
  }
}
