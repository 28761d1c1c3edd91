package lapline.exams.bank;

import jakarta.enterprise.context.Dependent;
import jakarta.inject.Inject;
import java.util.List;
import lapline.content.ContentNotices;
import lapline.content.Problem;

/** What is wrong in the question banks. */
@Dependent
public class BankNotices implements ContentNotices {
  @Inject private QuestionBanks banks;

  @Override
  public List<Problem> problems() {
    return banks.problems();
  }
}
