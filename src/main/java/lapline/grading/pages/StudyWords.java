package lapline.grading.pages;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.Locale;
import java.util.OptionalDouble;
import lapline.grading.CriterionStudied;
import lapline.pages.Messages;

/** What panels say about a practice task, in words that claim no more than their number allows. */
@Named("studyWords")
@ApplicationScoped
public class StudyWords {
  @Inject private Messages messages;

  /** 63 % of 40; of fewer than ten only how many: 5 of 8. */
  public String share(long some, long of) {
    if (of == 0) {
      return messages.get("study.share.none");
    }
    return of < CriterionStudied.ENOUGH
        ? messages.say("study.share.few", some, of)
        : messages.say("study.share.many", (double) some / of, of);
  }

  /** The same where how many there are stands beside it: 63 %. */
  public String part(long some, long of) {
    return of < CriterionStudied.ENOUGH
        ? share(some, of)
        : messages.say("study.share.part", (double) some / of);
  }

  public String worth(CriterionStudied studied) {
    return messages.say("study.worth." + studied.worth(), CriterionStudied.ENOUGH);
  }

  /** 2.4, or a dash. */
  public String figure(OptionalDouble value) {
    return value.isEmpty()
        ? messages.get("study.share.none")
        : String.format(Locale.ROOT, "%.1f", value.getAsDouble());
  }
}
