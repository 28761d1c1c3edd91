package lapline.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lapline.practice.PanelScore.Input;
import lapline.practice.PanelScore.Instance;
import lapline.practice.PanelScore.Result;
import lapline.practice.Phrase.Arg;
import lapline.practice.PracticeTask.MixPart;
import lapline.trade.measure.Dimension;

/**
 * Where on a panel, in which part of the mix or at which paper a criterion's value came about: '2
 * of 14: top edge (2), left edge (8)' says more than 14.3 %.
 */
public final class Whereabouts {
  /** More names than this do not fit a heading. */
  private static final int FEW = 3;

  private final PracticeTask task;
  private final Result result;

  private Whereabouts(PracticeTask task, Result result) {
    this.task = task;
    this.result = result;
  }

  /** In place of the number; empty where the number says it all. */
  public static Optional<Phrase> of(PracticeTask task, Result result) {
    return new Whereabouts(task, result).told("", List.of());
  }

  /** The same for a heading: places are only counted where they are many. */
  public static Optional<Phrase> brief(PracticeTask task, Result result) {
    Whereabouts where = new Whereabouts(task, result);
    List<Instance> found = where.found();
    boolean many = where.isShare() && found.size() > FEW && found.size() < where.read().size();
    return many
        ? Optional.of(
            Phrase.message("score.where.count", count(found.size()), count(where.read().size())))
        : of(task, result);
  }

  /** The same as a sentence, with the criterion's name. */
  static Optional<Phrase> evidence(PracticeTask task, Result result) {
    Arg label = Phrase.word(result.criterion().label());
    return new Whereabouts(task, result).told(".evidence", List.of(label));
  }

  /** Whether the words name their own subject, as a part of the mix does. */
  public static boolean namesItself(Result result) {
    return result.criterion().quantity().equals("mix-ratio");
  }

  private Optional<Phrase> told(String form, List<Arg> more) {
    if (!result.judged() || result.instances().isEmpty()) {
      return Optional.empty();
    }
    if (isShare()) {
      return Optional.of(share(form, more));
    }
    return switch (result.criterion().quantity()) {
      case "mix-ratio" -> mix(form, more);
      case "grit-step" -> step(form, more);
      default -> Optional.empty();
    };
  }

  private boolean isShare() {
    return result.criterion().judged() == Criterion.Judged.SHARE
        && read().stream().allMatch(i -> i.where().place() > 0);
  }

  private List<Instance> read() {
    return result.instances();
  }

  private List<Instance> found() {
    return read().stream().filter(i -> i.value() != 0).toList();
  }

  private Phrase share(String form, List<Arg> more) {
    Arg all = count(read().size());
    List<Instance> found = found();
    if (found.isEmpty()) {
      return phrase("none" + form, more, all);
    }
    if (found.size() == read().size()) {
      return phrase("all" + form, more, all);
    }
    String names = found.stream().map(this::name).collect(Collectors.joining(", "));
    return phrase("some" + form, more, count(found.size()), all, Phrase.word(names));
  }

  private String name(Instance at) {
    int number = at.where().place();
    String name = task.panel().place(number).map(PanelOutline.Place::name).orElse("");
    String label = PanelOutline.nameOf(number);
    return name.isEmpty() ? label : name + " (" + label + ")";
  }

  /** What was poured of the part that strays, and what the other parts would have asked for. */
  private Optional<Phrase> mix(String form, List<Arg> more) {
    int strays = read().get(0).where().step() - 1;
    List<Double> poured = result.working().inputs().stream().map(Input::value).toList();
    if (strays < 0 || poured.size() != task.mix().size()) {
      return Optional.empty();
    }
    MixPart part = task.mix().get(strays);
    return Optional.of(
        phrase(
            "mix" + form,
            more,
            Phrase.word(part.name()),
            Phrase.quantity(poured.get(strays), Dimension.VOLUME),
            Phrase.quantity(asked(strays, poured), Dimension.VOLUME)));
  }

  /** The sheet goes by its first part; what is wrong with that one shows on all the others. */
  private double asked(int strays, List<Double> poured) {
    List<MixPart> parts = task.mix();
    if (strays > 0) {
      return poured.get(0) * parts.get(strays).parts() / parts.get(0).parts();
    }
    double others = poured.stream().skip(1).mapToDouble(v -> v).sum();
    double shares = parts.stream().skip(1).mapToDouble(MixPart::parts).sum();
    return others * parts.get(0).parts() / shares;
  }

  private Optional<Phrase> step(String form, List<Arg> more) {
    List<Input> papers = result.working().inputs();
    return papers.size() != 2
        ? Optional.empty()
        : Optional.of(phrase("step" + form, more, paper(papers.get(0)), paper(papers.get(1))));
  }

  private static Arg paper(Input paper) {
    return Phrase.quantity(paper.value(), Dimension.GRIT);
  }

  private static Arg count(int number) {
    return Phrase.quantity(number, Dimension.COUNT);
  }

  private static Phrase phrase(String key, List<Arg> more, Arg... args) {
    List<Arg> all = new ArrayList<>(List.of(args));
    all.addAll(more);
    return new Phrase("score.where." + key, "", all);
  }
}
