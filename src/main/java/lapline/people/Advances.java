package lapline.people;

/** Who is told when a learner may have come nearer to a skill. */
@FunctionalInterface
public interface Advances {
  void tell(LearnerAdvanced news);
}
