package lapline.practice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import lapline.practice.Criterion.Judged;
import lapline.practice.PanelScore.Instance;
import lapline.practice.PanelScore.Result;
import lapline.practice.PanelScore.Working;
import lapline.practice.Phrase.End;
import lapline.practice.quantity.Averages;
import lapline.practice.quantity.Measured;
import lapline.practice.quantity.Measured.DoesNotApply;
import lapline.practice.quantity.Measured.Missing;
import lapline.practice.quantity.Measured.Value;
import lapline.practice.quantity.Measured.Values;
import lapline.practice.quantity.MeasuredPanel;
import lapline.practice.quantity.PanelQuantities;
import lapline.trade.film.FurtherReadings;
import lapline.trade.measure.Conformance;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import lapline.trade.measure.Summary;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Verdict;

/** Judges one criterion of one panel: value, conformance probability, verdict, practice points. */
final class CriterionJudge {
  /** More readings than this are not worth proposing. */
  private static final int MOST_FURTHER = 12;

  /** So often the number proposed settles it; the message says so. */
  private static final double LIKELY = 0.8;

  private CriterionJudge() {}

  static Result judge(Criterion criterion, MeasuredPanel panel, RecordGaps gaps) {
    Result result = asRead(criterion, panel, gaps);
    return PanelQuantities.OF_DRY_FILM.contains(criterion.quantity())
        ? panel.withoutStrays().map(p -> beside(panel, result, criterion.measure(p))).orElse(result)
        : result;
  }

  /** More readings and surer ones would settle nothing while one of them may be a slip. */
  private static Result beside(MeasuredPanel panel, Result result, Measured without) {
    if (hangsOnStrays(result, without)) {
      return result.advised(strays(Result.HANGS_ON_STRAYS, panel));
    }
    return result.judged() && result.verdict() == Verdict.DOUBTFUL
        ? result.advised(strays("score.advice.stray-first", panel))
        : result;
  }

  /** Whether it would come out better without the readings that stray. */
  private static boolean hangsOnStrays(Result result, Measured without) {
    return result.judged()
        && without instanceof Values values
        && judged(result.criterion(), values).verdict().compareTo(result.verdict()) < 0;
  }

  private static Phrase strays(String key, MeasuredPanel panel) {
    List<Integer> places = panel.strays().stream().sorted().toList();
    return Phrase.message(
        key,
        Phrase.quantity(places.size(), Dimension.COUNT),
        Phrase.word(PanelOutline.namesOf(places)));
  }

  private static Result asRead(Criterion criterion, MeasuredPanel panel, RecordGaps gaps) {
    Measured measured = criterion.measure(panel);
    List<Cell> open = gaps.of(criterion, measured);
    if (!open.isEmpty()) {
      return notJudged(criterion, open.stream().map(Cell::key).toList());
    }
    if (measured instanceof Missing missing) {
      return notJudged(criterion, notRead(missing, panel));
    }
    if (measured instanceof DoesNotApply) {
      return notJudged(criterion, List.of());
    }
    return judged(criterion, (Values) measured);
  }

  private static Result judged(Criterion criterion, Values values) {
    return criterion.judged() == Judged.EACH
        ? each(criterion, values)
        : together(criterion, values);
  }

  /** Of what a quantity is taken from, what nobody wrote down; all of it where that is nothing. */
  private static List<String> notRead(Missing missing, MeasuredPanel panel) {
    List<String> notRead =
        missing.measurands().stream().filter(m -> panel.entry().of(m).isEmpty()).toList();
    return notRead.isEmpty() ? missing.measurands() : notRead;
  }

  private static Result notJudged(Criterion criterion, List<String> missing) {
    return new Result(
        criterion,
        false,
        Verdict.DOUBTFUL,
        0,
        0,
        0,
        null,
        0,
        List.of(),
        new Working("", "", List.of()),
        missing,
        null);
  }

  /** Every value by itself; the least sure one decides, the points are shared. */
  private static Result each(Criterion c, Values values) {
    List<Instance> instances = instances(c, values);
    Instance worst =
        instances.stream().min(Comparator.comparingDouble(Instance::conformance)).orElseThrow();
    double points =
        values.values().stream()
            .mapToDouble(v -> Desirability.expected(v.estimate(), c.target(), c.fade()))
            .average()
            .orElse(0);
    return result(c, worst.estimate(), worst.conformance(), points, instances, values);
  }

