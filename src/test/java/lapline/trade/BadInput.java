package lapline.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import lapline.trade.measure.MeasureException;
import org.junit.jupiter.api.function.Executable;

/**
 * A call with an argument outside its valid range, and what its refusal has to name.
 *
 * @param where the call, as 'Class.method' or 'Class.new'
 * @param argument named in the refusal
 * @param given the value named in it; NaN also for what is no number
 * @param call that has to be refused
 */
public record BadInput(String where, String argument, double given, Executable call) {

  /** What is no finite number. */
  private static final double[] NO_NUMBERS = {
    Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY
  };

  /** One bad value. */
  public static BadInput of(String where, String argument, double given, Executable call) {
    return new BadInput(where, argument, given, call);
  }

  /** NaN, both infinities and further bad values of one argument, each tried in its call. */
  public static Stream<BadInput> numbers(
      String where, String argument, DoubleFunction<?> call, double... furtherBad) {
    return DoubleStream.concat(DoubleStream.of(NO_NUMBERS), DoubleStream.of(furtherBad))
        .mapToObj(bad -> of(where, argument, bad, () -> call.apply(bad)));
  }

  /**
   * Fails with the names of public methods of a package that take numbers and that no walked call
   * is of.
   *
   * @param elsewhere methods that need no bad input: results' own constructors, and what takes
   *     nothing that has not been checked before
   */
  public static void leavesNoneOut(
      Stream<BadInput> walked, Class<?> ofPackage, String... elsewhere) {
    BadCalls all = new BadCalls();
    walked.forEach(bad -> all.and(bad.where, bad.argument, () -> {}));
    Stream.of(elsewhere).forEach(e -> all.and(e, "", () -> {}));
    all.leavesNoneOut(ofPackage);
  }

  /** The ends of a valid range are valid themselves. */
  public static void isTaken(DoubleFunction<?> call, double... ends) {
    for (double end : ends) {
      assertThatCode(() -> call.apply(end)).as("%s", end).doesNotThrowAnyException();
    }
  }

  /** Refused with its name, the value and a range. */
  public void isRefused() {
    assertThatExceptionOfType(MeasureException.class)
        .isThrownBy(call::execute)
        .satisfies(
            e -> {
              assertThat(e.argument()).isEqualTo(argument);
              // boxed, so that NaN is NaN
              assertThat((Double) e.given()).isEqualTo((Double) given);
              assertThat(e.validRange()).isNotBlank();
              assertThat(e).hasMessageContaining(argument).hasMessageContaining(e.validRange());
            });
  }

  @Override
  public String toString() {
    return where + ", " + argument + " " + given;
  }
}
