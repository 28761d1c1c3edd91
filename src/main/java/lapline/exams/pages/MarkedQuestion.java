package lapline.exams.pages;

import lapline.exams.ItemMark;
import lapline.exams.Question;
import lapline.exams.bank.ItemKind;

/**
 * One question on the result page with its mark and its reasons.
 *
 * @param number on its paper, from 1
 * @param counts false where the paper was marked anew without it
 */
public record MarkedQuestion(int number, Question question, ItemMark mark, boolean counts) {

  /** The word for how it went: right, partly, wrong, unanswered, unclear. */
  public String getWord() {
    return switch (mark.state()) {
      case UNANSWERED -> "unanswered";
      case UNCLEAR -> "unclear";
      case ANSWERED -> mark.full() ? "right" : mark.none() ? "wrong" : "partly";
    };
  }

  public boolean isChoice() {
    return mark.kind() == ItemKind.SINGLE || mark.kind() == ItemKind.SEVERAL;
  }

  public boolean isOrder() {
    return mark.kind() == ItemKind.ORDER;
  }

  public boolean isMeasured() {
    return !isChoice() && !isOrder();
  }

  public boolean isFull() {
    return mark.full();
  }
}
