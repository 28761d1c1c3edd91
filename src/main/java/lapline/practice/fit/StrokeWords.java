package lapline.practice.fit;

import static lapline.practice.Phrase.message;
import static lapline.practice.Phrase.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import lapline.practice.PanelScore.Finding;
import lapline.practice.PanelScore.NextPlace;
import lapline.practice.PanelScore.Off;
import lapline.practice.PanelScore.Rival;
import lapline.practice.PanelScore.Size;
import lapline.practice.Phrase;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import lapline.trade.measure.TargetRange;
import lapline.trade.stroke.Departure;
import lapline.trade.stroke.Fault;
import lapline.trade.stroke.FittedFilm;
import lapline.trade.stroke.NextSpot;
import lapline.trade.stroke.PassPlan;
import lapline.trade.stroke.StrokeReading;
import lapline.trade.stroke.StrokeReading.Found;
import lapline.trade.stroke.WrittenPasses;

/** Puts what the film says about the stroke into words, each with its number. */
final class StrokeWords {
  static final String FIT = "cause.fit";

  /** A smaller gain, as a share of the panel, is no argument. */
  private static final double WORTH_SAYING = 0.05;

  private final StrokeReading reading;
  private final FittedFilm film;
  private final Technique technique;
  private final OptionalDouble writtenStep;
  private final PassPlan meant;
  private final Optional<TargetRange> target;

  /**
   * @param target of the film
   */
  StrokeWords(
      StrokeReading reading,
      Technique technique,
      WrittenPasses written,
      Optional<TargetRange> target) {
    this.reading = reading;
    this.film = reading.film();
    this.technique = technique;
    this.writtenStep = written.usualWritten();
    this.meant = written.asMeant();
    this.target = target;
  }

