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

  /** The sign-in name that was free a moment before is somebody's now, in whichever workshop. */
  public static AccountRefusedException taken(String signInName) {
    return new AccountRefusedException(
        List.of(AccountProblem.of("signInName", AccountNames.TAKEN, signInName)));
  }

  /** What is wrong, field by field. */
  public List<AccountProblem> problems() {
    return problems;
  }
}
