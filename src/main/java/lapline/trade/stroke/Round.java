package lapline.trade.stroke;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Faults, one stray reading and 'nothing further' against each other for one place: weights of 0 to
 * 1 that sum to 1. Half of the prior weight lies on 'nothing further'; the faults share as much
 * evenly, and each reading is a stray in {@link StrokeReading#STRAYS} of all cases.
 */
final class Round {
  /** ln of the prior weight of a stray against a good reading. */
  static final double LOG_STRAY = Math.log(StrokeReading.STRAYS / (1 - StrokeReading.STRAYS));

  private final List<Claim> claims;
  private final int stray;
  private final double strayEvidence;
  private final double most;
  private final double whole;

  /**
   * @param best of each fault; evidence averaged over its forms
   * @param stray the reading that would gain most by being one; −1 for none
   */
  Round(Map<Fault, Claim> best, int stray, double strayEvidence) {
    double share = Math.log(Fault.DEPARTURES);
    this.claims =
        best.values().stream()
            .map(c -> c.with(c.evidence() - share))
            .sorted(Comparator.comparingDouble((Claim c) -> -c.evidence()))
            .toList();
    this.stray = stray;
    this.strayEvidence = strayEvidence + LOG_STRAY;
    double top = claims.isEmpty() ? 0 : claims.get(0).evidence();
    this.most = Math.max(0, Math.max(top, this.strayEvidence));
    this.whole =
        Math.exp(-most)
            + Math.exp(this.strayEvidence - most)
            + claims.stream().mapToDouble(c -> Math.exp(c.evidence() - most)).sum();
  }

  /** Heaviest first. */
  List<Claim> claims() {
    return claims;
  }

  Optional<Claim> leader() {
    return claims.stream().findFirst();
  }

  double weight(Claim claim) {
    return Math.exp(claim.evidence() - most) / whole;
  }

  /** Weight of 'nothing further'. */
  double chance() {
    return Math.exp(-most) / whole;
  }

  int stray() {
    return stray;
  }

  /** ln of the weight of that stray if it were as likely as 'nothing further'. */
  double evenStray() {
    return strayEvidence - LOG_STRAY;
  }

  double strayWeight() {
    return Math.exp(strayEvidence - most) / whole;
  }
}
