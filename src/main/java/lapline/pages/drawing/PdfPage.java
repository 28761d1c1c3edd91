package lapline.pages.drawing;

import com.lowagie.text.Document;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfBoolean;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfString;
import java.io.ByteArrayOutputStream;
import java.util.List;
import java.util.Locale;

/** A PDF document whose pages are drawings, each as large as its drawing. */
public final class PdfPage {
  private static final float POINTS_PER_MM = 72f / 25.4f;

  private PdfPage() {}

  /**
   * @param title of the document, shown by readers instead of a file name
   * @param pages at least one
   */
  public static byte[] of(String title, Locale language, List<Drawing> pages) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Document document = new Document(size(pages.get(0)));
    com.lowagie.text.pdf.PdfWriter writer =
        com.lowagie.text.pdf.PdfWriter.getInstance(document, out);
    document.addTitle(title);
    document.addCreator("Lapline");
    document.open();
    writer.getExtraCatalog().put(PdfName.LANG, new PdfString(language.toLanguageTag()));
    writer.addViewerPreference(PdfName.DISPLAYDOCTITLE, PdfBoolean.PDFTRUE);
    for (Drawing page : pages) {
      document.setPageSize(size(page));
      document.newPage();
      PdfWriter.draw(page, writer.getDirectContent(), 0, 0);
    }
    document.close();
    return out.toByteArray();
  }

  private static Rectangle size(Drawing drawing) {
    return new Rectangle(
        (float) drawing.width() * POINTS_PER_MM, (float) drawing.height() * POINTS_PER_MM);
  }
}
