package lapline.trade.finish;

import java.util.ArrayList;
import java.util.List;
import lapline.trade.finish.SandingSequence.Step;
import lapline.trade.measure.Valid;

/** One thing that is wrong with the grades a surface was sanded with. */
public sealed interface SandingFault {

  /** A step over so many numbers that scratches of the coarser grade are likely to stay. */
  record StepTooLarge(Step step) implements SandingFault {}

  /** A step back to a coarser grade, which puts new deep scratches in. */
  record CoarserAgain(Step step) implements SandingFault {}

  /** The last grade is finer than what the next layer keys to. */
  record TooFineToHold(Abrasive last, NextLayer next) implements SandingFault {}

  /** The last grade is so coarse that its scratches may show through the next layer. */
  record ScratchesMayShow(Abrasive last, NextLayer next) implements SandingFault {}

  /**
   * All that is wrong, steps in their order and the last grade after them; none where all is well.
   *
   * @param mostNumbers how many numbers of the P scale a step may skip, more than 0; 200 is the
   *     course's rule from P240 on (common practice, no source)
   */
  static List<SandingFault> of(SandingSequence sanding, NextLayer next, int mostNumbers) {
    Valid.positive("mostNumbers", mostNumbers);
    List<SandingFault> faults = new ArrayList<>();
    for (Step step : sanding.steps()) {
      if (step.coarser()) {
        faults.add(new CoarserAgain(step));
      } else if (step.numbers() > mostNumbers) {
        faults.add(new StepTooLarge(step));
      }
    }
    Abrasive last = sanding.last();
    if (next.tooFine(last)) {
      faults.add(new TooFineToHold(last, next));
    } else if (next.tooCoarse(last)) {
      faults.add(new ScratchesMayShow(last, next));
    }
    return List.copyOf(faults);
  }
}
