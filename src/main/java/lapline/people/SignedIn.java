package lapline.people;

import jakarta.enterprise.context.RequestScoped;
import java.util.Optional;

/**
 * The person this request acts for. Set at the edge (the sign-in of a page, the token of a
 * program); use cases do not read it but take the person as an argument.
 */
@RequestScoped
public class SignedIn {
  private Person person;

  public void act(Person who) {
    this.person = who;
  }

  public Optional<Person> maybe() {
    return Optional.ofNullable(person);
  }

  /**
   * @throws NotAllowedException when nobody is signed in
   */
  public Person person() {
    return maybe().orElseThrow(() -> new NotAllowedException("people.not-allowed.sign-in"));
  }
}
