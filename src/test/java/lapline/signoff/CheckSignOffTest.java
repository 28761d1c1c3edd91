package lapline.signoff;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A code as people read it from paper. */
class CheckSignOffTest {

  @Test
  void a_code_typed_in_fours_or_with_the_full_stop_of_its_sentence_is_the_same_code() {
    assertThat(CheckSignOff.tidy(" KXWC 7cqb-aq5y. ")).isEqualTo("kxwc7cqbaq5y");
  }
}
