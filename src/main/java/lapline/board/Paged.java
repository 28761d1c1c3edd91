package lapline.board;

import java.util.List;
import lapline.pages.Paging;

/** One page of a long list. */
public record Paged<T>(Paging paging, List<T> rows) {
  public Paged {
    rows = List.copyOf(rows);
  }
}
