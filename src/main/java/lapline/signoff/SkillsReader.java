package lapline.signoff;

import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import lapline.content.ContentFiles;
import lapline.content.ContentReading;
import lapline.content.Problems;
import lapline.content.YamlFile;
import lapline.content.YamlNode;

/** Reads {@code curriculum/skills.yaml}. */
public final class SkillsReader {
  private static final String FILE = "curriculum/skills.yaml";

  private final Set<String> units;

  /**
   * @param units ids of the units there are
   */
  public SkillsReader(Set<String> units) {
    this.units = units;
  }

  /**
   * Never fails: with a problem in the file there is no skill to sign off, and the problems say
   * why.
   */
  public Skills read(ContentFiles files) {
    Problems problems = new Problems(FILE);
    List<Skill> all =
        files
            .read(FILE, problems)
            .flatMap(f -> YamlFile.read(f, problems))
            .map(this::skills)
            .orElse(List.of());
    ContentReading<List<Skill>> reading = ContentReading.of(all, problems);
    return new Skills(reading.usable().orElse(List.of()), reading.problems());
  }

  private List<Skill> skills(YamlNode root) {
    List<Skill> all = new ArrayList<>();
    root.list("skills").forEach(n -> all.add(skill(n)));
    root.refuseOtherKeys();
    return all;
  }

  private Skill skill(YamlNode node) {
    String unit = node.text("unit");
    if (!units.contains(unit)) {
      node.problem("there is no unit '" + unit + "'", "use one of " + units);
    }
    int months = node.wholeNumber("valid-months");
    if (months < 1 || months > 60) {
      node.problem("a sign-off cannot be good for " + months + " months", "write 1 to 60");
    }
    return new Skill(
        node.text("id"),
        node.text("title"),
        unit,
        node.text("allows"),
        rule(node.map("rule")),
        Period.ofMonths(months),
        node.text("why"));
  }

  private static Period within(YamlNode panels) {
    int months = panels.wholeNumber("within-months");
    if (months < 1 || months > 24) {
      panels.problem("panels cannot count for " + months + " months", "write 1 to 24");
    }
    return Period.ofMonths(months);
  }

  private static Skill.Rule rule(YamlNode node) {
    YamlNode panels = node.map("panels");
    Skill.Rule rule =
        new Skill.Rule(
            node.text("version"),
            node.yesNo("lesson"),
            node.yesNo("exam"),
            panels.wholeNumber("accepted"),
            panels.wholeNumber("of-last"),
            panels.texts("tasks"),
            within(panels),
            panels.wholeNumber("graded"));
    if (rule.accepted() > rule.ofLast() || rule.graded() > rule.accepted()) {
      panels.problem(
          "the numbers do not fit together", "write graded ≤ accepted ≤ of-last, like 1, 5, 6");
    }
    return rule;
  }
}
