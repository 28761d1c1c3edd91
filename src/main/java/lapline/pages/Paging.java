package lapline.pages;

/**
 * Which page of a long list is shown.
 *
 * @param page counted from 1; a page past the end shows the last
 * @param count how many rows there are in all
 */
public record Paging(int page, int count) {
  /** Rows on one page. */
  public static final int SIZE = 25;

  public Paging {
    page = Math.max(1, Math.min(page, Math.max(1, (count + SIZE - 1) / SIZE)));
  }

  public int first() {
    return (page - 1) * SIZE;
  }

  public int getPages() {
    return Math.max(1, (count + SIZE - 1) / SIZE);
  }

  public int getPage() {
    return page;
  }

  public int getCount() {
    return count;
  }

  public boolean isBefore() {
    return page > 1;
  }

  public boolean isAfter() {
    return page < getPages();
  }
}
