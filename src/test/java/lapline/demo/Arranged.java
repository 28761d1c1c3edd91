package lapline.demo;

import java.util.List;
import java.util.Map;

/**
 * What a test needs to know of a workshop that was arranged for it.
 *
 * @param people sign-in names, by what the person is here for
 * @param tokens access tokens, by the same
 * @param things ids and codes of what lies in the workshop, by kind
 */
public record Arranged(
    String workshop,
    String surname,
    String password,
    Map<String, String> people,
    Map<String, String> tokens,
    Map<String, List<String>> things) {

  /** The first thing of a kind. */
  public String one(String kind) {
    return things.get(kind).get(0);
  }
}
