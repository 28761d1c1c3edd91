package lapline.people;

import java.util.List;

/**
 * What is wrong with one field of an account.
 *
 * @param field its id on the pages, such as {@code signInName}
 * @param key message key: what is wrong and what would be right
 */
public record AccountProblem(String field, String key, List<Object> args) {

  static AccountProblem of(String field, String key, Object... args) {
    return new AccountProblem(field, key, List.of(args));
  }
}
