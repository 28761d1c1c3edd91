package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URL;
import java.net.http.HttpResponse;
import java.util.UUID;
import lapline.demo.Arranged;
import org.jboss.arquillian.container.test.api.Deployment;
import org.jboss.arquillian.junit5.ArquillianExtension;
import org.jboss.arquillian.test.api.ArquillianResource;
import org.jboss.shrinkwrap.api.spec.WebArchive;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * Two windows show the same page and both are sent: the second is told in a sentence what the first
 * did, and what was typed into it stays.
 */
@ExtendWith(ArquillianExtension.class)
class TwoWindowsIT {
  private static Arranged shop;

  @ArquillianResource private URL desk;

  @Deployment(testable = false)
  static WebArchive desk() {
    return Arranging.desk();
  }

  @BeforeEach
  void arrange() throws Exception {
    if (shop == null) {
      shop = Arranging.workshop(desk, "Twinning");
    }
  }

  private static Visitor the(String who) throws Exception {
    return Visitor.as(shop.people().get(who), shop.password());
  }

  /** The form of a page that has this field. */
  private static Visitor.Form form(Visitor visitor, String page, String field) throws Exception {
    String body = visitor.get(page).body();
    return Visitor.forms(body).stream()
        .filter(f -> f.fields().containsKey(field))
        .findFirst()
        .orElseThrow(() -> new AssertionError(page + " has no " + field));
  }

  private static String told(HttpResponse<String> answer) {
    assertThat(answer.statusCode()).isEqualTo(200);
    return answer.body().replace("&#8220;", "\u201c").replace("&#8217;", "\u2019");
  }

  @Test
  void who_sets_a_question_aside_second_reads_who_was_quicker_and_why() throws Exception {
    String page = "/teach/item?unit=masking&item=soft-edge";
    Visitor one = the("instructor");
    Visitor two = the("grader");
    Visitor.Form first = form(one, page, "aside:go");
    Visitor.Form second = form(two, page, "aside:go");
    told(one.send(first.with("aside:reason", "Two answers fit.")));
    assertThat(told(two.send(second.with("aside:reason", "Unclear."))))
        .contains("Ida Twinning was quicker and set it aside")
        .contains("Two answers fit.");
    first = form(one, page, "back:go");
    second = form(two, page, "back:go");
    told(one.send(first));
    assertThat(told(two.send(second))).contains("Ida Twinning was quicker and brought it back");
  }

  @Test
  void who_decides_about_a_panel_second_reads_what_was_decided() throws Exception {
    String page = "/teach/bench?attempt=" + shop.one("waiting");
    Visitor one = the("instructor");
    Visitor two = the("grader");
    Visitor.Form first = form(one, page, "return").pressed("return", "accept", "place");
    Visitor.Form second = form(two, page, "return").pressed("return", "accept", "place");
    told(one.send(first.with("remark", "Dry along the top.")));
    String told = told(two.send(second.with("remark", "Runs at the lower edge.")));
    assertThat(told)
        .contains("Since you opened this page the panel was decided on")
        .contains("Ida Twinning")
        .contains("Dry along the top.");
    assertThat(told).as("what was typed stays").contains("Runs at the lower edge.");
    Visitor.Form again = form(two, page, "return").pressed("return", "accept", "place");
    assertThat(told(two.send(again.with("remark", "Runs at the lower edge."))))
        .doesNotContain("Since you opened this page");
  }

  @Test
  void who_decides_about_a_person_second_reads_what_was_decided() throws Exception {
    String page = "/examine/decision?person=" + shop.one("learner") + "&skill=masking";
    Visitor one = the("examiner");
    Visitor two = the("examiner");
    Visitor.Form first = form(one, page, "decide:grant").pressed("decide:grant", "decide:not-yet");
    Visitor.Form second = form(two, page, "decide:grant").pressed("decide:not-yet", "decide:grant");
    told(one.send(first.with("decide:reason", "Three even panels.")));
    assertThat(told(two.send(second.with("decide:reason", "The last one ran."))))
        .contains("Since you opened this page somebody decided")
        .contains("Three even panels.")
        .contains("The last one ran.");
  }

