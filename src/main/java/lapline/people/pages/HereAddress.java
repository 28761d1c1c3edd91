package lapline.people.pages;

import jakarta.faces.context.ExternalContext;
import jakarta.faces.context.FacesContext;

/** The address under which this page was opened, for links that are handed on. */
final class HereAddress {
  private HereAddress() {}

  static String of(String page) {
    ExternalContext outside = FacesContext.getCurrentInstance().getExternalContext();
    return outside.getRequestScheme()
        + "://"
        + outside.getRequestServerName()
        + ":"
        + outside.getRequestServerPort()
        + outside.getRequestContextPath()
        + page;
  }
}
