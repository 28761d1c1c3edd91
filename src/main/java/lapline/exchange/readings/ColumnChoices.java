package lapline.exchange.readings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lapline.practice.Measurand;
import lapline.practice.Measurands;
import lapline.practice.PracticeTask;
import lapline.practice.Scope;

/**
 * What the columns of a file can be taken for under a task, and the best guess from their names.
 */
public final class ColumnChoices {
  private static final Pattern COAT_NUMBER =
      Pattern.compile("\\b(?:coat|c)\\s*#?\\s*(\\d{1,2})\\b");
  private static final Map<ColumnUse.Kind, Set<String>> NUMBERS =
      Map.of(
          ColumnUse.Kind.PLACE, Set.of("place", "places", "spot", "point", "location", "position"),
          ColumnUse.Kind.COAT, Set.of("coat", "coats", "layer"),
          ColumnUse.Kind.PASS, Set.of("pass", "passes", "stroke"),
          ColumnUse.Kind.STEP, Set.of("step", "steps", "part"));
  private static final Set<String> SAY_LITTLE =
      Set.of("the", "a", "of", "at", "in", "number", "no", "nr", "coat", "value", "reading");

  private final PracticeTask task;
  private final List<Measurand> asked;

  public ColumnChoices(PracticeTask task, Measurands measurands) {
    this.task = task;
    this.asked =
        task.sections().stream()
            .flatMap(s -> s.fields().stream())
            .flatMap(f -> measurands.find(f.measurand()).stream())
            .toList();
  }

  /** Every use a column can have, those of coats for each coat too. */
  public List<ColumnUse> all() {
    List<ColumnUse> uses = new ArrayList<>(List.of(ColumnUse.NONE));
    NUMBERS.keySet().stream().sorted().forEach(k -> uses.add(new ColumnUse(k, "", 0)));
    for (Measurand m : asked) {
      uses.add(ColumnUse.reading(m.id(), 0));
      for (int c = 1; byCoat(m) && c <= task.coats(); c++) {
        uses.add(ColumnUse.reading(m.id(), c));
      }
    }
    return uses;
  }

  private static boolean byCoat(Measurand m) {
    return m.scope() == Scope.COAT_PLACE || m.scope() == Scope.PASS;
  }

  /** A guess for each column; no use is guessed twice. */
  public List<ColumnUse> guess(List<String> header) {
    Set<ColumnUse> taken = new HashSet<>();
    List<ColumnUse> guesses = new ArrayList<>();
    for (String name : header) {
      ColumnUse use = guess(name);
      guesses.add(use == ColumnUse.NONE || taken.add(use) ? use : ColumnUse.NONE);
    }
    return guesses;
  }

  private ColumnUse guess(String name) {
    Set<String> words = words(name);
    for (Map.Entry<ColumnUse.Kind, Set<String>> number : NUMBERS.entrySet()) {
      if (words.size() <= 2
          && words.stream().anyMatch(number.getValue()::contains)
          && asked.stream().noneMatch(m -> words.containsAll(telling(m)))) {
        return new ColumnUse(number.getKey(), "", 0);
      }
    }
    return asked.stream()
        .filter(m -> likeness(m, words) > 0.5)
        .max(Comparator.comparingDouble(m -> likeness(m, words)))
        .map(m -> ColumnUse.reading(m.id(), byCoat(m) ? coat(name) : 0))
        .orElse(ColumnUse.NONE);
  }

  /** The share of the words of both names that they have in common; the id counts as a name too. */
  private static double likeness(Measurand m, Set<String> words) {
    return Math.max(shared(words(m.label()), words), shared(words(m.id()), words));
  }

  private static double shared(Set<String> a, Set<String> b) {
    Set<String> left = new HashSet<>(a);
    Set<String> right = new HashSet<>(b);
    left.removeAll(SAY_LITTLE);
    right.removeAll(SAY_LITTLE);
    Set<String> both = new HashSet<>(left);
    both.retainAll(right);
    return left.isEmpty() || right.isEmpty() ? 0 : 2.0 * both.size() / (left.size() + right.size());
  }

  private static Set<String> telling(Measurand m) {
    Set<String> words = words(m.id());
    words.removeAll(SAY_LITTLE);
    return words;
  }

  private int coat(String name) {
    Matcher m = COAT_NUMBER.matcher(name.toLowerCase(Locale.ROOT));
    int coat = m.find() ? Integer.parseInt(m.group(1)) : 0;
    return coat <= task.coats() ? coat : 0;
  }

  /** Words in small letters without units in brackets and without figures. */
  private static Set<String> words(String name) {
    String plain = name.toLowerCase(Locale.ROOT).replaceAll("[(\\[].*?[)\\]]", " ");
    Set<String> words = new HashSet<>(List.of(plain.split("[^\\p{L}]+")));
    words.remove("");
    return words;
  }
}
