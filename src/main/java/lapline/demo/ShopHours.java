package lapline.demo;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.random.RandomGenerator;

/** When a panel is begun: on workdays, early enough to be finished before the shop closes. */
record ShopHours(ZoneId zone) {
  private static final LocalTime OPENS = LocalTime.of(8, 0);
  private static final LocalTime LATEST = LocalTime.of(14, 30);

  /** The moment asked for, or some minutes after the shop opens next. */
  Instant next(Instant wanted, RandomGenerator chance) {
    ZonedDateTime at = wanted.atZone(zone);
    if (isOpen(at)) {
      return wanted;
    }
    ZonedDateTime day = at.toLocalTime().isBefore(OPENS) ? at : at.plusDays(1);
    ZonedDateTime opened = day.with(OPENS).plusMinutes(5 + chance.nextInt(55));
    return opened.getDayOfWeek() == DayOfWeek.SUNDAY
        ? opened.plusDays(1).toInstant()
        : opened.toInstant();
  }

  /** The moment asked for, or shortly before the shop began no more panels. */
  Instant last(Instant wanted) {
    ZonedDateTime at = wanted.atZone(zone);
    if (isOpen(at)) {
      return wanted;
    }
    ZonedDateTime day = at.toLocalTime().isBefore(LATEST) ? at.minusDays(1) : at;
    ZonedDateTime closing = day.with(LATEST).minusMinutes(20);
    return closing.getDayOfWeek() == DayOfWeek.SUNDAY
        ? closing.minusDays(1).toInstant()
        : closing.toInstant();
  }

  private static boolean isOpen(ZonedDateTime at) {
    LocalTime time = at.toLocalTime();
    return at.getDayOfWeek() != DayOfWeek.SUNDAY && !time.isBefore(OPENS) && time.isBefore(LATEST);
  }
}
