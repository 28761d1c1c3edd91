package lapline.trade.film;

import java.util.Arrays;
import java.util.List;

/** Film readings as people write them, for tests: blanks between numbers in µm. */
final class Micrometres {
  private Micrometres() {}

  static FilmReadings readings(String text) {
    return new FilmReadings(
        Arrays.stream(text.trim().split(" ")).map(t -> Double.parseDouble(t) * 1e-6).toList());
  }

  static List<FilmReadings> spots(String text) {
    return Arrays.stream(text.split("\\|")).map(Micrometres::readings).toList();
  }
}
