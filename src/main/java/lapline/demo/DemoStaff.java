package lapline.demo;

import java.util.List;
import java.util.random.RandomGenerator;
import lapline.people.Person;
import lapline.people.Role;

/** The invented people of the demo workshop by what they do there. */
record DemoStaff(Person examiner, List<Person> instructors, List<Person> apprentices) {

  static DemoStaff of(List<Person> all) {
    List<Person> examiners = all.stream().filter(p -> p.is(Role.EXAMINER)).toList();
    return new DemoStaff(
        examiners.get(0),
        all.stream().filter(p -> p.is(Role.INSTRUCTOR)).toList(),
        all.stream().filter(p -> p.is(Role.APPRENTICE)).toList());
  }

  Person instructor(RandomGenerator chance) {
    return instructors.get(chance.nextInt(instructors.size()));
  }
}
