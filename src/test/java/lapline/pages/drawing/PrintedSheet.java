package lapline.pages.drawing;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.ReaderException;
import com.google.zxing.client.j2se.BufferedImageLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * A file as it comes out of the printer, looked at by a test.
 *
 * @param text as a reader copies it out, on one line
 * @param first the first page at 150 dots an inch
 */
public record PrintedSheet(
    int pages, String title, String language, String text, BufferedImage first) {

  public static PrintedSheet of(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PrintedSheet(
          document.getNumberOfPages(),
          document.getDocumentInformation().getTitle(),
          document.getDocumentCatalog().getLanguage(),
          new PDFTextStripper().getText(document).replaceAll("\\s+", " "),
          new PDFRenderer(document).renderImageWithDPI(0, 150));
    }
  }

  /** What a phone reads from the square code. */
  public String decoded() {
    try {
      return new QRCodeReader()
          .decode(new BinaryBitmap(new HybridBinarizer(new BufferedImageLuminanceSource(first))))
          .getText();
    } catch (ReaderException e) {
      return "no code can be read";
    }
  }

  /** Whether nothing is printed on the outer seven millimetres of the first page. */
  public boolean hasBlankRim() {
    int rim = 42;
    for (int y = 0; y < first.getHeight(); y++) {
      for (int x = 0; x < first.getWidth(); x++) {
        boolean onRim =
            x < rim || y < rim || x >= first.getWidth() - rim || y >= first.getHeight() - rim;
        if (onRim && (first.getRGB(x, y) & 0xffffff) != 0xffffff) {
          return false;
        }
      }
    }
    return true;
  }

  /** Keeps a picture for people to look at. */
  public void keep(String name) throws IOException {
    Path folder = Files.createDirectories(Path.of("target/sheets"));
    String file = (name + ".png").replaceAll("[^A-Za-z0-9.]+", "-");
    ImageIO.write(first, "png", folder.resolve(file).toFile());
  }
}
