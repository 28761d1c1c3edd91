package lapline.pages.drawing;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.ReaderException;
import com.google.zxing.Result;
import com.google.zxing.client.j2se.BufferedImageLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.GenericMultipleBarcodeReader;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/**
 * A file as it comes out of the printer, looked at by a test.
 *
 * @param text as a reader copies it out, on one line
 * @param smallest type on it, in points
 * @param looks of the pages at 150 dots an inch
 */
public record PrintedSheet(
    int pages,
    String title,
    String language,
    String text,
    double smallest,
    List<BufferedImage> looks) {
  private static final int DOTS_PER_INCH = 150;

  /** A phone looks at many frames; a reader that gives up at the first one is none. */
  private static final Map<DecodeHintType, Object> LONGER_LOOK =
      Map.of(DecodeHintType.TRY_HARDER, true);

  public static PrintedSheet of(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PrintedSheet(
          document.getNumberOfPages(),
          document.getDocumentInformation().getTitle(),
          document.getDocumentCatalog().getLanguage(),
          new PDFTextStripper().getText(document).replaceAll("\\s+", " "),
          smallest(document),
          looks(document));
    }
  }

  private static double smallest(PDDocument document) throws IOException {
    List<Float> sizes = new ArrayList<>();
    PDFTextStripper reader =
        new PDFTextStripper() {
          @Override
          protected void processTextPosition(TextPosition letter) {
            sizes.add(letter.getYScale());
          }
        };
    reader.getText(document);
    return Collections.min(sizes);
  }

  private static List<BufferedImage> looks(PDDocument document) throws IOException {
    List<BufferedImage> looks = new ArrayList<>();
    for (int page = 0; page < document.getNumberOfPages(); page++) {
      looks.add(new PDFRenderer(document).renderImageWithDPI(page, DOTS_PER_INCH));
    }
    return looks;
  }

  /** What a phone reads from the square code of the first page. */
  public String decoded() {
    return codes().get(0);
  }

  /** What a phone reads from the square code of each page. */
  public List<String> codes() {
    return looks.stream().map(PrintedSheet::decoded).toList();
  }

  /** What a phone reads from all square codes of the first page, in the order of the alphabet. */
  public List<String> allCodes() throws ReaderException {
    return Stream.of(
            new GenericMultipleBarcodeReader(new QRCodeReader())
                .decodeMultiple(bits(looks.get(0)), LONGER_LOOK))
        .map(Result::getText)
        .sorted()
        .toList();
  }

  private static BinaryBitmap bits(BufferedImage look) {
    return new BinaryBitmap(new HybridBinarizer(new BufferedImageLuminanceSource(look)));
  }

  private static String decoded(BufferedImage look) {
    try {
      return new QRCodeReader().decode(bits(look), LONGER_LOOK).getText();
    } catch (ReaderException e) {
      return "no code can be read";
    }
  }

  /** Whether nothing is printed on the outer seven millimetres of any page. */
  public boolean hasBlankRim() {
    return hasBlankRim(7);
  }

  public boolean hasBlankRim(double millimetres) {
    return looks.stream().allMatch(look -> hasBlankRim(look, millimetres));
  }

  private static boolean hasBlankRim(BufferedImage look, double millimetres) {
    int rim = (int) (millimetres * DOTS_PER_INCH / 25.4);
    for (int y = 0; y < look.getHeight(); y++) {
      for (int x = 0; x < look.getWidth(); x++) {
        boolean onRim =
            x < rim || y < rim || x >= look.getWidth() - rim || y >= look.getHeight() - rim;
        if (onRim && (look.getRGB(x, y) & 0xffffff) != 0xffffff) {
          return false;
        }
      }
    }
    return true;
  }

  /** Keeps pictures for people to look at. */
  public void keep(String name) throws IOException {
    Path folder = Files.createDirectories(Path.of("target/sheets"));
    for (int page = 1; page <= looks.size(); page++) {
      String file = (name + (page == 1 ? "" : "-" + page) + ".png");
      ImageIO.write(
          looks.get(page - 1),
          "png",
          folder.resolve(file.replaceAll("[^A-Za-z0-9.]+", "-")).toFile());
    }
  }
}
