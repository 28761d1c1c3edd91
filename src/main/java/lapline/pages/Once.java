package lapline.pages;

import java.util.function.Supplier;

/** Something on a page that is worked out when first asked for, however often the page asks. */
public final class Once<T> {
  private final Supplier<T> work;
  private T found;
  private boolean done;

  public Once(Supplier<T> work) {
    this.work = work;
  }

  public T get() {
    if (!done) {
      found = work.get();
      done = true;
    }
    return found;
  }
}
