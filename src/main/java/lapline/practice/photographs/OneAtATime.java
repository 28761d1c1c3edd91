package lapline.practice.photographs;

import java.time.Duration;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import lapline.practice.photographs.PhotographRefusedException.Reason;

/**
 * The one place where a picture lies unpacked: unpacked pictures are what a server has least room
 * for, so that they go one by one, and who waited too long is asked to come again.
 */
final class OneAtATime {
  private final Semaphore place = new Semaphore(1, true);
  private final Duration longestWait;

  OneAtATime(Duration longestWait) {
    this.longestWait = longestWait;
  }

  /** Whatever is done with the picture while it lies there. */
  interface Work<T, E extends Exception> {
    T run() throws E;
  }

  /**
   * @throws PhotographRefusedException when the place did not come free in time
   */
  <T, E extends Exception> T run(Work<T, E> work) throws E {
    waitForTurn();
    try {
      return work.run();
    } finally {
      place.release();
    }
  }

  private void waitForTurn() {
    try {
      if (!place.tryAcquire(longestWait.toMillis(), TimeUnit.MILLISECONDS)) {
        throw new PhotographRefusedException(Reason.BUSY);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new PhotographRefusedException(Reason.BUSY);
    }
  }
}
