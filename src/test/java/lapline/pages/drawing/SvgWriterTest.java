package lapline.pages.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** A drawing in the page says what it is, and whatever is typed stays text. */
class SvgWriterTest {

  @Test
  void it_is_an_image_with_title_and_description() throws Exception {
    Element svg = parsed(drawing(List.of())).getDocumentElement();
    assertThat(svg.getAttribute("role")).isEqualTo("img");
    assertThat(svg.getAttribute("aria-labelledby")).isEqualTo("one-title one-desc");
    assertThat(svg.getElementsByTagName("title").item(0).getTextContent()).isEqualTo("Hood <left>");
    assertThat(svg.getElementsByTagName("desc").item(0).getTextContent())
        .isEqualTo("thin & \"even\"");
  }

  @Test
  void words_cannot_become_markup() throws Exception {
    Document page =
        parsed(
            drawing(
                List.of(
                    Shape.Words.of(1, 1, 3, Shape.Align.START, "</text><script>alert(1)</script>"),
                    new Shape.Named("a\" onload=\"x", List.of()))));
    assertThat(page.getElementsByTagName("script").getLength()).isZero();
    Element group = (Element) page.getElementsByTagName("g").item(0);
    assertThat(group.getAttribute("data-name")).isEqualTo("a\" onload=\"x");
  }

  @Test
  void dotted_and_ruled_areas_refer_to_patterns_of_their_own_drawing() {
    String svg =
        SvgWriter.write(
            drawing(
                List.of(
                    Shape.Surface.box(0, 0, 4, 4, Fill.dotted(Tone.INK), Pen.NONE),
                    Shape.Surface.box(4, 0, 4, 4, Fill.ruled(Tone.INK), Pen.NONE))));
    assertThat(svg).contains("id=\"one-dotted\"", "url(#one-dotted)", "url(#one-ruled)");
  }

  @Test
  void numbers_are_short_and_written_with_a_point_in_every_locale() {
    assertThat(SvgWriter.number(1234.5)).isEqualTo("1234.5");
    assertThat(SvgWriter.number(10)).isEqualTo("10");
    assertThat(SvgWriter.number(-0.001)).isEqualTo("0");
    assertThat(SvgWriter.number(0.126)).isEqualTo("0.13");
  }

  private static Drawing drawing(List<Shape> shapes) {
    return new Drawing("one", 10, 10, "Hood <left>", "thin & \"even\"", shapes);
  }

  private static Document parsed(Drawing drawing) throws Exception {
    byte[] svg = SvgWriter.write(drawing).getBytes(StandardCharsets.UTF_8);
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(svg));
  }
}
