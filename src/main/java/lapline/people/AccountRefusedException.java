package lapline.people;

import java.util.List;

/** An account that could not be added, though it looked right a moment before. */
public class AccountRefusedException extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final transient List<AccountProblem> problems;

  AccountRefusedException(List<AccountProblem> problems) {
    super("not an account: " + problems);
    this.problems = List.copyOf(problems);
  }

  /** What is wrong, field by field. */
  public List<AccountProblem> problems() {
    return problems;
  }
}