  private static Result together(Criterion c, Values values) {
    Value one = combined(c.judged(), values.values());
    double conformance = one.conformance().applyAsDouble(c.target());
    double points = Desirability.expected(one.estimate(), c.target(), c.fade());
    return result(c, one.estimate(), conformance, points, instances(c, values), values);
  }

  private static Value combined(Judged judged, List<Value> values) {
    if (values.size() == 1 && judged != Judged.SHARE) {
      return values.get(0);
    }
    List<Estimate> all = values.stream().map(Value::estimate).toList();
    Cell where = Cell.panel(values.get(0).where().measurand());
    return switch (judged) {
      case MEAN, EACH -> Value.of(where, Averages.of(all));
      case SUM -> Value.of(where, Gum.sum(all));
      case LAST -> values.get(values.size() - 1);
      case SHARE -> Value.of(where, Estimate.of(share(all), 0));
      case LARGEST_STEP -> Value.of(where, largestStep(all));
    };
  }

  private static double share(List<Estimate> all) {
    return all.stream().filter(e -> e.value() != 0).count() / (double) all.size();
  }

  private static Estimate largestStep(List<Estimate> all) {
    Estimate largest = Estimate.of(0, 0);
    for (int i = 1; i < all.size(); i++) {
      Estimate step = Gum.difference(all.get(i), all.get(i - 1));
      largest = Math.abs(step.value()) > Math.abs(largest.value()) ? step : largest;
    }
    return largest;
  }

  private static List<Instance> instances(Criterion c, Values values) {
    List<Instance> instances = new ArrayList<>();
    for (Value v : values.values()) {
      instances.add(
          Instance.of(v.where(), v.estimate(), v.conformance().applyAsDouble(c.target())));
    }
    return instances;
  }

  private static Result result(
      Criterion c,
      Estimate value,
      double conformance,
      double points,
      List<Instance> instances,
      Values values) {
    Verdict verdict = Verdict.of(conformance);
    return new Result(
        c,
        true,
        verdict,
        conformance,
        value.value(),
        value.standardUncertainty(),
        value.keptDegreesOfFreedom(),
        points,
        instances,
        values.working(),
        List.of(),
        verdict == Verdict.DOUBTFUL ? advice(c, value, instances) : null);
  }

  /** What would settle a doubtful verdict: so many more readings, or a better look. */
  private static Phrase advice(Criterion c, Estimate value, List<Instance> instances) {
    if (c.judged() == Judged.MEAN && instances.size() > 1) {
      double[] values = instances.stream().mapToDouble(Instance::value).toArray();
      double common =
          instances.stream().mapToDouble(Instance::standardUncertainty).average().orElse(0) / 2;
      Summary s = Summary.of(values);
      OptionalInt more =
          FurtherReadings.toSettleLikely(
              s.mean(), s.standardDeviation(), s.count(), common, c.target(), LIKELY, MOST_FURTHER);
      if (more.isPresent() && more.getAsInt() > 0) {
        return Phrase.message(
            "score.advice.more", Phrase.quantity(more.getAsInt(), Dimension.COUNT));
      }
    }
    // the spread of a share shrinks towards all and nothing, so no limit of it is sure
    boolean surely =
        value.standardUncertainty() > 0 && !c.quantity().equals(PanelQuantities.FILM_SHARE);
    return surely ? surely(c, value) : Phrase.message("score.advice.near-limit");
  }

  /** What has to be measured for the verdict to be sure, with this uncertainty. */
  private static Phrase surely(Criterion c, Estimate value) {
    return Conformance.acceptance(c.target(), value, Verdict.SURE)
        .map(sure -> surely(c, value, sure))
        .orElseGet(() -> Phrase.message("score.advice.never-sure"));
  }

  private static Phrase surely(Criterion c, Estimate value, TargetRange sure) {
    if (value.value() < sure.least()) {
      return surely("score.advice.sure-least", sure.least(), End.LEAST, c);
    }
    // a value with a probability of its own may be in doubt where a normal error would be sure
    return value.value() > sure.most()
        ? surely("score.advice.sure-most", sure.most(), End.MOST, c)
        : Phrase.message("score.advice.near-limit");
  }

  private static Phrase surely(String key, double limit, End end, Criterion c) {
    return Phrase.message(key, Phrase.limit(limit, end, c.spoken()));
  }
}
