package lapline.lessons;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * A question inside a lesson that answers at once and says why; it teaches and is no part of an
 * exam.
 *
 * @param id key within its lesson, chosen by the author, so that answers outlive re-ordering
 * @param choices in the order they are shown; at least one of them right
 */
public record Check(String id, String question, List<Choice> choices) {

  public Check {
    choices = List.copyOf(choices);
  }

  /**
   * @param because why it is right, or what would happen if you did it
   */
  public record Choice(String text, boolean right, String because) {}

  /** What a choice gets for an answer, when it was chosen. */
  public record Reply(int choice, String text, boolean right, String because) {}

  /**
   * The answer to an answer.
   *
   * @param right whether exactly the right choices were chosen
   * @param replies one for each chosen choice, in order; the others stay untold, for the next try
   * @param stillMissing how many right choices were not chosen
   */
  public record Answer(boolean right, List<Reply> replies, int stillMissing) {
    /** Whether nothing wrong was chosen, and only more of the right ones are to be found. */
    public boolean rightSoFar() {
      return stillMissing > 0 && !replies.isEmpty() && replies.stream().allMatch(Reply::right);
    }
  }

  /** Whether more than one choice is right, so that the page offers boxes and not buttons. */
  public boolean several() {
    return choices.stream().filter(Choice::right).count() > 1;
  }

  /**
   * @param chosen positions among the choices, from 0; positions that do not exist are passed over
   */
  public Answer answer(Set<Integer> chosen) {
    List<Reply> replies =
        IntStream.range(0, choices.size()).filter(chosen::contains).mapToObj(this::reply).toList();
    int found = (int) replies.stream().filter(Reply::right).count();
    int missing = (int) choices.stream().filter(Choice::right).count() - found;
    return new Answer(missing == 0 && found == replies.size(), replies, missing);
  }

  private Reply reply(int position) {
    Choice choice = choices.get(position);
    return new Reply(position, choice.text(), choice.right(), choice.because());
  }
}
