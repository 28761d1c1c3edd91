package lapline.board.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.List;
import lapline.board.Ending;
import lapline.board.Paged;
import lapline.board.SeeDue;
import lapline.pages.Messages;
import lapline.people.SignedIn;

/** What runs out when? */
@Named
@RequestScoped
public class DuePage {
  private static final List<Integer> WINDOWS = List.of(30, 60, 90, 0);

  @Inject private SignedIn signedIn;
  @Inject private SeeDue due;
  @Inject private Messages messages;
  private int days = 30;
  private int page = 1;
  private Paged<Ending> endings;
  private List<Tab> tabs;

  /**
   * @param days 0 for what has ended already
   */
  public record Tab(int days, int count, boolean here) {}

  /** Refuses everybody else before anything is shown. */
  public void open() {
    getEndings();
  }

  public String getTitle() {
    int count = getEndings().paging().getCount();
    return days == 0
        ? messages.say("board.due.title.ended", count)
        : messages.say("board.due.title", count, days);
  }

  public Paged<Ending> getEndings() {
    if (endings == null) {
      endings = due.ending(signedIn.person(), days, page);
    }
    return endings;
  }

  public List<Tab> getTabs() {
    if (tabs == null) {
      tabs =
          WINDOWS.stream()
              .map(d -> new Tab(d, due.count(signedIn.person(), d), d == days))
              .toList();
    }
    return tabs;
  }

  public int getDays() {
    return days;
  }

  /** Any other number of days shows the nearest. */
  public void setDays(int days) {
    this.days = WINDOWS.contains(days) ? days : 30;
  }

  public int getPage() {
    return page;
  }

  public void setPage(int page) {
    this.page = page;
  }
}
