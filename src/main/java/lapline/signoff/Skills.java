package lapline.signoff;

import java.util.List;
import java.util.Optional;
import lapline.content.Problem;

/** All skills that the workshop can sign off. */
public record Skills(List<Skill> all, List<Problem> problems) {
  public Skills {
    all = List.copyOf(all);
    problems = List.copyOf(problems);
  }

  public Optional<Skill> find(String id) {
    return all.stream().filter(s -> s.id().equals(id)).findFirst();
  }

  public List<Skill> ofUnit(String unit) {
    return all.stream().filter(s -> s.unit().equals(unit)).toList();
  }
}
