package lapline.people;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** What a name and a sign-in name have to be, told all at once. */
final class AccountNames {
  /** Key of the refusal that somebody has this sign-in name. */
  static final String TAKEN = "people.add.taken";

  private static final int LONGEST_NAME = 120;
  private static final int LONGEST_SIGN_IN_NAME = 80;

  private final PeopleRecords records;

  AccountNames(PeopleRecords records) {
    this.records = records;
  }

  /**
   * @param self whose names they are to be; null for somebody new
   */
  List<AccountProblem> problems(UUID self, String name, String signInName) {
    List<AccountProblem> problems = new ArrayList<>();
    if (name.isBlank() || name.strip().length() > LONGEST_NAME) {
      problems.add(AccountProblem.of("name", "people.names.name", LONGEST_NAME));
    }
    signInName(self, CheckPassword.tidy(signInName)).ifPresent(problems::add);
    return problems;
  }

  private Optional<AccountProblem> signInName(UUID self, String tidy) {
    if (tidy.isEmpty() || tidy.length() > LONGEST_SIGN_IN_NAME) {
      return problem("people.names.sign-in-name", LONGEST_SIGN_IN_NAME);
    }
    // on a phone a space slips in by itself, and nobody sees it in a field
    if (tidy.chars().anyMatch(c -> Character.isWhitespace(c) || Character.isSpaceChar(c))) {
      return problem("people.names.space", tidy, tidy.replaceAll("[\\s\\p{Z}]+", "."));
    }
    boolean taken = records.bySignInName(tidy).filter(p -> !p.id().equals(self)).isPresent();
    return taken ? problem(TAKEN, tidy) : Optional.empty();
  }

  private static Optional<AccountProblem> problem(String key, Object... args) {
    return Optional.of(AccountProblem.of("signInName", key, args));
  }
}
