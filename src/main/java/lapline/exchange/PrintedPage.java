package lapline.exchange;

import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Locale;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.Paper;
import lapline.pages.drawing.PdfPage;
import lapline.people.Person;

/** Drawings sent as a file to print, a page each. */
final class PrintedPage {
  private PrintedPage() {}

  /**
   * @param name of the file, without its ending
   */
  static Response of(Drawing page, String name) {
    return of(page.title(), List.of(page), name);
  }

  /**
   * @param title of the whole
   * @param name of the file, without its ending
   */
  static Response of(String title, List<Drawing> pages, String name) {
    return Response.ok(PdfPage.of(title, Locale.ENGLISH, pages))
        .header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"" + name + ".pdf\"")
        .build();
  }

  /** The sheet of this name; where none is named, the one usual in the person's units. */
  static Paper paper(String name, Person by) {
    return name == null ? Paper.usualIn(by.units()) : Paper.of(name);
  }

  /** Where the pages are, for codes that stand on paper. */
  static String address(UriInfo here) {
    return here.getBaseUri().resolve("../..").toString().replaceAll("/+$", "");
  }
}
