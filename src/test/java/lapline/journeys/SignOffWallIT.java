package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URL;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lapline.demo.Arranged;
import lapline.journeys.Caller.Answer;
import org.jboss.arquillian.container.test.api.Deployment;
import org.jboss.arquillian.container.test.api.RunAsClient;
import org.jboss.arquillian.junit5.ArquillianExtension;
import org.jboss.arquillian.test.api.ArquillianResource;
import org.jboss.shrinkwrap.api.spec.WebArchive;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * Nobody decides over the fence: the forms of a sign-off, filled in on one's own pages and sent
 * with a neighbour's ids, are refused and change nothing there.
 */
@ExtendWith(ArquillianExtension.class)
@RunAsClient
class SignOffWallIT {
  private static final Pattern VIEW =
      Pattern.compile("name=\"jakarta.faces.ViewState\"[^>]*value=\"([^\"]*)\"");

  private static Arranged ours;
  private static Arranged theirs;
  private static Caller theirExaminer;

  @ArquillianResource private URL desk;

  @Deployment(testable = false)
  static WebArchive desk() {
    return Arranging.desk();
  }

  @BeforeEach
  void arrange() throws Exception {
    if (theirs == null) {
      ours = Arranging.workshop(desk, "Nearside");
      theirs = Arranging.workshop(desk, "Offside");
      theirExaminer = caller(theirs, "examiner");
    }
  }

  @Test
  void a_decision_sent_with_a_neighbours_ids_is_refused_and_changes_nothing() {
    Caller examiner = caller(ours, "examiner");
    for (String button : List.of("grant", "not-yet")) {
      refused(examiner, "masking", "decide", Map.of("decide:" + button, "go"));
    }
    for (String button : List.of("suspend", "resume", "withdraw")) {
      refused(
          examiner,
          "preparing",
          "decide",
          Map.of("decide:" + button, "go", "decide:forGood", "on"));
    }
    refused(caller(ours, "owner"), "preparing", "decide", Map.of("decide:suspend", "go"));
  }

  @Test
  void a_renewal_started_with_a_neighbours_ids_is_refused_and_changes_nothing() {
    Caller owner = caller(ours, "owner");
    for (String skill : List.of("preparing", "masking")) {
      refused(owner, skill, "renewal", Map.of("renewal:renew", "go"));
    }
  }

  @Test
  void a_neighbours_record_and_certificate_are_not_there() {
    for (String who : List.of("owner", "registrar", "examiner", "grader")) {
      Caller caller = caller(ours, who);
      for (String address : proofs(theirs)) {
        assertThat(caller.get(address).status()).as("%s %s", who, address).isIn(403, 404);
      }
    }
    for (String address : proofs(ours)) {
      assertThat(caller(ours, "owner").get(address).status()).as(address).isEqualTo(200);
    }
  }

  private static List<String> proofs(Arranged shop) {
    return List.of(
        "/api/v1/sign-offs/" + shop.one("sign-off") + "/certificate.pdf",
        "/api/v1/people/" + shop.one("learner") + "/record.pdf",
        "/shop/record?person=" + shop.one("learner"));
  }

  private static Caller caller(Arranged shop, String who) {
    return Caller.signedIn(shop.people().get(who), shop.password());
  }

  /** Opens the own page as anybody would, and sends its form with the neighbour's learner. */
  private static void refused(
      Caller caller, String skill, String form, Map<String, String> pressed) {
    String before = asTheySeeIt(skill);
    Map<String, String> fields = new LinkedHashMap<>(pressed);
    fields.put(form, form);
    fields.put("decide:reason", "Over the fence.");
    fields.put("person", theirs.one("learner"));
    fields.put("skill", skill);
    fields.put("jakarta.faces.ViewState", view(caller.get(decision(ours, "preparing")).text()));
    Answer answer = caller.form(decision(theirs, skill), fields);
    assertThat(answer.status()).as("%s %s", skill, pressed).isIn(403, 404);
    assertThat(answer.text()).as("%s %s", skill, pressed).doesNotContain(theirs.surname());
    assertThat(asTheySeeIt(skill)).as("%s %s", skill, pressed).isEqualTo(before);
  }

  private static String decision(Arranged shop, String skill) {
    return "/examine/decision?skill=" + skill + "&person=" + shop.one("learner");
  }

  /** All that the neighbour's examiner reads about it, without what differs each time. */
  private static String asTheySeeIt(String skill) {
    String page = theirExaminer.get(decision(theirs, skill)).text();
    assertThat(page).contains(theirs.surname()).doesNotContain("Over the fence.");
    return page.substring(page.indexOf("<main")).replaceAll("<input[^>]*>", "");
  }

  private static String view(String page) {
    Matcher view = VIEW.matcher(page);
    assertThat(view.find()).as("the own page has a form").isTrue();
    return view.group(1);
  }
}
