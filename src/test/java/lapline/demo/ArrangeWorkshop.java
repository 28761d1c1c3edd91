package lapline.demo;

import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.PersistenceContext;
import jakarta.servlet.annotation.WebServlet;
import jakarta.servlet.http.HttpServlet;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.security.SecureRandom;
import java.time.Instant;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import javax.imageio.ImageIO;
import lapline.content.Json;
import lapline.lessons.Unit;
import lapline.people.ChangeAccount;
import lapline.people.LookAfterPeople;
import lapline.people.Passwords;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.Secrets;
import lapline.practice.photographs.LookAfterPhotographs;

/**
 * Laid beside the application by tests: opens a workshop of its own in which one learner has one of
 * everything. The first skill is signed off, the second has all its evidence and waits for a
 * decision, the third has three panels, a draft and an open paper. All of it came through the use
 * cases that people use.
 */
@WebServlet("/arrange")
public class ArrangeWorkshop extends HttpServlet {
  private static final int LIVES = 6;
  private static final DemoPlan PLAN = new DemoPlan(1, List.of(7, 7, 3), 0, 1, 0);

  /** Where the ids of things are found, by kind. */
  private static final Map<String, String> THINGS =
      Map.ofEntries(
          Map.entry("person", "select cast(id as varchar) from person where workshop_id = :w"),
          Map.entry("attempt", "select cast(id as varchar) from attempt where workshop_id = :w"),
          Map.entry(
              "draft",
              "select cast(id as varchar) from attempt where workshop_id = :w and state = 'DRAFT'"),
          Map.entry(
              "waiting",
              "select cast(id as varchar) from attempt where workshop_id = :w and state = 'SCORED' order by scored_at desc"),
          Map.entry("sheet-code", "select sheet_code from attempt where workshop_id = :w"),
          Map.entry(
              "open-paper",
              "select cast(id as varchar) from paper where workshop_id = :w and handed_in_at is null"),
          Map.entry(
              "paper",
              "select cast(id as varchar) from paper where workshop_id = :w and handed_in_at is not null"),
          Map.entry("sign-off", "select cast(id as varchar) from sign_off where workshop_id = :w"),
          Map.entry("sign-off-code", "select code from sign_off where workshop_id = :w"),
          Map.entry("gun-card", "select cast(id as varchar) from gun_card where workshop_id = :w"),
          Map.entry(
              "target", "select cast(id as varchar) from target_override where workshop_id = :w"),
          Map.entry("grading", "select cast(id as varchar) from grading where workshop_id = :w"),
          Map.entry(
              "photograph",
              "select cast(p.id as varchar) from photograph p join attempt a on a.id = p.attempt_id where a.workshop_id = :w"),
          Map.entry(
              "token",
              "select cast(t.id as varchar) from access_token t join person p on p.id = t.person_id where p.workshop_id = :w"));

  @Inject private transient PeopleRecords records;
  @Inject private transient Passwords passwords;
  @Inject private transient DemoStages stages;
  @Inject private transient DemoDesk desk;
  @Inject private transient ChangeAccount accounts;
  @Inject private transient LookAfterPeople office;
  @Inject private transient LookAfterPhotographs photographs;
  @PersistenceContext private transient EntityManager rows;

  @Override
  protected void doPost(HttpServletRequest request, HttpServletResponse response)
      throws IOException {
    response.setContentType("application/json;charset=UTF-8");
    response.getWriter().write(Json.write(arrange(request.getParameter("surname"))));
  }

  private Arranged arrange(String surname) {
    String password = Secrets.code(new SecureRandom(), 16);
    ArrangedPeople people = luckyPeople(surname, password);
    Map<String, String> tokens = new LinkedHashMap<>();
    people
        .all()
        .forEach((what, p) -> tokens.put(what, accounts.makeToken(p, surname).orElseThrow()));
    Map<String, List<String>> things = stages.call(() -> things(people.workshop().id()));
    things.put(
        "password-code",
        List.of(office.passwordLink(people.the("registrar"), people.the("beginner").id())));
    things.put("learner", List.of(people.the("apprentice").id().toString()));
    Map<String, String> signIns = new LinkedHashMap<>();
    people.all().forEach((what, p) -> signIns.put(what, p.signInName()));
    return new Arranged(people.workshop().name(), surname, password, signIns, tokens, things);
  }

  /** A learner may be unlucky with their panels; then another workshop is lived through. */
  private ArrangedPeople luckyPeople(String surname, String password) {
    for (int life = 1; life <= LIVES; life++) {
      ArrangedPeople people = new ArrangedPeople(records, surname);
      stages.run(() -> people.make(passwords, password));
      live(people);
      if (isAsTold(people)) {
        desk.draw.run(people.the("apprentice"), desk.curriculum.units().get(2).id());
        photograph(people.workshop().id(), people.the("apprentice"));
        return people;
      }
    }
    throw new IllegalStateException("unlucky with their panels in all of " + LIVES + " lives");
  }

  private void live(ArrangedPeople people) {
    Instant now = Instant.now();
    // codes on task sheets are unique over all workshops, so chance differs from one to the next
    desk.open(now, new Random(new SecureRandom().nextLong()));
    Person grader = people.the("grader");
    Person learner = people.the("apprentice");
    DemoSetUp setUp = new DemoSetUp(desk, grader);
    UUID card = stages.call(() -> setUp.gunCard(now.minusSeconds(86_400L * 300)));
    DemoStaff staff = new DemoStaff(people.the("examiner"), List.of(grader), List.of(learner));
    List<String> units = desk.curriculum.units().stream().map(Unit::id).toList();
    for (int i = 0; i < PLAN.panels().size(); i++) {
      DemoChapter chapter = new DemoChapter(PLAN, i, units.get(i));
      stages.run(() -> new DemoLearner(desk, staff, chapter, card, now).study());
    }
    stages.run(() -> setUp.ownTarget(now.minusSeconds(3600)));
  }

  /** The first skill signed off, and all there for the decision on the second. */
  private boolean isAsTold(ArrangedPeople people) {
    UUID learner = people.the("apprentice").id();
    String second = desk.curriculum.units().get(1).id();
    List<String> signedOff = stages.call(() -> things(people.workshop().id())).get("sign-off");
    return !signedOff.isEmpty()
        && desk.decide.evidence(people.the("examiner"), learner, second).isComplete();
  }

  private void photograph(UUID workshop, Person learner) {
    UUID waiting = UUID.fromString(stages.call(() -> things(workshop)).get("waiting").get(0));
    try {
      ByteArrayOutputStream picture = new ByteArrayOutputStream();
      ImageIO.write(new BufferedImage(320, 240, BufferedImage.TYPE_INT_RGB), "jpg", picture);
      photographs.add(learner, waiting, picture.toByteArray(), "Lower edge");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Map<String, List<String>> things(UUID workshop) {
    Map<String, List<String>> things = new HashMap<>();
    THINGS.forEach(
        (kind, sql) ->
            things.put(
                kind,
                ((List<?>) rows.createNativeQuery(sql).setParameter("w", workshop).getResultList())
                    .stream().map(String::valueOf).toList()));
    return things;
  }
}
