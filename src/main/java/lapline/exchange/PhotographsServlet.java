package lapline.exchange;

import jakarta.inject.Inject;
import jakarta.servlet.ServletException;
import jakarta.servlet.annotation.MultipartConfig;
import jakarta.servlet.annotation.WebServlet;
import jakarta.servlet.http.HttpServlet;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.Part;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import lapline.people.NotAllowedException;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.SignedIn;
import lapline.practice.photographs.CleanPicture;
import lapline.practice.photographs.LookAfterPhotographs;
import lapline.practice.photographs.Photograph;
import lapline.practice.photographs.PhotographRefusedException;
import lapline.practice.photographs.PhotographRefusedException.Reason;

/**
 * Takes photographs from a page's form and shows them to those who may see their panel. What came
 * of a form goes back to its page in the address, where the page says it in words. Which panel and
 * which page stands in the address too, since of a form over its limit the server tells no field.
 */
@WebServlet("/learn/photographs/*")
@MultipartConfig(
    fileSizeThreshold = 65_536,
    maxFileSize = PhotographsServlet.READ_TO_THE_END,
    maxRequestSize = PhotographsServlet.READ_TO_THE_END)
public class PhotographsServlet extends HttpServlet {
  /**
   * A form up to this length is read to its end, on the disk, so that its page can say that it is
   * too large and still knows what was typed; a browser that is cut off shows its own error.
   */
  static final long READ_TO_THE_END = 200L * 1024 * 1024;

  private static final Map<String, String> PAGES =
      Map.of("entry", "/learn/entry", "result", "/learn/result", "bench", "/teach/bench");

  private static final Set<String> DONE = Set.of("added", "removed");

  @Inject private transient SignedIn signedIn;
  @Inject private transient LookAfterPhotographs photographs;

  @Override
  protected void doGet(HttpServletRequest request, HttpServletResponse response)
      throws IOException {
    try {
      Photograph photograph = photographs.photograph(signedIn.person(), idIn(request));
      send(photograph, request, response);
    } catch (NotFoundException | NotAllowedException e) {
      response.sendError(HttpServletResponse.SC_NOT_FOUND);
    }
  }

  private void send(Photograph photograph, HttpServletRequest request, HttpServletResponse response)
      throws IOException {
    boolean small = request.getParameter("small") != null;
    String tag = '"' + photograph.hash() + (small ? "s" : "") + '"';
    // a picture never changes under its id; but only this person's browser may keep it
    response.setHeader("Cache-Control", "private, max-age=86400");
    response.setHeader("ETag", tag);
    if (tag.equals(request.getHeader("If-None-Match"))) {
      response.setStatus(HttpServletResponse.SC_NOT_MODIFIED);
      return;
    }
    byte[] picture = photographs.picture(photograph, small);
    response.setContentType("image/jpeg");
    response.setContentLength(picture.length);
    response.getOutputStream().write(picture);
  }

  @Override
  protected void doPost(HttpServletRequest request, HttpServletResponse response)
      throws IOException {
    if (!fromOurPage(request)) {
      response.sendError(HttpServletResponse.SC_FORBIDDEN);
      return;
    }
    try {
      String outcome =
          request.getPathInfo() == null || request.getPathInfo().equals("/")
              ? add(request)
              : remove(request);
      response.setStatus(HttpServletResponse.SC_SEE_OTHER);
      response.setHeader("Location", back(request, outcome));
    } catch (NotFoundException e) {
      response.sendError(HttpServletResponse.SC_NOT_FOUND);
    } catch (NotAllowedException e) {
      response.sendError(HttpServletResponse.SC_FORBIDDEN);
    } catch (ServletException e) {
      // the server's word for a body that is no form with files
      response.sendError(HttpServletResponse.SC_UNSUPPORTED_MEDIA_TYPE);
    }
  }

  /** A browser tells whose page sent a form; another site's cannot act in a person's name. */
  private static boolean fromOurPage(HttpServletRequest request) {
    String site = request.getHeader("Sec-Fetch-Site");
    if (site != null) {
      return site.equals("same-origin");
    }
    String origin = request.getHeader("Origin");
    return origin != null
        && origin.replaceFirst("^https?://", "").equals(request.getHeader("Host"));
  }

  private String add(HttpServletRequest request) throws IOException, ServletException {
    try {
      Person by = signedIn.person();
      UUID attempt = uuid(inAddress(request, "attempt"));
      List<Part> files =
          request.getParts().stream()
              .filter(p -> "photograph".equals(p.getName()) && p.getSize() > 0)
              .toList();
      CleanPicture.mustFit(files.stream().map(Part::getSize).toList());
      for (Part file : files) {
        byte[] bytes = file.getInputStream().readAllBytes();
        photographs.add(by, attempt, bytes, request.getParameter("caption"));
      }
      return files.isEmpty() ? "none" : "added";
    } catch (PhotographRefusedException e) {
      return name(e.reason());
    } catch (IllegalStateException e) {
      // the server's word for a form that even it does not read
      return name(Reason.TOO_MUCH_TOGETHER);
    }
  }

  private static String name(Reason reason) {
    return reason.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private String remove(HttpServletRequest request) {
    try {
      photographs.remove(signedIn.person(), idIn(request));
      return "removed";
    } catch (PhotographRefusedException e) {
      return name(e.reason());
    }
  }

  private static String back(HttpServletRequest request, String outcome) {
    return request.getContextPath()
        + PAGES.getOrDefault(inAddress(request, "page"), PAGES.get("entry"))
        + "?attempt="
        + uuid(inAddress(request, "attempt"))
        + "&photograph="
        + outcome
        + typed(request, outcome)
        + "#photographs";
  }

  /** What was written beside photographs that were not taken, for the form to show again. */
  private static String typed(HttpServletRequest request, String outcome) {
    String caption = DONE.contains(outcome) ? null : request.getParameter("caption");
    return caption == null || caption.isEmpty()
        ? ""
        : "&caption="
            + URLEncoder.encode(LookAfterPhotographs.tidy(caption), StandardCharsets.UTF_8);
  }

  /** What stands behind a name in the address; empty where nothing does. */
  private static String inAddress(HttpServletRequest request, String name) {
    String query = request.getQueryString() == null ? "" : request.getQueryString();
    return Arrays.stream(query.split("&"))
        .filter(part -> part.startsWith(name + "="))
        .map(part -> part.substring(name.length() + 1))
        .findFirst()
        .orElse("");
  }

  private static UUID idIn(HttpServletRequest request) {
    String path = request.getPathInfo();
    return uuid(path == null ? "" : path.substring(1));
  }

  private static UUID uuid(String text) {
    try {
      return UUID.fromString(String.valueOf(text));
    } catch (IllegalArgumentException e) {
      throw new NotFoundException();
    }
  }
}
