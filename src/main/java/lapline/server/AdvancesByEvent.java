package lapline.server;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import lapline.people.Advances;
import lapline.people.LearnerAdvanced;

/** Passes the news on to every room that listens, within the transaction that made it. */
@ApplicationScoped
public class AdvancesByEvent implements Advances {
  @Inject private Event<LearnerAdvanced> event;

  @Override
  public void tell(LearnerAdvanced news) {
    event.fire(news);
  }
}
