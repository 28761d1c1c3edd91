package lapline.pages.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.lowagie.text.Document;
import com.lowagie.text.Rectangle;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** What is drawn in millimetres stands on paper at those millimetres. */
class PdfWriterTest {
  private static final float DPI = 254;

  @Test
  void a_box_lies_where_it_was_drawn() throws Exception {
    BufferedImage page =
        rendered(Shape.Surface.box(10, 20, 30, 5, Fill.flat(Tone.ACCENT), Pen.NONE));
    assertThat(page.getRGB(250, 225) & 0xffffff).isEqualTo(Tone.ACCENT.rgb());
    assertThat(page.getRGB(250, 195) & 0xffffff).isEqualTo(0xffffff);
    assertThat(page.getRGB(95, 225) & 0xffffff).isEqualTo(0xffffff);
  }

  @Test
  void only_what_is_inside_the_ring_shows() throws Exception {
    List<Point> ring = List.of(new Point(0, 0), new Point(50, 0), new Point(0, 50));
    BufferedImage page =
        rendered(
            new Shape.Clipped(
                ring, List.of(Shape.Surface.box(0, 0, 50, 50, Fill.flat(Tone.INK), Pen.NONE))));
    assertThat(page.getRGB(100, 100) & 0xffffff).isEqualTo(Tone.INK.rgb());
    assertThat(page.getRGB(400, 400) & 0xffffff).isEqualTo(0xffffff);
  }

  @Test
  void dots_and_rules_darken_an_area_about_alike_and_leave_it_readable() throws Exception {
    BufferedImage page =
        rendered(
            Shape.Surface.box(0, 0, 20, 20, Fill.dotted(Tone.INK), Pen.NONE),
            Shape.Surface.box(24, 0, 20, 20, Fill.ruled(Tone.INK), Pen.NONE));
    assertThat(inked(page, 0)).isBetween(0.05, 0.25);
    assertThat(inked(page, 240)).isBetween(0.05, 0.25);
  }

  @Test
  void words_can_be_read_and_searched_in_every_alphabet_of_the_shop() throws Exception {
    Shape words = Shape.Words.of(5, 20, 4, Shape.Align.START, "62 µm ± 2, ≥ 90 %, señal, Łukasz");
    try (PDDocument pdf = Loader.loadPDF(pdf(words))) {
      assertThat(new PDFTextStripper().getText(pdf)).contains("62 µm ± 2, ≥ 90 %, señal, Łukasz");
    }
  }

  @Test
  void wrapped_lines_are_no_wider_than_asked_and_lose_no_word() {
    String text = "Blow out every gap, then tack lightly just before each colour and clear stage.";
    List<String> lines = TypeFace.wrap(text, 3, 40);
    assertThat(lines).allSatisfy(l -> assertThat(TypeFace.width(l, 3)).isLessThanOrEqualTo(40));
    assertThat(String.join(" ", lines)).isEqualTo(text);
  }

  @Test
  void the_mark_of_a_verdict_is_filled_in_proportion() throws Exception {
    for (double conformance : new double[] {0, 0.25, 0.6, 1}) {
      BufferedImage page =
          rendered(VerdictMark.at(10, 10, 10, conformance, Tone.INK).toArray(new Shape[0]));
      double disc = Math.PI * 7.5 * 7.5;
      double filled = inkedWithin(page, 100, 100, 75) * disc;
      assertThat(filled / disc).isCloseTo(conformance, within(0.02));
    }
  }

  private static double inked(BufferedImage page, int left) {
    int ink = 0;
    for (int x = 0; x < 200; x++) {
      for (int y = 0; y < 200; y++) {
        ink += dark(page, left + x, y);
      }
    }
    return ink / 40000.0;
  }

  private static double inkedWithin(BufferedImage page, int cx, int cy, int radius) {
    int ink = 0;
    int all = 0;
    for (int x = -radius; x <= radius; x++) {
      for (int y = -radius; y <= radius; y++) {
        if (x * x + y * y <= radius * radius) {
          all++;
          ink += dark(page, cx + x, cy + y);
        }
      }
    }
    return ink / (double) all;
  }

  private static int dark(BufferedImage page, int x, int y) {
    return (page.getRGB(x, y) & 0xff) < 128 ? 1 : 0;
  }

  private static BufferedImage rendered(Shape... shapes) throws Exception {
    try (PDDocument pdf = Loader.loadPDF(pdf(shapes))) {
      return new PDFRenderer(pdf).renderImageWithDPI(0, DPI);
    }
  }

  private static byte[] pdf(Shape... shapes) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    float points = 100 * 72 / 25.4f;
    Document document = new Document(new Rectangle(points, points));
    com.lowagie.text.pdf.PdfWriter writer =
        com.lowagie.text.pdf.PdfWriter.getInstance(document, out);
    document.open();
    Drawing drawing = new Drawing("page", 100, 100, "", "", List.of(shapes));
    PdfWriter.draw(drawing, writer.getDirectContent(), 0, 0);
    document.close();
    return out.toByteArray();
  }
}