  @Test
  void who_corrects_a_gun_card_second_reads_who_did_and_keeps_what_was_typed() throws Exception {
    String page = "/office/gun-card?card=" + shop.one("gun-card");
    Visitor one = the("instructor");
    Visitor two = the("registrar");
    Visitor.Form first = form(one, page, "gun:save").pressed("gun:save", "gun:retire");
    Visitor.Form second = form(two, page, "gun:save").pressed("gun:save", "gun:retire");
    told(one.send(first));
    assertThat(told(two.send(second.with("gun:name", "Gun with the long hose"))))
        .contains("Ida Twinning corrected this card or put it away since you opened it")
        .contains("Gun with the long hose");
  }

  @Test
  void who_makes_a_token_twice_has_one() throws Exception {
    Visitor one = the("owner");
    String name = "rack " + UUID.randomUUID();
    Visitor.Form form = form(one, "/account", "token:make").with("token:name", name);
    assertThat(told(one.send(form))).contains("lap_");
    assertThat(told(one.send(form))).doesNotContain("lap_").contains("There is a token");
  }

  @Test
  void who_sets_a_target_second_reads_which_one_holds_now() throws Exception {
    Visitor one = the("instructor");
    Visitor two = the("registrar");
    String page = page(one);
    Visitor.Form first = confirm(one, page, "51 to 63 \u00b5m");
    Visitor.Form second = confirm(two, page, "52 to 64 \u00b5m");
    told(one.send(first));
    assertThat(told(two.send(second)))
        .contains("Since you opened this page Ida Twinning set this target to 51 to 63")
        .contains("52 to 64");
    assertThat(two.get("/office/targets").statusCode()).isEqualTo(200);
  }

  @Test
  void who_goes_back_to_the_course_reads_which_target_a_colleague_has_set_meanwhile()
      throws Exception {
    Visitor one = the("instructor");
    Visitor two = the("registrar");
    String page = page(one);
    told(one.send(confirm(one, page, "53 to 65 \u00b5m")));
    Visitor.Form back = goingBack(two, page);
    told(one.send(confirm(one, page, "54 to 66 \u00b5m")));
    assertThat(told(two.send(back)))
        .contains("Since you opened this page Ida Twinning set this target to 54 to 66");
    assertThat(told(two.send(goingBack(two, page)))).contains("target holds again");
  }

  /** The form of all targets of the task, where an own one can be ended. */
  private static Visitor.Form goingBack(Visitor visitor, String page) throws Exception {
    String all = page.replace("/office/target?", "/office/targets?");
    return Visitor.forms(visitor.get(all).body()).stream()
        .filter(f -> f.fields().keySet().stream().anyMatch(n -> n.endsWith(":retire")))
        .findFirst()
        .orElseThrow();
  }

  /** Where the film of clear is changed. */
  private static String page(Visitor visitor) throws Exception {
    String targets = visitor.get("/office/targets").body();
    String task =
        Visitor.links(targets).stream()
            .filter(l -> l.startsWith("/office/targets?task=clear"))
            .findFirst()
            .orElseThrow();
    return Visitor.links(visitor.get(task).body()).stream()
        .filter(l -> l.startsWith("/office/target?") && l.endsWith("criterion=film"))
        .findFirst()
        .orElseThrow();
  }

  /** The second step, at which the target is shown as it was understood. */
  private static Visitor.Form confirm(Visitor visitor, String page, String target)
      throws Exception {
    String asked =
        told(
            visitor.send(
                form(visitor, page, "change:ask")
                    .with("change:target", target)
                    .with("change:sheet", "Sheet 4")
                    .with("change:reason", "The drum was changed.")));
    return Visitor.forms(asked).stream()
        .filter(f -> f.fields().containsKey("confirm:set"))
        .findFirst()
        .orElseThrow()
        .pressed("confirm:set", "confirm:again");
  }
}
