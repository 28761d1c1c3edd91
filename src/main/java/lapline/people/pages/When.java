package lapline.people.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import lapline.people.Person;
import lapline.people.SignedIn;

/**
 * Shows times in the workshop's zone: {@code #{when.day(instant)}}, {@code #{when.time(instant)}}.
 */
@Named
@RequestScoped
public class When {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm", Locale.ENGLISH);

  @Inject private SignedIn signedIn;

  public String day(Instant at) {
    return at == null ? "" : DAY.format(at.atZone(zone()));
  }

  public String date(LocalDate day) {
    return DAY.format(day);
  }

  public String time(Instant at) {
    return at == null ? "" : TIME.format(at.atZone(zone()));
  }

  private ZoneId zone() {
    return signedIn.maybe().map(Person::zone).orElse(ZoneOffset.UTC);
  }
}
