package lapline.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class YamlFileTest {
  private final Problems problems = new Problems("curriculum/x.yaml");

  private YamlNode read(String yaml) {
    return YamlFile.read(yaml, 1, problems).orElseThrow(() -> new AssertionError(problems.all()));
  }

  private void told(String... lines) {
    assertThat(problems.all()).extracting(Problem::toString).containsExactly(lines);
  }

  @Test
  void a_mixing_ratio_stays_text() {
    assertThat(read("ratio: 4:1").text("ratio")).isEqualTo("4:1");
  }

  @Test
  void words_that_look_like_answers_or_numbers_stay_as_written() {
    YamlNode node = read("a: no\nb: 012\nc: null\nd: 1.0\ne: 2026-01-02\nf: ~");
    assertThat(List.of("a", "b", "c", "d", "e", "f"))
        .extracting(node::text)
        .containsExactly("no", "012", "null", "1.0", "2026-01-02", "~");
    assertThat(problems.none()).isTrue();
  }

  @Test
  void yes_and_no_are_read_only_where_they_are_asked_for() {
    YamlNode node = read("a: no\nb: yes\nc: true");
    assertThat(node.yesNo("a")).isFalse();
    assertThat(node.yesNo("b")).isTrue();
    assertThat(node.yesNo("c")).isFalse();
    assertThat(node.yesNo("d", true)).isTrue();
    told("curriculum/x.yaml:3: 'true' is neither yes nor no; write yes or no");
  }

  @Test
  void every_node_knows_its_line() {
    YamlNode node =
        read("# a remark\ntitle: Clear\n\nsteps:\n  - one\n  - name: two\n    grit: P600\n");
    assertThat(node.at("title").orElseThrow().line()).isEqualTo(2);
    assertThat(node.list("steps")).extracting(YamlNode::line).containsExactly(5, 6);
    assertThat(node.list("steps").get(1).at("grit").orElseThrow().line()).isEqualTo(7);
  }

  @Test
  void yaml_inside_another_file_counts_that_file_s_lines() {
    Optional<YamlNode> node = YamlFile.read("a: 1\nb: x", 41, problems);
    node.orElseThrow().number("b");
    told("curriculum/x.yaml:42: 'x' is not a number; write digits with a point, like 2.5");
  }

  @Test
  void a_key_written_twice_is_refused_where_it_stands_the_second_time() {
    read("title: a\nminutes: 3\ntitle: b");
    told("curriculum/x.yaml:3: 'title' stands here twice; keep one of the two");
  }

  @Test
  void a_tab_is_named_as_a_tab() {
    assertThat(YamlFile.read("panel:\n\twidth: 600 mm", 1, problems)).isEmpty();
    assertThat(problems.all())
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.line()).isEqualTo(2);
              assertThat(p.whatToWrite()).isEqualTo("indent with spaces, not with the tab key");
            });
  }

  @Test
  void an_unquoted_colon_is_explained() {
    assertThat(YamlFile.read("a: b\nwhat: mix: then stir", 1, problems)).isEmpty();
    assertThat(problems.all())
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.line()).isEqualTo(2);
              assertThat(p.whatToWrite()).startsWith("put the text in quotes");
            });
  }

  @Test
  void an_alias_is_refused() {
    read("a: &x [1]\nb: *x");
    assertThat(problems.all())
        .singleElement()
        .extracting(Problem::whatIsWrong)
        .asString()
        .contains("alias");
  }

  @Test
  void an_empty_file_and_a_bare_sentence_are_problems() {
    assertThat(YamlFile.read("", 1, problems)).isEmpty();
    assertThat(YamlFile.read("only words", 1, problems)).isEmpty();
    told(
        "curriculum/x.yaml:1: there is nothing here; write its keys, one a line: key: value",
        "curriculum/x.yaml:1: keys are expected here; write one a line, like title: Clear");
  }

  @Test
  void a_second_document_is_a_problem() {
    assertThat(YamlFile.read("a: 1\n---\nb: 2", 1, problems)).isEmpty();
    assertThat(problems.none()).isFalse();
  }

  @Test
  void a_misspelt_key_is_told_with_the_keys_that_are_known() {
    YamlNode node = read("title: a\nminuts: 3\nsteps:\n  - nmae: x");
    node.text("title");
    node.number("minutes", 10);
    node.list("steps").forEach(s -> s.optionalText("name"));
    node.refuseOtherKeys();
    told(
        "curriculum/x.yaml:2: 'minuts' is not a key here; take it away or write one of: minutes, steps, title",
        "curriculum/x.yaml:4: 'nmae' is not a key here; take it away or write one of: name");
  }

  @Test
  void a_misspelt_key_with_keys_of_its_own_is_told_at_its_own_line() {
    read("title: a\npanl:\n  width: 600 mm").refuseOtherKeys();
    assertThat(problems.all()).extracting(Problem::line).containsExactly(1, 2);
  }

  @Test
  void all_missing_and_wrong_values_are_told_at_once() {
    YamlNode node = read("title:\npanel: wide\nsteps: one\nfilm: 50\ncount: 2.5");
    node.text("title");
    node.map("panel");
    node.list("steps");
    node.quantityText("film");
    node.wholeNumber("count");
    node.text("purpose");
    assertThat(problems.all()).extracting(Problem::line).containsExactly(1, 1, 2, 3, 4, 5);
  }

  @Test
  void a_missing_map_is_told_once_and_not_for_each_of_its_keys() {
    read("a: b").map("panel").text("width");
    told("curriculum/x.yaml:1: 'panel' is missing; add a line panel: …");
  }

  @Test
  void a_quantity_has_its_unit() {
    YamlNode node =
        read("a: 3 to 5 in\nb: 50um\nc: 2.5 turns\nd: 70 %\ne: at most 20 psi\nf: 1 1/2\"");
    node.keys().forEach(node::quantityText);
    assertThat(problems.none()).isTrue();
  }

  @Test
  void one_of_a_set_of_words_names_the_set() {
    assertThat(read("judged: meen").oneOf("judged", List.of("mean", "each"))).isEqualTo("mean");
    told("curriculum/x.yaml:1: 'judged: meen' is not known; write one of: mean, each");
  }
}
