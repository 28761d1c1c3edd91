package lapline.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.application.FacesMessage;
import jakarta.faces.component.UIComponent;
import jakarta.faces.component.UIViewRoot;
import jakarta.faces.context.FacesContext;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

/** What is wrong on the page, for the summary at its top: each line leads to its field. */
@Named("errors")
@RequestScoped
public class Errors {
  @Inject private Messages messages;

  /**
   * @param field client id of the field; null for something about the whole page
   */
  public record Line(String field, String text) {}

  public List<Line> getLines() {
    FacesContext faces = FacesContext.getCurrentInstance();
    List<Line> lines = new ArrayList<>();
    Iterator<String> ids = faces.getClientIdsWithMessages();
    while (ids.hasNext()) {
      String id = ids.next();
      faces.getMessageList(id).stream()
          .filter(m -> m.getSeverity().compareTo(FacesMessage.SEVERITY_WARN) >= 0)
          .forEach(m -> lines.add(new Line(id, m.getSummary())));
    }
    return lines;
  }

  /** Quiet good news, such as 'saved'. */
  public List<String> getNews() {
    return FacesContext.getCurrentInstance().getMessageList().stream()
        .filter(m -> m.getSeverity() == FacesMessage.SEVERITY_INFO)
        .map(FacesMessage::getSummary)
        .toList();
  }

  /** Adds an error to a field, named by its id within its form, or to the whole page. */
  public void add(String fieldId, String key, Object... values) {
    FacesContext faces = FacesContext.getCurrentInstance();
    String text = messages.say(key, values);
    faces.addMessage(
        clientId(faces, fieldId), new FacesMessage(FacesMessage.SEVERITY_ERROR, text, null));
  }

  /** Good news that the page after this one tells. */
  public void news(String key, Object... values) {
    FacesContext.getCurrentInstance().getExternalContext().getFlash().setKeepMessages(true);
    newsHere(key, values);
  }

  /** Good news on this same page. Kept for another page it would be told there once more. */
  public void newsHere(String key, Object... values) {
    FacesContext.getCurrentInstance().addMessage(null, new FacesMessage(messages.say(key, values)));
  }

  private static String clientId(FacesContext faces, String fieldId) {
    if (fieldId == null) {
      return null;
    }
    UIViewRoot root = faces.getViewRoot();
    UIComponent found = find(root, fieldId);
    return found == null ? fieldId : found.getClientId(faces);
  }

  private static UIComponent find(UIComponent in, String id) {
    if (id.equals(in.getId())) {
      return in;
    }
    Iterator<UIComponent> children = in.getFacetsAndChildren();
    while (children.hasNext()) {
      UIComponent found = find(children.next(), id);
      if (found != null) {
        return found;
      }
    }
    return null;
  }
}
