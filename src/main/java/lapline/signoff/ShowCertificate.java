package lapline.signoff;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import lapline.content.Json;
import lapline.people.NotAllowedException;
import lapline.people.NotFoundException;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.Role;

/** Puts together what a certificate says. There is none for a sign-off that is not good now. */
@ApplicationScoped
public class ShowCertificate {
  private SignOffRecords records;
  private PeopleRecords people;
  private Clock clock;

  protected ShowCertificate() {}

  @Inject
  public ShowCertificate(SignOffRecords records, PeopleRecords people, Clock clock) {
    this.records = records;
    this.people = people;
    this.clock = clock;
  }

  /**
   * @param evidence as it was before the examiner, with the skill as it was then
   * @param made when the certificate was put together
   */
  public record Certified(
      SignOff signOff,
      String person,
      String workshop,
      String examiner,
      Evidence evidence,
      Instant made) {}

  @Transactional
  public Certified of(Person by, UUID id) {
    SignOff signOff = records.signOff(id).orElseThrow(NotFoundException::new);
    by.mustBeIn(signOff.workshop());
    if (!by.id().equals(signOff.person())) {
      by.mustBe(Role.OWNER, Role.REGISTRAR, Role.INSTRUCTOR, Role.EXAMINER);
    }
    Instant now = clock.instant();
    if (signOff.at(now) != SignOff.Standing.GOOD) {
      throw new NotAllowedException("signoff.certificate.not-good");
    }
    Map<UUID, String> names = people.names(Set.of(signOff.person(), signOff.grantedBy()));
    return new Certified(
        signOff,
        names.get(signOff.person()),
        people.workshop(signOff.workshop()).orElseThrow().name(),
        names.get(signOff.grantedBy()),
        Json.read(grant(signOff).evidence(), Evidence.class),
        now);
  }

  /** The step by which it was granted. */
  private Step grant(SignOff signOff) {
    return records.steps(signOff.person(), signOff.skill()).stream()
        .filter(s -> s.kind() == Step.Kind.GRANTED && signOff.id().equals(s.signOff()))
        .findFirst()
        .orElseThrow();
  }
}
