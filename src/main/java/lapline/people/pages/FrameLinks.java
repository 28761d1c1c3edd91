package lapline.people.pages;

import static lapline.people.Role.APPRENTICE;
import static lapline.people.Role.EXAMINER;
import static lapline.people.Role.INSTRUCTOR;
import static lapline.people.Role.OWNER;
import static lapline.people.Role.REGISTRAR;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.context.FacesContext;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.List;
import java.util.Set;
import lapline.people.Role;
import lapline.people.SignedIn;

/** The ways that lead on from every page: those of the roles the signed-in person has. */
@Named
@RequestScoped
public class FrameLinks {
  private static final List<Way> WAYS =
      List.of(
          new Way("/learn/today", "today", Set.of(APPRENTICE)),
          new Way("/learn/record", "record", Set.of(APPRENTICE)),
          new Way("/teach/needs", "needs", Set.of(INSTRUCTOR)),
          new Way("/teach/cohort", "cohort", Set.of(INSTRUCTOR)),
          new Way("/teach/items", "items", Set.of(INSTRUCTOR)),
          new Way("/teach/tasks", "tasks", Set.of(INSTRUCTOR)),
          new Way("/examine/decisions", "decisions", Set.of(EXAMINER)),
          new Way(
              "/shop/skills-board", "skills-board", Set.of(OWNER, INSTRUCTOR, REGISTRAR, EXAMINER)),
          new Way("/shop/due", "due", Set.of(OWNER, REGISTRAR)),
          new Way("/office/people", "people", Set.of(REGISTRAR)),
          new Way("/office/workshop", "workshop", Set.of(REGISTRAR)),
          new Way("/office/notices", "notices", Set.of(REGISTRAR)),
          new Way("/office/targets", "targets", Set.of(REGISTRAR, INSTRUCTOR)),
          new Way("/account", "account", Set.of(Role.values())));

  @Inject private SignedIn signedIn;

  private record Way(String page, String name, Set<Role> whose) {}

  /**
   * @param page where it leads
   * @param wordsKey the sentence that names it
   * @param here "page" when it is the page that is open, else null
   */
  public record Link(String page, String wordsKey, String here) {}

  public List<Link> getAll() {
    String open = FacesContext.getCurrentInstance().getViewRoot().getViewId();
    Set<Role> roles = signedIn.person().roles();
    return WAYS.stream()
        .filter(w -> w.whose().stream().anyMatch(roles::contains))
        .map(w -> new Link(w.page(), "frame.nav." + w.name(), here(w, open)))
        .toList();
  }

  private static String here(Way way, String open) {
    return open.equals(way.page() + ".xhtml") ? "page" : null;
  }
}
