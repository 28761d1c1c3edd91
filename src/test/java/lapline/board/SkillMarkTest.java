package lapline.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.Period;
import java.util.List;
import java.util.UUID;
import lapline.board.SkillMark.Kind;
import lapline.signoff.SignOff;
import lapline.signoff.SignOff.State;
import lapline.signoff.Skill;
import lapline.signoff.Standing;
import org.junit.jupiter.api.Test;

/** What the board says about one person and one skill. */
class SkillMarkTest {
  private static final Instant NOW = Instant.parse("2031-03-04T14:05:00Z");
  private static final UUID WHO = UUID.randomUUID();
  private static final Skill CLEAR =
      new Skill(
          "clear",
          "Clear",
          "clear",
          "Lay clear",
          new Skill.Rule("1", true, true, 5, 5, List.of("clear/*"), Period.ofMonths(6), 2),
          Period.ofMonths(12),
          "");

  @Test
  void a_sign_off_is_good_until_the_moment_it_ends() {
    Instant end = NOW.plusSeconds(1);
    assertThat(mark(signOff(State.GRANTED, end), null).kind()).isEqualTo(Kind.GOOD);
    assertThat(mark(signOff(State.GRANTED, NOW), null).kind()).isEqualTo(Kind.EXPIRED);
  }

  @Test
  void a_suspended_one_is_not_good_however_long_it_would_run() {
    SignOff suspended = signOff(State.SUSPENDED, NOW.plus(Duration.ofDays(300)));
    assertThat(mark(suspended, null).isGood()).isFalse();
    assertThat(mark(suspended, standing(5, 2, NOW)).kind()).isEqualTo(Kind.SUSPENDED);
  }

  @Test
  void who_has_shown_it_all_again_after_the_end_waits_for_the_examiner() {
    SignOff ended = signOff(State.GRANTED, NOW.minusSeconds(1));
    assertThat(mark(ended, standing(5, 2, NOW)).kind()).isEqualTo(Kind.READY);
    assertThat(mark(ended, standing(4, 2, null)).kind()).isEqualTo(Kind.EXPIRED);
  }

  @Test
  void somebody_on_the_way_sees_how_much_of_the_rule_is_met_and_never_more_than_all() {
    SkillMark mark = mark(null, standing(3, 1, null));
    assertThat(mark.kind()).isEqualTo(Kind.ON_THE_WAY);
    assertThat(mark.have()).isEqualTo(6);
    assertThat(mark.need()).isEqualTo(9);
    assertThat(mark(null, standing(9, 9, NOW)).filled()).isEqualTo(1);
  }

  @Test
  void nothing_kept_means_not_begun() {
    assertThat(mark(null, null).kind()).isEqualTo(Kind.NOT_BEGUN);
    assertThat(mark(null, null).filled()).isZero();
  }

  private static SkillMark mark(SignOff latest, Standing standing) {
    return SkillMark.of(CLEAR, latest, standing, NOW);
  }

  private static SignOff signOff(State state, Instant end) {
    UUID id = UUID.randomUUID();
    return new SignOff(
        id, id, WHO, "clear", "1", "code", state, id, end.minus(Duration.ofDays(365)), end);
  }

  private static Standing standing(int counting, int graded, Instant ready) {
    return new Standing(
        WHO, WHO, "clear", true, true, true, counting, 5, graded, 2, 0, null, ready, null, NOW);
  }
}
