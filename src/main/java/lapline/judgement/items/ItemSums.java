package lapline.judgement.items;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the papers of many people say about one item, from sums that a database can add up: how hard
 * it is, and whether those who know the rest know it too.
 *
 * <p>Classical item analysis: difficulty is the mean mark, and the item-rest correlation is
 * Pearson's between the item's mark and the marks of all other items on the same paper (Henrysson,
 * Psychometrika 28, 1963; Crocker &amp; Algina 1986; both from memory). All sums run over the
 * papers that had the item.
 *
 * @param papers how many had the item, 0 or more
 * @param marks sum of the item's marks, each 0 to 1
 * @param markSquares sum of their squares
 * @param rests sum of the papers' other marks
 * @param restSquares sum of their squares
 * @param products sum of mark times rest
 */
public record ItemSums(
    long papers,
    double marks,
    double markSquares,
    double rests,
    double restSquares,
    double products) {
  public static final ItemSums NONE = new ItemSums(0, 0, 0, 0, 0, 0);

  /** The normal distribution's two-sided 95 % point. */
  private static final double TWO_SIDED_95 = 1.959963984540054;

  /** Below this share of its greatest size a variance is rounding. */
  private static final double ROUNDING = 1e-12;

  public ItemSums {
    if (papers < 0) {
      throw new IllegalArgumentException("papers is " + papers + "; it must be 0 or more");
    }
  }

  /** One paper: the mark of the item and the sum of the others. */
  public static ItemSums ofPaper(double mark, double rest) {
    return new ItemSums(1, mark, mark * mark, rest, rest * rest, mark * rest);
  }

  public ItemSums and(ItemSums more) {
    return new ItemSums(
        papers + more.papers,
        marks + more.marks,
        markSquares + more.markSquares,
        rests + more.rests,
        restSquares + more.restSquares,
        products + more.products);
  }

  /** Mean mark, 0 to 1: the higher, the easier; nothing without papers. */
  public OptionalDouble difficulty() {
    return papers == 0 ? OptionalDouble.empty() : OptionalDouble.of(marks / papers);
  }

  /** Mean of the other marks; nothing without papers. */
  public OptionalDouble meanRest() {
    return papers == 0 ? OptionalDouble.empty() : OptionalDouble.of(rests / papers);
  }

  /** Item-rest correlation, −1 to 1; nothing where all marks or all rests are alike. */
  public OptionalDouble itemRest() {
    double mark = spread(markSquares, marks);
    double rest = spread(restSquares, rests);
    if (mark <= ROUNDING * markSquares || rest <= ROUNDING * restSquares) {
      return OptionalDouble.empty();
    }
    double together = products - marks * rests / papers;
    return OptionalDouble.of(Math.max(-1, Math.min(1, together / Math.sqrt(mark * rest))));
  }

  /**
   * Between which limits the item-rest correlation of all such people lies, with 95 % confidence:
   * Fisher's transform with standard error 1/√(n − 3), the limits then brought back (Fisher, Metron
   * 1, 1921; from memory). Worked out for two normal quantities; with marks of 0 and 1 it is an
   * approximation, the rougher the easier or the harder the item.
   *
   * @return least and most, −1 to 1; nothing where there is no correlation, where it is full, or of
   *     fewer than four papers
   */
  public Optional<Limits> itemRestLimits() {
    OptionalDouble found = itemRest();
    if (found.isEmpty() || papers < 4 || Math.abs(found.getAsDouble()) == 1) {
      return Optional.empty();
    }
    double r = found.getAsDouble();
    double middle = Math.log((1 + r) / (1 - r)) / 2;
    double half = TWO_SIDED_95 / Math.sqrt(papers - 3);
    return Optional.of(new Limits(Math.tanh(middle - half), Math.tanh(middle + half)));
  }

  /** From where to where a figure may lie. */
  public record Limits(double least, double most) {}

  private double spread(double squares, double sum) {
    return papers == 0 ? 0 : squares - sum * sum / papers;
  }
}
