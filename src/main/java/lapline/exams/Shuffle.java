package lapline.exams;

import java.util.Collections;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * Puts a list into a random order, each equally likely. Source: Fisher and Yates, in the form of
 * Durstenfeld, Communications of the ACM 7 (1964), algorithm 235.
 */
final class Shuffle {
  private Shuffle() {}

  static void shuffle(List<?> list, RandomGenerator chance) {
    for (int last = list.size() - 1; last > 0; last--) {
      Collections.swap(list, last, chance.nextInt(last + 1));
    }
  }
}