  /** Most film moved first; a cause that was found twice is told once. */
  List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    for (Found found : reading.faults()) {
      Finding next = finding(found);
      findings.stream()
          .filter(f -> f.id().equals(next.id()))
          .findFirst()
          .ifPresentOrElse(
              same -> findings.set(findings.indexOf(same), together(same, next)),
              () -> findings.add(next));
    }
    return findings;
  }

  private static Finding together(Finding one, Finding more) {
    List<Phrase> evidence = new ArrayList<>(List.of(one.evidence().get(0), more.evidence().get(0)));
    evidence.addAll(one.evidence().subList(1, one.evidence().size()));
    return new Finding(
        one.id(),
        one.support(),
        one.cause(),
        List.copyOf(evidence),
        one.rivals(),
        one.change(),
        one.estimate(),
        one.nextPlaces(),
        one.off());
  }

  private Finding finding(Found found) {
    Cause cause = Cause.of(found.fault());
    List<Rival> rivals =
        found.rivals().stream()
            .filter(r -> Cause.of(r.fault()) != cause)
            .limit(2)
            .map(r -> rival(Cause.of(r.fault()), r.probability()))
            .toList();
    Finding finding =
        new Finding(
            cause.id(),
            found.probability(),
            message(cause.key()),
            evidence(found, cause, !rivals.isEmpty()),
            rivals,
            change(found, cause),
            estimate(found),
            rivals.isEmpty() ? List.of() : places(found.next()));
    return finding.puttingOut(Off.of(found.film().value(), found.film(), Dimension.FILM));
  }

  private static Size estimate(Found found) {
    String what =
        found
            .departure()
            .map(d -> d.getClass().getSimpleName().toLowerCase(Locale.ROOT))
            .orElse("overlap");
    return Size.of(message("cause.size." + what), found.value(), Dimension.SHARE);
  }

  private static Rival rival(Cause cause, double probability) {
    return new Rival(cause.id(), probability, message(cause.key()));
  }

  static List<NextPlace> places(List<NextSpot> next) {
    return next.stream()
        .map(n -> new NextPlace(n.spot().x(), n.spot().y(), n.ifSo(), n.ifNot()))
        .toList();
  }

  private List<Phrase> evidence(Found found, Cause cause, boolean undecided) {
    List<Phrase> evidence = new ArrayList<>(List.of(pattern(found, cause)));
    if (found.fault() == Fault.STEPS_WIDE) {
      String form = form(found);
      evidence.add(form.isEmpty() ? 1 : 0, steps(found, form));
    }
    if (found.fault() == Fault.ARCING) {
      technique.bow().ifPresent(b -> evidence.add(distances(b, found)));
    }
    preview(found).ifPresent(evidence::add);
    evidence.add(
        message(
            FIT,
            quantity(found.without(), Dimension.FILM),
            quantity(reading.scatter(), Dimension.FILM)));
    if (undecided) {
      evidence.add(message(Finding.UNDECIDED));
    }
    return List.copyOf(evidence);
  }

  /** Whether the distances that were written down tell of the same arc, within 95 %. */
  private static Phrase distances(Estimate bow, Found arc) {
    Estimate farther = following(arc.value(), Departure.Arc::farther);
    double unsure = Math.hypot(bow.standardUncertainty(), farther.standardUncertainty());
    boolean same = Math.abs(bow.value() - farther.value()) <= 2 * unsure;
    return message(
        same ? "cause.arcing.distance" : "cause.arcing.distance.other",
        quantity(bow, Dimension.SHARE));
  }

  private Phrase pattern(Found found, Cause cause) {
    double where =
        found.departure().orElse(null) instanceof Departure.Strip strip ? strip.height() : 0;
    return message(
        cause.key() + ".evidence" + form(found),
        quantity(found.film(), Dimension.FILM),
        quantity(share(found), Dimension.SHARE),
        millimetres(where));
  }

  /**
   * What it does to the film as a share of the mean film; of an arc, as a share of the film in the
   * middle of the stroke, as the what-if page of the panel has it. The level is in both parts of
   * the ratio and adds nothing to its uncertainty.
   */
  private Estimate share(Found found) {
    return found.departure().orElse(null) instanceof Departure.Arc
        ? found.value()
        : Gum.scale(1 / film.mean().value(), found.film());
  }

  private String form(Found found) {
    return StrokeForm.of(found, film.plan().height(), film.mean().value());
  }

  private Phrase steps(Found found, String form) {
    return message(
        "cause.spacing-wide." + (writtenStep.isPresent() ? "written" + form : "seen"),
        millimetres(writtenStep.orElseGet(this::step)),
        millimetres(technique.fanWidth().value()),
        quantity(found.value(), Dimension.SHARE));
  }

  /** A length that a hand marks or keeps: no closer than that. */
  private static Phrase.Arg millimetres(double metres) {
    return quantity(Math.round(metres * 1000) / 1000.0, Dimension.LENGTH);
  }

  /** From pass to pass, as the film has it, metres. */
  private double step() {
    return (1 - reading.overlap().value()) * technique.fanWidth().value();
  }

  private Phrase change(Found found, Cause cause) {
    String key = cause.key() + ".change";
    return found
        .departure()
        .map(d -> change(key, d, found))
        .orElseGet(() -> cause == Cause.SPACING_WIDE ? closer(key) : sameStep(key));
  }

  private Phrase closer(String key) {
    return message(
        key,
        millimetres(technique.meantStep()),
        quantity(technique.meantOverlap(), Dimension.SHARE),
        millimetres(technique.fanWidth().value()));
  }

  private Phrase sameStep(String key) {
    return message(key, millimetres(technique.meantStep()));
  }

  /** Share of its speed that a hand keeps where it leaves this share more film. */
  private static double speedLeft(double more) {
    return 1 / (1 + Math.max(0, more));
  }

  /**
   * What follows from an estimate by a curve. The uncertainty is half the difference of the curve
   * one standard uncertainty to both sides (GUM 5.1.3, note 2; from memory).
   */
  private static Estimate following(Estimate from, DoubleUnaryOperator curve) {
    double u = from.standardUncertainty();
    double above = curve.applyAsDouble(from.value() + u);
    double below = curve.applyAsDouble(from.value() - u);
    return Estimate.of(
        curve.applyAsDouble(from.value()),
        Math.abs(above - below) / 2,
        from.keptDegreesOfFreedom());
  }

  /** How large, whichever way. */
  private static Estimate size(Estimate either) {
    return either.value() < 0 ? Gum.scale(-1, either) : either;
  }

  private Phrase change(String key, Departure departure, Found found) {
    double value = Math.abs(found.value().value());
    if (departure instanceof Departure.Arc) {
      return message(
          key, quantity(following(found.value(), Departure.Arc::farther), Dimension.SHARE));
    }
    if (departure instanceof Departure.Ends ends) {
      return message(
          key,
          millimetres(ends.length()),
          quantity(following(found.value(), StrokeWords::speedLeft), Dimension.SHARE));
    }
    if (departure instanceof Departure.Strip && Cause.of(found.fault()) == Cause.SPACING_UNEVEN) {
      return message(key, millimetres(technique.meantStep()), millimetres(value * step()));
    }
    if (departure instanceof Departure.Strip || departure instanceof Departure.Outermost) {
      return message(key, millimetres(technique.fanWidth().value() / 2));
    }
    return message(key, quantity(size(found.value()), Dimension.SHARE));
  }

  /** How much of the panel would lie in its range with only this put right. */
  private Optional<Phrase> preview(Found found) {
    return target
        .filter(range -> range.hasLeast() && range.hasMost())
        .map(range -> new double[] {film.shareInside(range), right(found).shareInside(range)})
        .filter(share -> share[1] - share[0] >= WORTH_SAYING)
        .map(
            share ->
                message(
                    "cause.preview",
                    quantity(Amount.whole(share[1]), Dimension.SHARE),
                    quantity(Amount.whole(share[0]), Dimension.SHARE)));
  }

  /** The same hand and as much paint, without this one fault. */
  private FittedFilm right(Found found) {
    return found
        .departure()
        .map(film::without)
        .orElseGet(
            () -> film.along(found.fault() == Fault.STEPS_WIDE ? meant : film.plan().evened()));
  }
}
