package lapline.exams.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.annotation.ManagedProperty;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.IntStream;
import lapline.exams.DrawPaper;
import lapline.exams.PaperResult;
import lapline.exams.ReadPapers;
import lapline.people.NotFoundException;
import lapline.people.PeopleRecords;
import lapline.people.SignedIn;

/** Did I pass, and why was each answer right or not? */
@Named
@RequestScoped
public class PaperResultPage {
  @Inject private SignedIn signedIn;
  @Inject private ReadPapers read;
  @Inject private PeopleRecords people;
  @Inject private DrawPaper draw;

  @Inject
  @ManagedProperty("#{param.paper}")
  private String paper;

  private ReadPapers.Marked marked;

  public ReadPapers.Marked getMarked() {
    if (marked == null) {
      marked =
          read.marked(signedIn.person(), PaperLink.id(paper)).orElseThrow(NotFoundException::new);
    }
    return marked;
  }

  public PaperResult getResult() {
    return getMarked().result();
  }

  /** Sum of the marks. */
  public double getMarks() {
    return getResult().score() * getResult().marks().size();
  }

  public int getMost() {
    return getResult().marks().size();
  }

  public long getUnanswered() {
    return getResult().unanswered();
  }

  public List<MarkedQuestion> getQuestions() {
    return IntStream.range(0, getMost())
        .mapToObj(
            i ->
                new MarkedQuestion(
                    i + 1, getMarked().paper().questions().get(i), getResult().marks().get(i)))
        .toList();
  }

  /** When the next questions can be drawn; null when at once. */
  public Instant getNotBefore() {
    return draw.restUntil(signedIn.person(), getMarked().sitting().unit()).orElse(null);
  }

  /** Whether the reader is the person who sat it. */
  public boolean isMine() {
    return getMarked().sitting().person().equals(signedIn.person().id());
  }

  public String getName() {
    Map<UUID, String> names = people.names(List.of(getMarked().sitting().person()));
    return names.getOrDefault(getMarked().sitting().person(), "");
  }
}
