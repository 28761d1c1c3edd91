package lapline.server;

import jakarta.faces.FacesException;
import jakarta.faces.application.ViewExpiredException;
import jakarta.faces.context.ExceptionHandler;
import jakarta.faces.context.ExceptionHandlerWrapper;
import jakarta.faces.context.ExternalContext;
import jakarta.faces.context.FacesContext;
import jakarta.faces.event.ExceptionQueuedEvent;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.util.Iterator;
import java.util.logging.Level;
import java.util.logging.Logger;
import lapline.people.NotAllowedException;
import lapline.people.NotFoundException;

/**
 * Turns what went wrong in a page into a page that says so in words. The trace goes to the log
 * under a number that the page shows; it never reaches the page.
 */
class PageExceptionHandler extends ExceptionHandlerWrapper {
  private static final Logger LOG = Logger.getLogger("lapline.pages");

  PageExceptionHandler(ExceptionHandler wrapped) {
    super(wrapped);
  }

  @Override
  public void handle() {
    Iterator<ExceptionQueuedEvent> events = getUnhandledExceptionQueuedEvents().iterator();
    if (!events.hasNext()) {
      return;
    }
    Throwable cause = rootOf(events.next().getContext().getException());
    FacesContext faces = FacesContext.getCurrentInstance();
    events.remove();
    answer(faces, cause);
  }

  private static Throwable rootOf(Throwable thrown) {
    Throwable t = thrown;
    while (t.getCause() != null && !isOurs(t)) {
      t = t.getCause();
    }
    return t;
  }

  private static boolean isOurs(Throwable t) {
    return t instanceof NotFoundException
        || t instanceof NotAllowedException
        || t instanceof ViewExpiredException;
  }

  private static void answer(FacesContext faces, Throwable cause) {
    ExternalContext outside = faces.getExternalContext();
    if (outside.isResponseCommitted()) {
      LOG.log(Level.SEVERE, "a page broke after it had begun to be sent", cause);
      faces.responseComplete();
      return;
    }
    try {
      if (cause instanceof ViewExpiredException) {
        outside.redirect(pageAgain(outside));
      } else {
        // the container shows the error page in a request of its own, with the right status
        remember(outside, cause);
        outside.responseSendError(status(cause), null);
      }
    } catch (IOException e) {
      throw new FacesException(e);
    }
    faces.responseComplete();
  }

  /** The same page afresh: what had been saved is on it again. */
  private static String pageAgain(ExternalContext outside) {
    HttpServletRequest request = (HttpServletRequest) outside.getRequest();
    String query = request.getQueryString();
    String page = request.getRequestURI() + (query == null ? "" : "?" + query);
    return page + (query == null ? "?" : "&") + "expired=true";
  }

  private static int status(Throwable cause) {
    return cause instanceof NotFoundException
        ? 404
        : cause instanceof NotAllowedException ? 403 : 500;
  }

  private static void remember(ExternalContext outside, Throwable cause) {
    if (cause instanceof NotAllowedException refused) {
      outside.getRequestMap().put("why", refused.key());
    } else if (!(cause instanceof NotFoundException)) {
      TroubleNumber.give((HttpServletRequest) outside.getRequest(), cause);
    }
  }
}
