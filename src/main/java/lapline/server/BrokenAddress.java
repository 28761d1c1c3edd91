package lapline.server;

import jakarta.faces.FacesException;
import jakarta.faces.context.FacesContext;
import jakarta.faces.event.PhaseEvent;
import jakarta.faces.event.PhaseId;
import jakarta.faces.event.PhaseListener;
import java.io.IOException;

/**
 * A page whose address holds a parameter that is none (a page number 'x', a role nobody has) is not
 * found. Faces would go on without the page's own look at who asks, and show it to anybody.
 */
public class BrokenAddress implements PhaseListener {

  @Override
  public PhaseId getPhaseId() {
    return PhaseId.PROCESS_VALIDATIONS;
  }

  @Override
  public void beforePhase(PhaseEvent event) {
    // nothing is known before the parameters have been read
  }

  @Override
  public void afterPhase(PhaseEvent event) {
    FacesContext faces = event.getFacesContext();
    if (faces.isPostback() || !faces.isValidationFailed() || faces.getResponseComplete()) {
      return;
    }
    try {
      faces.getExternalContext().responseSendError(404, null);
    } catch (IOException e) {
      throw new FacesException(e);
    }
    faces.responseComplete();
  }
}
