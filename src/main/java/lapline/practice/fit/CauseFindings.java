package lapline.practice.fit;

import static lapline.practice.Phrase.message;
import static lapline.practice.Phrase.quantity;

import java.util.ArrayList;
import java.util.List;
import lapline.practice.PanelOutline.Point;
import lapline.practice.PanelScore.Finding;
import lapline.practice.PanelScore.Rival;
import lapline.practice.Phrase;
import lapline.practice.fit.CauseContest.Ranking;
import lapline.trade.measure.Dimension;

/** Puts what the contest of causes found into words. */
final class CauseFindings {
  /** A rival with at least this share of the leader's support is not told apart from it. */
  static final double NOT_TOLD_APART = 0.1;

  private final PlacedFilm film;
  private final Technique technique;

  CauseFindings(PlacedFilm film, Technique technique) {
    this.film = film;
    this.technique = technique;
  }

  Finding finding(Ranking ranking) {
    Contender leader = ranking.leader();
    List<Contender> rivals =
        ranking.contenders().stream()
            .skip(1)
            .filter(c -> c.support() >= NOT_TOLD_APART * leader.support())
            .limit(2)
            .toList();
    List<Point> next =
        rivals.isEmpty() ? List.of() : NextPlaces.between(leader, rivals.get(0), film);
    return new Finding(
        leader.cause().id(),
        leader.support(),
        message(leader.cause().key()),
        evidence(ranking, !rivals.isEmpty()),
        rivals.stream().map(CauseFindings::rival).toList(),
        message(leader.cause().key() + ".change"),
        next);
  }

  private static Rival rival(Contender c) {
    return new Rival(c.cause().id(), c.support(), message(c.cause().key()));
  }

  private List<Phrase> evidence(Ranking ranking, boolean undecided) {
    Contender leader = ranking.leader();
    List<Phrase> evidence = new ArrayList<>();
    evidence.add(pattern(leader));
    if (leader.cause() == Cause.SPACING_WIDE) {
      evidence.add(period(leader));
    }
    if (leader.cause() == Cause.ARCING && technique.bowKnown()) {
      evidence.add(message("cause.arcing.distance", quantity(technique.bow(), Dimension.SHARE)));
    }
    evidence.add(
        message(
            "cause.fit",
            quantity(leftOver(ranking.without()), Dimension.FILM),
            quantity(leftOver(leader.fit()), Dimension.FILM)));
    if (undecided) {
      evidence.add(message("cause.undecided"));
    }
    return evidence;
  }

  private Phrase pattern(Contender leader) {
    String key = leader.cause().key() + ".evidence" + leader.meaning().form();
    return message(
        key,
        quantity(leader.size().metres(), leader.size().standardUncertainty(), Dimension.FILM),
        quantity(leader.size().metres() / film.mean, Dimension.SHARE),
        quantity(
            Double.isNaN(leader.pattern().where()) ? 0 : leader.pattern().where(),
            Dimension.LENGTH));
  }

  /** The stripes' period against the fan; its share of the fan is 1 − overlap. */
  private Phrase period(Contender leader) {
    double period = leader.pattern().where();
    String key =
        leader.pattern().searched() == 0 ? "cause.spacing-wide.written" : "cause.spacing-wide.seen";
    return message(
        key,
        quantity(period, Dimension.LENGTH),
        quantity(technique.fanWidth(), Dimension.LENGTH),
        quantity(1 - period / technique.fanWidth(), Dimension.SHARE));
  }

  /** Standard deviation that a fit leaves, in terms of one reading; metres. */
  private double leftOver(FilmRegression fit) {
    return film.meanUncertainty()
        * Math.sqrt(fit.chiSquared() / Math.max(1, fit.readings() - fit.columns()));
  }
}
