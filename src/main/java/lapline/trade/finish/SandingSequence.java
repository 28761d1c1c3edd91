package lapline.trade.finish;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lapline.trade.measure.MeasureException;

/**
 * The grades a surface was sanded with, in order; each step has to take out the scratches of the
 * one before.
 *
 * @param grades at least one
 */
public record SandingSequence(List<Abrasive> grades) {

  public SandingSequence {
    if (grades.isEmpty()) {
      throw new MeasureException("sanding steps", 0, "1 or more");
    }
    grades = List.copyOf(grades);
  }

  /**
   * @param numbers after the P, such as 180, 320, 600
   * @throws MeasureException where the scale has no such grade
   */
  public static SandingSequence ofGrades(List<Double> numbers) {
    return new SandingSequence(numbers.stream().map(Abrasive::require).toList());
  }

  /**
   * From one grade to the next.
   *
   * @param ratio grain size before over grain size after: 2 where the scratch halves, 1 for the
   *     same grade again, below 1 where it went coarser
   */
  public record Step(Abrasive from, Abrasive to, double ratio) {

    /** Whether it went back to a coarser grade. */
    public boolean coarser() {
      return ratio < 1;
    }

    /**
     * How many numbers of the scale it skips: 200 from P400 to P600; below 0 where it went coarser.
     */
    public int numbers() {
      return to.grade() - from.grade();
    }
  }

  /** The steps in order; none for a single grade. */
  public List<Step> steps() {
    return IntStream.range(1, grades.size())
        .mapToObj(i -> step(grades.get(i - 1), grades.get(i)))
        .toList();
  }

  /** The step over the most numbers, where scratches are likeliest to stay; empty for one grade. */
  public Optional<Step> largestStep() {
    return steps().stream().max(Comparator.comparingInt(Step::numbers));
  }

  /** Whether no step went back to a coarser grade. */
  public boolean everFiner() {
    return steps().stream().noneMatch(Step::coarser);
  }

  /** The grade the sanding ended with. */
  public Abrasive last() {
    return grades.get(grades.size() - 1);
  }

  private static Step step(Abrasive from, Abrasive to) {
    return new Step(from, to, from.grainSize() / to.grainSize());
  }
}
