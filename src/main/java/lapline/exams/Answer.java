package lapline.exams;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** What was understood of an answer as it was typed. */
public sealed interface Answer {

  /**
   * Why an answer is not all there yet, to be said while it can still be changed.
   *
   * @param key of the sentence
   * @param args what is filled into it
   */
  record Flaw(String key, List<String> args) {}

  default Optional<Flaw> flaw() {
    return Optional.empty();
  }

  /** Nothing was written. */
  record None() implements Answer {}

  /**
   * @param positions of the ticked choices as they are shown, from 1
   */
  record Chosen(Set<Integer> positions) implements Answer {
    public Chosen {
      positions = Collections.unmodifiableSet(new TreeSet<>(positions));
    }
  }

  /**
   * Places given to steps. A place that is given twice counts for neither.
   *
   * @param places by the step's position as it is shown, from 1
   * @param steps how many steps there are
   */
  record Placed(Map<Integer, Integer> places, int steps) implements Answer {
    public Placed {
      places = Collections.unmodifiableMap(new TreeMap<>(places));
    }

    /** Places given to more than one step. */
    public Set<Integer> twice() {
      Set<Integer> seen = new TreeSet<>();
      Set<Integer> twice = new TreeSet<>();
      places.values().stream().filter(place -> !seen.add(place)).forEach(twice::add);
      return twice;
    }

    /** The place of a step; empty when it has none of its own. */
    public Optional<Integer> placeOf(int position) {
      return Optional.ofNullable(places.get(position)).filter(p -> !twice().contains(p));
    }

    @Override
    public Optional<Flaw> flaw() {
      Set<Integer> twice = twice();
      if (!twice.isEmpty()) {
        return Optional.of(
            new Flaw("exams.flaw.place-twice", List.of("" + twice.iterator().next())));
      }
      return places.size() < steps
          ? Optional.of(new Flaw("exams.flaw.place-missing", List.of("" + (steps - places.size()))))
          : Optional.empty();
    }
  }

  /**
   * @param si in the SI unit of what was asked
   * @param written as it was understood, with its unit
   */
  record Measured(double si, String written) implements Answer {}

  /** Something was written that is no such quantity. */
  record Unclear(String typed, Flaw why) implements Answer {
    @Override
    public Optional<Flaw> flaw() {
      return Optional.of(why);
    }
  }
}
