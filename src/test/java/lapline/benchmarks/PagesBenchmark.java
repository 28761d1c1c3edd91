package lapline.benchmarks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import lapline.content.Json;
import lapline.exchange.AttemptsResource;
import lapline.journeys.Caller;
import lapline.journeys.DemoAccounts;

/**
 * From asking for a page to its last byte, one person at a time, on a server that has been asked
 * for the same kind of page before. References: the sign-in page and the style sheet.
 */
final class PagesBenchmark {
  private static final int WARM = 60;
  private static final int MEASURED = 60;
  private static final Pattern STYLE = Pattern.compile("href=\"([^\"]*/lapline\\.css[^\"]*)\"");

  private final Caller nobody = new Caller();
  private final Caller instructor = signedIn("instructor1");
  private final Caller owner = signedIn("owner");
  private final Caller apprentice = signedIn("apprentice9");
  private final Map<String, Page> pages = new LinkedHashMap<>();

  /** Asked for by somebody, at one address after the other. */
  private record Page(Caller by, List<String> addresses, Times times) {
    void ask(int turn, boolean counts) {
      String address = addresses.get(turn % addresses.size());
      long began = System.nanoTime();
      int status = by.get(address).status();
      long took = System.nanoTime() - began;
      if (status != 200) {
        throw new IllegalStateException(address + " answered " + status);
      }
      if (counts) {
        times.add(took);
      }
    }
  }

  void run(Table table) {
    lay();
    for (int turn = 0; turn < WARM + MEASURED; turn++) {
      for (Page page : pages.values()) {
        page.ask(turn, turn >= WARM);
      }
    }
    table.heading("Pages, to the last byte", "to sign-in", "to style sheet");
    Times signIn = pages.get("sign-in page").times();
    Times style = pages.get("style sheet").times();
    pages.forEach((name, page) -> table.line(name, page.times(), signIn, style));
  }

  private void lay() {
    List<AttemptsResource.Short> judged = judged();
    put("sign-in page", nobody, "/sign-in");
    put("style sheet", nobody, style());
    put("result page, every task", instructor, results(judged, a -> true));
    put("result page, two coats of clear", instructor, results(judged, this::isFull));
    put("needs, eye", instructor, "/teach/needs");
    put("cohort", instructor, "/teach/cohort");
    put("learner", instructor, "/teach/person?id=" + judged.get(0).person());
    put("skills board", owner, "/shop/skills-board");
    put("due", owner, "/shop/due");
    put("today", apprentice, "/learn/today");
    put("my record", apprentice, "/learn/record");
  }

  private boolean isFull(AttemptsResource.Short panel) {
    return panel.task().equals("clear/two-coats");
  }

  private void put(String name, Caller by, String... addresses) {
    pages.put(name, new Page(by, List.of(addresses), new Times()));
  }

  /** So many that no panel that counts was asked for before, where there are enough. */
  private static String[] results(
      List<AttemptsResource.Short> judged, Predicate<AttemptsResource.Short> wanted) {
    List<AttemptsResource.Short> some = judged.stream().filter(wanted).toList();
    int most = WARM + MEASURED;
    double gap = Math.max(1, some.size() / (double) most);
    List<String> addresses = new ArrayList<>();
    for (int i = 0; i < Math.min(most, some.size()); i++) {
      addresses.add("/learn/result?attempt=" + some.get((int) (i * gap)).id());
    }
    return addresses.toArray(String[]::new);
  }

  private List<AttemptsResource.Short> judged() {
    List<AttemptsResource.Short> all = new ArrayList<>();
    AttemptsResource.Page page;
    int number = 1;
    do {
      String text = instructor.get("/api/v1/attempts?page=" + number++).text();
      page = Json.read(text, AttemptsResource.Page.class);
      all.addAll(page.attempts());
    } while (!page.attempts().isEmpty());
    return all.stream().filter(a -> a.scored() != null).toList();
  }

  private String style() {
    var found = STYLE.matcher(nobody.get("/sign-in").text());
    if (!found.find()) {
      throw new IllegalStateException("the sign-in page has no style sheet");
    }
    return found.group(1).replace("&amp;", "&");
  }

  private static Caller signedIn(String name) {
    return Caller.signedIn(name, DemoAccounts.password());
  }
}
