package lapline.exams.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.annotation.ManagedProperty;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.List;
import lapline.exams.HandInPaper;
import lapline.exams.ReadPapers;
import lapline.people.SignedIn;

/** Have I answered everything? The last look before a paper is handed in. */
@Named
@RequestScoped
public class PaperReviewPage {
  @Inject private SignedIn signedIn;
  @Inject private ReadPapers read;
  @Inject private HandInPaper handIn;

  @Inject
  @ManagedProperty("#{param.paper}")
  private String paper;

  private ReadPapers.Written written;
  private List<PaperQuestion> questions;

  public ReadPapers.Written getWritten() {
    if (written == null) {
      written = read.toWrite(signedIn.person(), PaperLink.id(paper));
    }
    return written;
  }

  public List<PaperQuestion> getQuestions() {
    if (questions == null) {
      questions = new PaperSheet(getWritten().paper(), getWritten().answers()).getQuestions();
    }
    return questions;
  }

  /** Questions without an answer, or with one that is not all there. */
  public List<PaperQuestion> getOpenOnes() {
    return getQuestions().stream().filter(q -> q.isUnanswered() || q.getFlaw() != null).toList();
  }

  public String handIn() {
    handIn.run(signedIn.person(), PaperLink.id(paper));
    return PaperLink.result(PaperLink.id(paper));
  }

  public String getPaper() {
    return paper;
  }
}
