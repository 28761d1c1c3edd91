package lapline.practice.pages;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import lapline.pages.drawing.SheetColumn;
import lapline.practice.Criterion;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTask.Field;
import lapline.practice.PracticeTask.Section;
import lapline.practice.Scope;
import lapline.practice.TargetSources;

/** The targets, each with the boxes that it is judged by; the figures are in bold. */
final class SheetTargets {
  private static final double LEAST = 52;

  private final PracticeTask task;
  private final CriterionWriter criteria;
  private final PhraseWriter words;

  SheetTargets(PracticeTask task, CriterionWriter criteria, PhraseWriter words) {
    this.task = task;
    this.criteria = criteria;
    this.words = words;
  }

  /** What a box that is filled in once should hold; empty where nothing is asked of it. */
  String beside(Field field) {
    return field.scope() == Scope.PANEL
        ? task.criteria().stream()
            .filter(c -> c.quantity().equals(field.measurand()))
            .map(criteria::target)
            .collect(Collectors.joining(", "))
        : "";
  }

  /** Writes, beside its title, what a section is held against, but for what is beside a box. */
  void write(Section section, SheetColumn sheet) {
    double x = sheet.topic(section.title());
    write(those(c -> section.fields().stream().anyMatch(f -> f == home(c))), sheet, x);
  }

  /** Those that no box of the task stands for. */
  Optional<SheetBlock> others() {
    List<Criterion> others = those(c -> home(c) == null);
    return others.isEmpty()
        ? Optional.empty()
        : Optional.of(SheetBlock.from(LEAST, sheet -> writeOthers(others, sheet)));
  }

  private void writeOthers(List<Criterion> others, SheetColumn sheet) {
    SheetProse line = new SheetProse(sheet, sheet.topic(words.say("practice-sheet.targets")));
    others.forEach(c -> line.pair(c.label(), criteria.target(c)));
  }

  private List<Criterion> those(Predicate<Criterion> which) {
    return task.criteria().stream().filter(which).filter(c -> !isBeside(c)).toList();
  }

  private Field home(Criterion criterion) {
    return TargetSources.of(task, criterion).stream().findFirst().orElse(null);
  }

  private boolean isBeside(Criterion criterion) {
    return task.field(criterion.quantity()).filter(f -> f.scope() == Scope.PANEL).isPresent();
  }

  private void write(List<Criterion> targets, SheetColumn sheet, double x) {
    if (!targets.isEmpty()) {
      SheetProse line = new SheetProse(sheet, x);
      String lead = words.say("practice-sheet.aim") + " ";
      for (Criterion c : targets) {
        line.pair((c == targets.get(0) ? lead : "") + c.label(), criteria.target(c));
      }
    }
  }
}
