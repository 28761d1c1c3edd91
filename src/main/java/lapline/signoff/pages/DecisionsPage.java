package lapline.signoff.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import lapline.pages.Paging;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.Role;
import lapline.people.SignedIn;
import lapline.signoff.SignOffRecords;
import lapline.signoff.Skill;
import lapline.signoff.Skills;
import lapline.signoff.Standing;

/** Who waits for an examiner's decision, longest first. */
@Named
@RequestScoped
public class DecisionsPage {
  @Inject private SignedIn signedIn;
  @Inject private SignOffRecords records;
  @Inject private PeopleRecords people;
  @Inject private Skills skills;
  private int page = 1;
  private List<Standing> waiting;
  private Map<UUID, String> names;

  public void check() {
    signedIn.person().mustBe(Role.EXAMINER);
  }

  public List<Standing> getWaiting() {
    if (waiting == null) {
      Person by = signedIn.person();
      by.mustBe(Role.EXAMINER);
      waiting = records.ready(by.workshop(), getPaging().first(), Paging.SIZE);
      names = people.names(waiting.stream().map(Standing::person).toList());
    }
    return waiting;
  }

  public String name(Standing standing) {
    return names.get(standing.person());
  }

  public String skill(Standing standing) {
    return skills.find(standing.skill()).map(Skill::title).orElse(standing.skill());
  }

  public Paging getPaging() {
    return new Paging(page, records.countReady(signedIn.person().workshop()));
  }

  public int getPage() {
    return page;
  }

  public void setPage(int page) {
    this.page = page;
  }
}
