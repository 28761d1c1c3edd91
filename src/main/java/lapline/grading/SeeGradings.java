package lapline.grading;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.practice.FindAttempts;

/** Shows what instructors' eyes have said about a panel to whoever may see the panel. */
@ApplicationScoped
public class SeeGradings {
  private FindAttempts find;
  private GradingRecords gradings;
  private PeopleRecords people;

  protected SeeGradings() {}

  @Inject
  public SeeGradings(FindAttempts find, GradingRecords gradings, PeopleRecords people) {
    this.find = find;
    this.gradings = gradings;
    this.people = people;
  }

  /** A grading with the name of who gave it. */
  public record Signed(Grading grading, String grader) {}

  /** Latest first. */
  @Transactional
  public List<Signed> of(Person by, UUID attempt) {
    find.attempt(by, attempt);
    List<Grading> all = gradings.of(attempt);
    Set<UUID> graders = all.stream().map(Grading::grader).collect(Collectors.toSet());
    Map<UUID, String> names = people.names(graders);
    return all.stream().map(g -> new Signed(g, names.getOrDefault(g.grader(), ""))).toList();
  }
}
