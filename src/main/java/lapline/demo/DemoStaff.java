package lapline.demo;

import java.util.List;
import java.util.random.RandomGenerator;
import lapline.people.Person;

/** The invented people of the demo workshop by what they do there. */
record DemoStaff(Person examiner, List<Person> instructors, List<Person> apprentices) {

  /** By the order in which they were made: a registrar may have changed their roles since. */
  static DemoStaff of(List<Person> all) {
    return new DemoStaff(
        all.get(DemoPeople.EXAMINER),
        all.subList(DemoPeople.FIRST_INSTRUCTOR, DemoPeople.FIRST_APPRENTICE),
        all.subList(DemoPeople.FIRST_APPRENTICE, all.size()));
  }

  /**
   * @param number from 1, as in the sign-in name
   */
  Person apprentice(int number) {
    return apprentices.get(number - 1);
  }

  Person instructor(RandomGenerator chance) {
    return instructors.get(chance.nextInt(instructors.size()));
  }
}
