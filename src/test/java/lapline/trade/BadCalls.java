package lapline.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.File;
import java.lang.reflect.Executable;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.MeasureException;

/**
 * Walks calls of the science with arguments outside their range, and looks that no public method
 * that takes a number was left out.
 */
public final class BadCalls {
  private static final double[] NO_NUMBERS = {
    Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY
  };

  private final List<Case> cases = new ArrayList<>();

  /** A call with numbers in the place of its arguments. */
  public interface Call {
    Object with(double[] arguments);
  }

  /** One call that has to be refused; {@code of} is 'Class.method', or 'Class.new'. */
  public record Case(String of, String what, Runnable call) {
    @Override
    public String toString() {
      return of + " " + what;
    }
  }

  /** Each argument in turn no number, and infinite; the good ones have to be taken. */
  public BadCalls numbers(String of, Call call, double... good) {
    assertThatCode(() -> call.with(good))
        .as("%s with good arguments", of)
        .doesNotThrowAnyException();
    for (int i = 0; i < good.length; i++) {
      for (double bad : NO_NUMBERS) {
        double[] arguments = good.clone();
        arguments[i] = bad;
        cases.add(new Case(of, Arrays.toString(arguments), () -> call.with(arguments)));
      }
    }
    return this;
  }

  /** Each argument in turn no number, infinite, 0 and below 0. */
  public BadCalls positives(String of, Call call, double... good) {
    numbers(of, call, good);
    for (int i = 0; i < good.length; i++) {
      for (double bad : new double[] {0, -1}) {
        double[] arguments = good.clone();
        arguments[i] = bad;
        cases.add(new Case(of, Arrays.toString(arguments), () -> call.with(arguments)));
      }
    }
    return this;
  }

  /** A call with particular bad arguments. */
  public BadCalls and(String of, String what, Runnable call) {
    cases.add(new Case(of, what, call));
    return this;
  }

  public Stream<Case> cases() {
    return cases.stream();
  }

  /** The error is the typed one and names argument, value and range. */
  public static void isRefused(Case refused) {
    Throwable thrown = catchThrowable(() -> refused.call().run());
    assertThat(thrown).as(refused.toString()).isInstanceOf(MeasureException.class);
    MeasureException e = (MeasureException) thrown;
    assertThat(e.argument()).isNotBlank();
    assertThat(e.validRange()).isNotBlank();
    assertThat(e).hasMessageContaining(e.argument()).hasMessageContaining(e.given() + "");
  }

  /** Fails with the names of public methods that take numbers and that no case here calls. */
  public void leavesNoneOut(Class<?> ofPackage, String... results) {
    Set<String> called = cases.stream().map(Case::of).collect(Collectors.toSet());
    Set<String> left = new TreeSet<>();
    classes(ofPackage).stream()
        .filter(c -> !List.of(results).contains(c.getSimpleName()))
        .forEach(
            c -> calls(c).filter(e -> takesNumbers(e)).map(e -> name(c, e)).forEach(left::add));
    assertThat(left).hasSizeGreaterThan(5);
    left.removeAll(called);
    assertThat(left).as("public methods that nobody gave bad input").isEmpty();
  }

  private static Stream<Executable> calls(Class<?> c) {
    boolean constructs = !c.isEnum() && !Modifier.isAbstract(c.getModifiers());
    Stream<Executable> made = constructs ? Stream.of(c.getConstructors()) : Stream.empty();
    Stream<Executable> methods =
        Stream.of(c.getDeclaredMethods())
            .filter(m -> Modifier.isPublic(m.getModifiers()))
            .filter(m -> !Modifier.isAbstract(m.getModifiers()) && !m.isSynthetic())
            .map(m -> (Executable) m);
    return Stream.concat(made, methods);
  }

  private static boolean takesNumbers(Executable e) {
    return !e.getName().equals("equals")
        && !e.getName().equals("valueOf")
        && Stream.of(e.getParameterTypes())
            .anyMatch(
                t ->
                    t == double.class
                        || t == int.class
                        || t == Estimate.class
                        || Collection.class.isAssignableFrom(t));
  }

  private static String name(Class<?> c, Executable e) {
    String method = e instanceof java.lang.reflect.Constructor ? "new" : e.getName();
    return c.getSimpleName() + "." + method;
  }

  private static List<Class<?>> classes(Class<?> ofPackage) {
    File folder = new File(ofPackage.getProtectionDomain().getCodeSource().getLocation().getPath());
    File[] files =
        new File(folder, ofPackage.getPackageName().replace('.', '/'))
            .listFiles((d, name) -> name.endsWith(".class"));
    List<Class<?>> found = new ArrayList<>();
    for (File file : files) {
      try {
        Class<?> c =
            Class.forName(ofPackage.getPackageName() + "." + file.getName().replace(".class", ""));
        if (Modifier.isPublic(c.getModifiers()) && !isTest(c) && !c.isAnonymousClass()) {
          found.add(c);
        }
      } catch (ClassNotFoundException e) {
        throw new IllegalStateException(e);
      }
    }
    return found;
  }

  /** Test and main classes may lie in one folder. */
  private static boolean isTest(Class<?> c) {
    return c.getSimpleName().matches(".*(Test|Properties)");
  }
}
