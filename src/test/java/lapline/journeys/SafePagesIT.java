package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest.BodyPublishers;
import java.util.List;
import lapline.journeys.Caller.Answer;
import org.junit.jupiter.api.Test;

/** What the server tells browsers so that another site can do nothing in a person's name. */
class SafePagesIT {

  @Test
  void every_answer_forbids_foreign_scripts_frames_and_guessing_at_types() {
    for (String address : List.of("/sign-in", "/no-such-page", "/api/v1/openapi.yaml", "/check")) {
      Answer answer = new Caller().get(address);
      assertThat(answer.header("Content-Security-Policy"))
          .as(address)
          .contains("default-src 'self'", "frame-ancestors 'none'", "form-action 'self'");
      assertThat(answer.header("X-Content-Type-Options")).as(address).isEqualTo("nosniff");
    }
  }

  @Test
  void no_script_reads_the_session_and_no_other_site_sends_it_with_a_form() {
    assertThat(new Caller().get("/sign-in").header("Set-Cookie"))
        .startsWith("JSESSIONID=")
        .containsIgnoringCase("HttpOnly")
        .containsIgnoringCase("SameSite=Lax");
  }

  @Test
  void a_name_that_was_guessed_at_five_times_has_to_wait_whatever_the_password() {
    String nobody = "nobody." + System.nanoTime();
    for (int i = 0; i < 5; i++) {
      assertThat(new Caller().signIn(nobody, "guess" + i).text()).contains("do not go together");
    }
    assertThat(new Caller().signIn(nobody, "guess").text()).doesNotContain("do not go together");
  }

  @Test
  void a_photograph_that_comes_in_no_form_is_refused_and_breaks_nothing() {
    Caller apprentice = Caller.signedIn("apprentice1", DemoAccounts.password());
    for (String type : List.of("image/jpeg", "application/x-www-form-urlencoded")) {
      Answer answer =
          apprentice.send(
              Caller.request("/learn/photographs?attempt=" + java.util.UUID.randomUUID())
                  .header("Content-Type", type)
                  .header("Origin", Caller.URL)
                  .POST(BodyPublishers.ofString("no=form")));
      assertThat(answer.status()).as(type).isEqualTo(415);
    }
  }

  @Test
  void only_the_description_itself_is_told_to_anybody_not_what_is_called_like_it() {
    assertThat(new Caller().get("/api/v1/openapi.yaml").status()).isEqualTo(200);
    assertThat(new Caller().get("/api/v1/attempts/openapi.yaml").status()).isEqualTo(401);
  }
}
