package lapline;

import java.util.Random;
import java.util.random.RandomGenerator;

/**
 * Runs a check on many samples drawn from numbered seeds, and names the seed that broke it.
 *
 * <p>{@code mvn test -Dlapline.seed=17} runs that one alone.
 */
public final class Samples {
  private static final String ONE = "lapline.seed";

  private Samples() {}

  /** What must hold for a sample, drawn from this chance and no other. */
  public interface Check {
    void with(RandomGenerator chance) throws Exception;
  }

  /** The check with seeds 1 to {@code howMany}. */
  public static void each(int howMany, Check check) {
    Long one = Long.getLong(ONE);
    if (one != null) {
      run(one, check);
      return;
    }
    for (long seed = 1; seed <= howMany; seed++) {
      run(seed, check);
    }
  }

  /** One of these values. */
  @SafeVarargs
  public static <T> T oneOf(RandomGenerator chance, T... values) {
    return values[chance.nextInt(values.length)];
  }

  /** A number between two, as many small as large ones: both limits more than 0. */
  public static double ofAnySize(RandomGenerator chance, double least, double most) {
    return least * Math.pow(most / least, chance.nextDouble());
  }

  /** A text of signs that people type and of signs that nobody does. */
  public static String text(RandomGenerator chance, int longest) {
    StringBuilder text = new StringBuilder();
    String usual = "0123456789.,-+/' \"eEpPaAmMhs%°µu:±½\u00a0";
    for (int i = chance.nextInt(longest + 1); i > 0; i--) {
      boolean odd = chance.nextInt(8) == 0;
      text.append(
          (char) (odd ? chance.nextInt(0x10000) : usual.charAt(chance.nextInt(usual.length()))));
    }
    return text.toString();
  }

  private static void run(long seed, Check check) {
    try {
      check.with(new Random(seed));
    } catch (Exception | AssertionError e) {
      throw new AssertionError("with -D" + ONE + "=" + seed + ": " + e.getMessage(), e);
    }
  }
}
