package lapline.exams.bank;

import java.util.List;
import java.util.Optional;
import lapline.content.Problem;

/** The banks that could be read, and what is wrong with the others. */
public record QuestionBanks(List<Bank> banks, List<Problem> problems) {

  public QuestionBanks {
    banks = List.copyOf(banks);
    problems = List.copyOf(problems);
  }

  /** Empty when the unit has no bank, or its bank is being mended. */
  public Optional<Bank> bank(String unit) {
    return banks.stream().filter(b -> b.unit().equals(unit)).findFirst();
  }
}
