package lapline.exams.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.annotation.ManagedProperty;
import jakarta.faces.context.FacesContext;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import lapline.exams.DrawPaper;
import lapline.exams.ReadPapers;
import lapline.exams.SavePaperAnswers;
import lapline.exams.Sitting;
import lapline.exams.bank.Bank;
import lapline.exams.bank.QuestionBanks;
import lapline.pages.Errors;
import lapline.people.NotFoundException;
import lapline.people.SignedIn;

/** What do I know? Begins a paper, or goes on with the one that is open; what is written keeps. */
@Named
@RequestScoped
public class PaperPage {
  private static final int EARLIER = 5;
  private static final String AS_SHOWN = "was-";

  @Inject private SignedIn signedIn;
  @Inject private QuestionBanks banks;
  @Inject private DrawPaper draw;
  @Inject private ReadPapers read;
  @Inject private SavePaperAnswers save;
  @Inject private Errors errors;

  // known before the form is read, since what is on the page depends on them
  @Inject
  @ManagedProperty("#{param.unit}")
  private String unit;

  @Inject
  @ManagedProperty("#{param.paper}")
  private String paper;

  private Optional<ReadPapers.Written> written;
  private PaperSheet sheet;
  private Instant keptAt;

  public Bank getBank() {
    return banks.bank(String.valueOf(unit)).orElseThrow(NotFoundException::new);
  }

  public String getUnit() {
    return unit;
  }

  /** The title of the open paper, which stays when its bank has gone. */
  public String getTitle() {
    return open().map(w -> w.paper().title()).orElseGet(() -> getBank().title());
  }

  public boolean isOpen() {
    return open().isPresent();
  }

  private Optional<ReadPapers.Written> open() {
    if (written == null) {
      written =
          paper == null || paper.isEmpty()
              ? read.open(signedIn.person(), String.valueOf(unit))
              : Optional.of(read.toWrite(signedIn.person(), PaperLink.id(paper)));
    }
    return written;
  }

  public UUID getId() {
    return open().map(w -> w.sitting().id()).orElse(null);
  }

  public PaperSheet getSheet() {
    if (sheet == null) {
      ReadPapers.Written w = open().orElseThrow(NotFoundException::new);
      sheet = new PaperSheet(w.paper(), w.answers());
    }
    return sheet;
  }

  /** What a place held when the page was made. */
  public record Shown(String cell, String text) {}

  /** What each place held when the page was made, so that two windows merge place by place. */
  public List<Shown> getAsShown() {
    ReadPapers.Written w = open().orElseThrow(NotFoundException::new);
    Map<String, String> now =
        keptAt == null ? w.answers() : read.toWrite(signedIn.person(), getId()).answers();
    return w.paper().cells().stream()
        .map(cell -> new Shown(cell, now.getOrDefault(cell, "")))
        .toList();
  }

  public String begin() {
    DrawPaper.Outcome outcome = draw.run(signedIn.person(), unit);
    if (outcome instanceof DrawPaper.TooSoon) {
      return null;
    }
    return "/learn/paper.xhtml?faces-redirect=true&unit=" + unit;
  }

  /** When the next paper may be drawn; null when at once. */
  public Instant getNotBefore() {
    return draw.restUntil(signedIn.person(), String.valueOf(unit)).orElse(null);
  }

  /** Papers handed in before, the newest first. */
  public List<Sitting> getEarlier() {
    return read.handedIn(signedIn.person(), String.valueOf(unit), EARLIER);
  }

  /** Keeps what was changed since the page was made. */
  public void keep() {
    Optional<Instant> kept = save.run(signedIn.person(), getId(), changes());
    if (kept.isEmpty()) {
      errors.add(null, "exams.paper.handed-in-already");
    }
    keptAt = kept.orElse(null);
  }

  private Map<String, String> changes() {
    Map<String, String> parameters =
        FacesContext.getCurrentInstance().getExternalContext().getRequestParameterMap();
    Map<String, String> changes = new HashMap<>();
    getSheet()
        .written()
        .forEach(
            (cell, text) -> {
              if (!text.equals(parameters.getOrDefault(AS_SHOWN + cell, ""))) {
                changes.put(cell, text);
              }
            });
    return changes;
  }

  public String review() {
    keep();
    return keptAt == null ? null : PaperLink.review(getId());
  }

  /** When it was kept in this request; null when it was not. */
  public Instant getKeptAt() {
    return keptAt;
  }
}
