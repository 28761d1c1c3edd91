package lapline.exams.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.annotation.ManagedProperty;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.IntStream;
import lapline.exams.DrawPaper;
import lapline.exams.ItemMark;
import lapline.exams.MarkedAnew;
import lapline.exams.PaperResult;
import lapline.exams.Question;
import lapline.exams.ReadPapers;
import lapline.pages.Messages;
import lapline.people.NotFoundException;
import lapline.people.PeopleRecords;
import lapline.people.SignedIn;
import lapline.people.pages.When;

/** Did I pass, and why was each answer right or not? */
@Named
@RequestScoped
public class PaperResultPage {
  @Inject private SignedIn signedIn;
  @Inject private ReadPapers read;
  @Inject private PeopleRecords people;
  @Inject private DrawPaper draw;
  @Inject private Messages messages;
  @Inject private When when;

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

  /** Sum of the marks that count. */
  public double getMarks() {
    return getResult().score() * getMost();
  }

  /** How many questions count. */
  public int getMost() {
    return counting(getMarked().without());
  }

  private int counting(Set<String> without) {
    int all = getResult().marks().size();
    return without.size() < all ? all - without.size() : all;
  }

  /** How the paper was marked anew, the newest first, each in a sentence. */
  public List<String> getAnew() {
    Map<UUID, String> who =
        people.names(getMarked().anew().stream().map(MarkedAnew::by).distinct().toList());
    return getMarked().anew().stream().map(a -> sentence(a, who)).toList();
  }

  private String sentence(MarkedAnew anew, Map<UUID, String> who) {
    return messages.say(
        anew.leftOut() ? "exams.result.anew.out" : "exams.result.anew.in",
        when.time(anew.at()),
        who.getOrDefault(anew.by(), "–"),
        question(anew.item()),
        anew.reason(),
        outcome(anew.before()),
        outcome(anew.after()));
  }

  private String outcome(MarkedAnew.Mark mark) {
    int most = counting(mark.without());
    String key = mark.passed() ? "exams.result.anew.passed" : "exams.result.anew.not-passed";
    return messages.say(key, mark.score() * most, most);
  }

  private String question(String item) {
    return getMarked().paper().questions().stream()
        .map(Question::head)
        .filter(h -> h.item().equals(item))
        .map(Question.Head::text)
        .findFirst()
        .orElse(item);
  }

  public long getUnanswered() {
    return getResult().unanswered();
  }

  public List<MarkedQuestion> getQuestions() {
    return IntStream.range(0, getResult().marks().size()).mapToObj(this::question).toList();
  }

  private MarkedQuestion question(int i) {
    ItemMark mark = getResult().marks().get(i);
    boolean counts = !getMarked().without().contains(mark.item());
    return new MarkedQuestion(i + 1, getMarked().paper().questions().get(i), mark, counts);
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
