package lapline.trade.colour;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import lapline.trade.measure.MeasureException;

/**
 * Whether a sprayed card's colour will do for a panel, how surely, and where to move it if not.
 *
 * @param match what the card is good for
 * @param butted probability that every angle is near enough to stand edge to edge
 * @param blended probability that every angle is near enough for a blend
 * @param angles the difference at each angle
 * @param moves what the card lacks, the most visible first
 */
public record CardJudgement(
    Match match,
    double butted,
    double blended,
    Map<AspecularAngle, AtAngle> angles,
    List<ColourMove> moves) {

  /** As sure as a verdict has to be, here as for every criterion. */
  private static final double SURE = 0.95;

  /** What a card is good for. */
  public enum Match {
    /** Near enough to paint a panel edge to edge with the old one. */
    BUTTED,
    /** Near enough if the colour is faded out over the neighbour. */
    BLENDED,
    /** Too far off: another variant of the formula, or a tint. */
    OTHER_VARIANT,
    /** The reader's error is too large to say whether a blend would hide it: read more often. */
    READ_AGAIN
  }

  /**
   * One angle.
   *
   * @param difference CIEDE2000
   * @param butted probability that the true difference is within the limit for butting
   * @param blended probability that it is within the limit for blending
   */
  public record AtAngle(double difference, double butted, double blended) {}

  public CardJudgement {
    angles = java.util.Collections.unmodifiableMap(new EnumMap<>(angles));
    moves = List.copyOf(moves);
  }

  /**
   * @param panel colour to be met
   * @param card colour of the sprayed card, at the same angles and for the same white
   * @param panelError of the panel's readings
   * @param cardError of the card's readings
   * @throws MeasureException when the two were read at other angles or for other whites
   */
  public static CardJudgement of(
      AngleSet panel,
      AngleSet card,
      ReaderError panelError,
      ReaderError cardError,
      MatchLimits limits) {
    comparable(panel, card);
    ReaderError error = panelError.and(cardError);
    Map<AspecularAngle, AtAngle> angles = new EnumMap<>(AspecularAngle.class);
    double butted = 1;
    double blended = 1;
    for (AspecularAngle angle : panel.colours().keySet()) {
      AtAngle at = at(panel.colours().get(angle), card.colours().get(angle), error, limits);
      angles.put(angle, at);
      butted *= at.butted;
      blended *= at.blended;
    }
    Match match = match(butted, blended);
    List<ColourMove> moves =
        match == Match.BUTTED ? List.of() : ColourMove.from(card, panel, error);
    return new CardJudgement(match, butted, blended, angles, moves);
  }

  private static Match match(double butted, double blended) {
    if (butted >= SURE) {
      return Match.BUTTED;
    }
    if (blended >= SURE) {
      return Match.BLENDED;
    }
    return blended <= 1 - SURE ? Match.OTHER_VARIANT : Match.READ_AGAIN;
  }

  private static AtAngle at(Lab panel, Lab card, ReaderError error, MatchLimits limits) {
    Ciede2000.Steps steps = Ciede2000.between(card, panel);
    DifferenceSureness sureness = DifferenceSureness.of(steps, error);
    return new AtAngle(
        steps.size(), sureness.within(limits.butted()), sureness.within(limits.blended()));
  }

  private static void comparable(AngleSet panel, AngleSet card) {
    if (!panel.white().equals(card.white())) {
      throw new MeasureException(
          "card white X",
          card.white().perfect().x(),
          "that of the panel, " + panel.white().perfect().x() + ", light and observer alike");
    }
    if (!panel.colours().keySet().equals(card.colours().keySet())) {
      throw new MeasureException(
          "card angles", card.colours().size(), "those of the panel, " + panel.colours().keySet());
    }
  }
}
