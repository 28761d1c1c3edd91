package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.client.j2se.BufferedImageLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import javax.imageio.ImageIO;
import lapline.content.ContentFiles;
import lapline.pages.Messages;
import lapline.pages.drawing.Paper;
import lapline.pages.drawing.PdfPage;
import lapline.practice.Measurand;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTasks;
import lapline.trade.measure.UnitSystem;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The sheet that goes to the booth: one page on either paper, and a phone can open its code. */
class TaskSheetTest {
  private static final String ADDRESS = "https://lapline.example.org/learn/sheet?code=k7f3mw2q";

  record Print(
      PracticeTask task,
      Function<String, Optional<Measurand>> measurands,
      Paper paper,
      UnitSystem units) {
    @Override
    public String toString() {
      return task.id() + " on " + paper + " in " + units;
    }
  }

  /** Every task of the course, and one with all that a task can have, on every paper. */
  static List<Print> prints() {
    PracticeTasks course = PracticeTasks.read(new ContentFiles(Path.of("")));
    assertThat(course.all()).hasSizeGreaterThanOrEqualTo(4);
    List<Print> prints = new ArrayList<>();
    for (Paper paper : Paper.values()) {
      for (UnitSystem units : UnitSystem.values()) {
        prints.add(
            new Print(
                InventedTask.full(), id -> Optional.of(InventedTask.measurand(id)), paper, units));
        for (PracticeTask task : course.all()) {
          prints.add(new Print(task, course.measurands()::find, paper, units));
        }
      }
    }
    return prints;
  }

  @ParameterizedTest
  @MethodSource("prints")
  void it_is_one_page_with_title_language_and_a_code_that_opens_the_entry_page(Print print)
      throws Exception {
    TaskSheet sheet = sheet(print);
    assertThat(sheet.scale(print.paper())).as("type large enough to read").isGreaterThan(0.65);
    byte[] pdf = PdfPage.of(sheet.title(), Locale.ENGLISH, List.of(sheet.on(print.paper())));
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertThat(document.getNumberOfPages()).isEqualTo(1);
      assertThat(document.getDocumentInformation().getTitle()).isEqualTo(sheet.title());
      assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
      BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 150);
      keep(page, print);
      assertThat(decoded(page)).isEqualTo(ADDRESS);
      String text = new PDFTextStripper().getText(document);
      assertThat(text).contains("k7f3mw2q", "Ana Łukasz", print.task().title());
      assertThat(text.replaceAll("\\s+", " "))
          .contains(print.task().cautions())
          .contains(print.task().prepare());
    }
  }

  @ParameterizedTest
  @MethodSource("prints")
  void nothing_is_written_over_the_edge_of_the_paper(Print print) throws Exception {
    TaskSheet sheet = sheet(print);
    byte[] pdf = PdfPage.of("sheet", Locale.ENGLISH, List.of(sheet.on(print.paper())));
    try (PDDocument document = Loader.loadPDF(pdf)) {
      BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 72);
      int rim = 20;
      for (int y = 0; y < page.getHeight(); y++) {
        for (int x = 0; x < page.getWidth(); x++) {
          boolean onRim =
              x < rim || y < rim || x >= page.getWidth() - rim || y >= page.getHeight() - rim;
          if (onRim) {
            assertThat(page.getRGB(x, y) & 0xffffff).as(x + "," + y).isEqualTo(0xffffff);
          }
        }
      }
    }
  }

  private static TaskSheet sheet(Print print) {
    return new TaskSheet(
        print.task(),
        print.measurands(),
        new TaskSheet.Head("Ana Łukasz", "3 Mar 2026", "k7f3mw2q", ADDRESS, "closer passes"),
        new PhraseWriter(new Messages(), print.units()));
  }

  private static String decoded(BufferedImage page) throws Exception {
    return new QRCodeReader()
        .decode(new BinaryBitmap(new HybridBinarizer(new BufferedImageLuminanceSource(page))))
        .getText();
  }

  /** For people to look at. */
  private static void keep(BufferedImage page, Print print) throws Exception {
    Path folder = Files.createDirectories(Path.of("target/sheets"));
    String name = (print + ".png").replaceAll("[^A-Za-z0-9.]+", "-");
    ImageIO.write(page, "png", folder.resolve(name).toFile());
  }
}
