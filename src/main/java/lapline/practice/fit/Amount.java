package lapline.practice.fit;

import static lapline.practice.Phrase.message;
import static lapline.practice.Phrase.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lapline.practice.Criterion;
import lapline.practice.PanelScore.Finding;
import lapline.practice.PanelScore.Off;
import lapline.practice.PanelScore.Rival;
import lapline.practice.PanelScore.Size;
import lapline.practice.Phrase;
import lapline.practice.PracticeTask;
import lapline.trade.measure.Conformance;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Verdict;

/**
 * Whether the film as a whole is too thick or too thin for the task, and whether the mix alone
 * would explain it. Film cannot tell little paint from thin paint; only the mix readings can.
 */
final class Amount {
  /** A mean nearer to the limit than this share of it is not worth a change. */
  private static final double MATERIAL = 0.03;

  /** A rival with at least this share of the leader's support is not told apart from it. */
  private static final double NOT_TOLD_APART = 0.1;

  /** How well the mix predicts the film: gun, hand and day, as a share; course assumption. */
  private static final double HAND = 0.08;

  private final Estimate mean;
  private final TargetRange target;
  private final Optional<Estimate> solids;

  /**
   * @param solids solids of the mix over what the sheet asks for; empty where it is not known
   */
  Amount(Estimate mean, TargetRange target, Optional<Estimate> solids) {
    this.mean = mean;
    this.target = target;
    this.solids = solids;
  }

  /** The task's range for one of these quantities, the first that it has. */
  static Optional<TargetRange> target(PracticeTask task, List<String> quantities) {
    return quantities.stream()
        .flatMap(q -> task.criteria().stream().filter(c -> c.quantity().equals(q)))
        .filter(c -> c.dimension() == Dimension.FILM)
        .map(Criterion::target)
        .findFirst();
  }

  Optional<Finding> finding() {
    double by = target.outsideBy(mean.value());
    double limit = by < 0 ? target.least() : target.most();
    boolean missed =
        Verdict.of(Conformance.probability(mean, target)) == Verdict.MISSED
            && Math.abs(by) >= MATERIAL * limit;
    return missed ? Optional.of(missed(by, limit)) : Optional.empty();
  }

  private Finding missed(double by, double limit) {
    Cause hand = by < 0 ? Cause.TOO_LITTLE : Cause.TOO_MUCH;
    double mix = mixSupport(by);
    boolean mixLeads = mix > 0.5;
    Cause leader = mixLeads ? Cause.WRONG_MIX : hand;
    Cause other = mixLeads ? hand : Cause.WRONG_MIX;
    double support = Math.max(mix, 1 - mix);
    boolean told = 1 - support < NOT_TOLD_APART * support;
    return new Finding(
        leader.id(),
        support,
        message(leader.key()),
        evidence(hand, by, limit, told),
        told ? List.of() : List.of(new Rival(other.id(), 1 - support, message(other.key()))),
        change(leader),
        Size.of(message("cause.size.mean"), mean, Dimension.FILM),
        List.of(),
        Off.of(Math.abs(by), mean, Dimension.FILM));
  }

  private Estimate sureAsTheMean(double distance) {
    return Estimate.of(distance, mean.standardUncertainty(), mean.keptDegreesOfFreedom());
  }

  /**
   * Film falls as speed rises: by how much, to come to the middle of the range; or what the mix
   * came out at.
   */
  private Phrase change(Cause leader) {
    double share =
        leader == Cause.WRONG_MIX
            ? solids.orElseThrow().value()
            : Math.abs(1 - mean.value() / middle());
    return message(leader.key() + ".change.by", quantity(whole(share), Dimension.SHARE));
  }

  /** A share in whole per cent, where nobody could do or tell it closer. */
  static double whole(double share) {
    return Math.round(100 * share) / 100.0;
  }

  /**
   * How far the mix alone explains the film, from the ratio of two densities: the film that it
   * predicts from the middle of the range, against that of an unknown hand, which may be off by a
   * third either way. 0 where the mix is not known or goes the other way, or where no mix leaves
   * what was read.
   */
  private double mixSupport(double by) {
    if (solids.isEmpty() || (solids.get().value() - 1) * by <= 0 || mean.value() <= 0) {
      return 0;
    }
    double aim = middle();
    double fromMix = Math.log(mean.value() / (aim * solids.get().value()));
    double fromHand = Math.log(mean.value() / aim);
    double sure = Math.hypot(HAND, solids.get().standardUncertainty());
    double unsure = 0.33;
    double mix = -fromMix * fromMix / (2 * sure * sure) - Math.log(sure);
    double hand = -fromHand * fromHand / (2 * unsure * unsure) - Math.log(unsure);
    // a mix no further off than it can be measured is no cause
    double real = Math.min(1, Math.abs(solids.get().value() - 1) / (2 * sure));
    return real / (1 + Math.exp(hand - mix));
  }

  private double middle() {
    return target.hasLeast() && target.hasMost()
        ? (target.least() + target.most()) / 2
        : target.hasLeast() ? target.least() : target.most();
  }

  private List<Phrase> evidence(Cause hand, double by, double limit, boolean told) {
    List<Phrase> evidence = new ArrayList<>();
    evidence.add(
        message(
            hand.key() + ".evidence",
            quantity(mean, Dimension.FILM),
            quantity(limit, Dimension.FILM),
            quantity(sureAsTheMean(Math.abs(by)), Dimension.FILM)));
    solids.ifPresent(
        s -> evidence.add(message("cause.wrong-mix.evidence", quantity(s, Dimension.SHARE))));
    if (!told) {
      evidence.add(message(Finding.UNDECIDED + ".mix"));
    }
    return List.copyOf(evidence);
  }
}
