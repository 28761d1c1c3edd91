package lapline.practice.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.ArrayList;
import java.util.List;
import lapline.pages.Once;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.SvgWriter;
import lapline.people.SignedIn;
import lapline.people.pages.When;
import lapline.practice.Attempt;
import lapline.practice.Criterion;
import lapline.practice.FilmField;
import lapline.practice.FindAttempts;
import lapline.practice.PanelEntry;
import lapline.practice.PanelOutline;
import lapline.practice.ReadPanel;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.TargetRange;

/** The drawings of a judged panel, each made once for a page. */
@Named
@RequestScoped
public class ResultDrawings {
  /** So many earlier panels are shown; older ones say little about today's hand. */
  private static final int TREND = 8;

  @Inject private ResultPage page;
  @Inject private SignedIn signedIn;
  @Inject private FindAttempts find;
  @Inject private ReadPanel read;
  @Inject private Say say;
  @Inject private When when;
  private final Once<PanelEntry> entry = new Once<>(this::entry);
  private final Once<List<SprayedCoat>> sprayed = new Once<>(this::sprayed);
  private final Once<List<Figure>> coats = new Once<>(this::coats);
  private final Once<Figure> found = new Once<>(this::found);
  private final Once<List<Trend.Panel>> panels = new Once<>(this::panels);

  /** A drawing with its name and what it means, in a sentence. */
  public record Figure(String title, String svg, String meaning) {}

  public FilmField getFilm() {
    return page.getScore().film();
  }

  public String getShareInside() {
    return ShareInside.of(getFilm(), say.writer());
  }

  /** What readings that fit nothing around them do to the film; empty where they do nothing. */
  public String getFilmStrays() {
    FilmField film = getFilm();
    List<Integer> aside = film.setAside();
    if (!aside.isEmpty()) {
      String places = PanelOutline.namesOf(aside);
      return say.writer().say("practice-result.film.set-aside", aside.size(), places);
    }
    boolean bent = page.getScore().strays().isPresent() && !film.areas().isEmpty();
    return bent ? say.writer().say("practice-result.film.stray") : "";
  }

  public String getPanelMap() {
    PanelMap map = new PanelMap(page.getTask().panel(), getFilm(), say.writer());
    FirstCause first = page.getFirst();
    return SvgWriter.write(
        map.asking(first == null ? List.of() : first.getFinding().nextPlaces()).drawing());
  }

  public String getFilmCut() {
    return SvgWriter.write(cut().drawing());
  }

  public String getFilmCutCaption() {
    return cut().caption();
  }

  private FilmCut cut() {
    List<SprayedCoat> laid = sprayed.get();
    List<Double> centres =
        laid.isEmpty()
            ? List.of()
            : laid.get(laid.size() - 1).passes().stream().map(SprayedCoat.Pass::centre).toList();
    return new FilmCut(getFilm(), page.getScore().stroke(), centres, say.writer());
  }

  /** What was found at the panel's places; null where a film is drawn, or nothing is read there. */
  public Figure getFound() {
    return found.get();
  }

  private Figure found() {
    FoundPlaces places = new FoundPlaces(page.getTask(), page.getScore(), say.writer());
    return getFilm() == null && places.canDraw() ? figure(places.drawing(), places.title()) : null;
  }

  /** Passes on the panel, and distance along the stroke, coat by coat. */
  public List<Figure> getCoats() {
    return coats.get();
  }

  private List<Figure> coats() {
    PhraseWriter words = say.writer();
    List<Figure> figures = new ArrayList<>();
    var steps = new StepOutDrawing(page.getTask().panel(), entry.get(), words);
    if (steps.canDraw()) {
      figures.add(figure(steps.drawing(), steps.meaning()));
    }
    for (SprayedCoat coat : sprayed.get()) {
      var passes = new CoatDrawing(page.getTask().panel(), coat, words);
      figures.add(figure(passes.drawing(), passes.meaning()));
      if (StrokeDrawing.canDraw(coat)) {
        var stroke = new StrokeDrawing(coat, distance(), words);
        figures.add(figure(stroke.drawing(), stroke.meaning()));
      }
    }
    return figures;
  }

  private static Figure figure(Drawing drawing, String meaning) {
    return new Figure(drawing.title(), SvgWriter.write(drawing), meaning);
  }

  private TargetRange distance() {
    return page.getTask().criteria().stream()
        .filter(c -> c.dimension() == Dimension.LENGTH)
        .filter(c -> c.quantity().startsWith("distance") && c.judged() == Criterion.Judged.MEAN)
        .map(Criterion::target)
        .findFirst()
        .orElse(new TargetRange(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY));
  }

  private List<SprayedCoat> sprayed() {
    return new SprayedCoats(page.getTask().panel(), entry.get()).all();
  }

  private PanelEntry entry() {
    var kept = find.readings(signedIn.person(), page.getAttempt().id());
    return read.run(page.getAttempt().units(), page.getTask(), kept).entry();
  }

  public String getTrend() {
    return SvgWriter.write(new Trend(panels.get(), say.writer()).drawing());
  }

  public boolean isTrendWorthShowing() {
    return panels.get().size() > 1;
  }

  /** This panel and those before it. */
  private List<Trend.Panel> panels() {
    List<Trend.Panel> panels = new ArrayList<>();
    for (Attempt a : find.upTo(signedIn.person(), page.getAttempt(), TREND)) {
      String changed = a.changedWhat() == null ? "" : a.changedWhat();
      panels.add(
          0,
          new Trend.Panel(
              when.day(a.outcome().scored()),
              a.outcome().practiceScore(),
              a.outcome().accepted(),
              changed));
    }
    return panels;
  }
}
