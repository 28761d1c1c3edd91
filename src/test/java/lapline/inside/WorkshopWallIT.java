package lapline.inside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.PersistenceContext;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import lapline.board.LookAtBoard;
import lapline.board.LookAtCohort;
import lapline.board.SeeNeeds;
import lapline.board.ShowTrainingRecord;
import lapline.grading.GradePanel;
import lapline.grading.Grading;
import lapline.people.ChangeAccount;
import lapline.people.LookAfterPeople;
import lapline.people.NotFoundException;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.Role;
import lapline.people.Workshop;
import lapline.practice.AttemptQuery;
import lapline.practice.FindAttempts;
import lapline.trade.measure.UnitSystem;
import org.jboss.arquillian.container.test.api.Deployment;
import org.jboss.arquillian.junit5.ArquillianExtension;
import org.jboss.shrinkwrap.api.spec.WebArchive;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * A person of one workshop reaches nothing of another's, whatever their roles: neither through the
 * use cases nor through any address of the running application. Runs inside the built WAR.
 */
@ExtendWith(ArquillianExtension.class)
class WorkshopWallIT {

  @Deployment
  static WebArchive war() {
    return BuiltWar.with(WorkshopWallIT.class);
  }

  @Inject private PeopleRecords people;
  @Inject private LookAfterPeople lookAfterPeople;
  @Inject private ChangeAccount accounts;
  @Inject private FindAttempts attempts;
  @Inject private GradePanel grade;
  @Inject private LookAtCohort cohort;
  @Inject private LookAtBoard board;
  @Inject private SeeNeeds needs;
  @Inject private ShowTrainingRecord records;
  @PersistenceContext private EntityManager rows;

  @Test
  void a_neighbour_with_every_role_finds_nobody_and_no_panel_of_this_workshop() {
    Person neighbour = neighbour();
    Person apprentice = people.bySignInName("apprentice1").orElseThrow();
    assertThrows(NotFoundException.class, () -> lookAfterPeople.find(neighbour, apprentice.id()));
    assertTrue(
        people.page(neighbour.workshop(), "", null, 0, 50).stream()
            .allMatch(p -> p.id().equals(neighbour.id())));
    for (UUID attempt : someAttempts()) {
      assertThrows(NotFoundException.class, () -> attempts.attempt(neighbour, attempt));
      assertThrows(NotFoundException.class, () -> attempts.judged(neighbour, attempt));
      assertThrows(NotFoundException.class, () -> attempts.readings(neighbour, attempt));
    }
    assertThrows(
        NotFoundException.class,
        () -> attempts.page(neighbour, AttemptQuery.of(apprentice.workshop(), 0, 10)));
  }

  @Test
  void a_neighbours_bench_and_boards_are_empty_of_this_workshop() {
    Person neighbour = neighbour();
    Person apprentice = people.bySignInName("apprentice1").orElseThrow();
    assertThrows(NotFoundException.class, () -> cohort.person(neighbour, apprentice.id()));
    assertThrows(NotFoundException.class, () -> records.of(neighbour, apprentice.id()));
    var bench =
        new GradePanel.Bench(Grading.Decision.RETURNED, "Over the fence", Map.of(), List.of());
    for (UUID attempt : someAttempts()) {
      assertThrows(NotFoundException.class, () -> grade.run(neighbour, attempt, bench));
    }
    assertEquals(new SeeNeeds.Counts(0, 0, 0, 0), needs.counts(neighbour));
    assertTrue(cohort.findings(neighbour).isEmpty());
    assertTrue(board.good(neighbour, "").stream().allMatch(s -> s.people() == 0));
    assertTrue(
        board.rows(neighbour, "", 1).rows().stream()
            .allMatch(r -> r.person().id().equals(neighbour.id())));
  }

  @Test
  void no_address_of_the_interface_gives_a_neighbour_anything() throws Exception {
    String token = accounts.makeToken(neighbour(), "wall").orElseThrow();
    Person apprentice = people.bySignInName("apprentice1").orElseThrow();
    List<String> addresses = new ArrayList<>();
    for (UUID a : someAttempts()) {
      addresses.addAll(List.of("attempts/" + a, "attempts/" + a + "/sheet.pdf?paper=a4"));
    }
    addresses.add("people/" + apprentice.id() + "/record.pdf");
    for (String address : addresses) {
      HttpResponse<String> answer = get(address, token);
      assertEquals(404, answer.statusCode(), address);
      assertFalse(answer.body().contains(apprentice.name()), address);
    }
    assertTrue(get("attempts", token).body().contains("\"count\":0"));
    assertTrue(get("attempts?person=" + apprentice.id(), token).body().contains("\"count\":0"));
  }

  private static HttpResponse<String> get(String address, String token) throws Exception {
    int port = 8080 + Integer.getInteger("jboss.socket.binding.port-offset", 0);
    HttpRequest request =
        HttpRequest.newBuilder(URI.create("http://localhost:" + port + "/api/v1/" + address))
            .header("Authorization", "Bearer " + token)
            .build();
    return HttpClient.newBuilder()
        .version(HttpClient.Version.HTTP_1_1)
        .build()
        .send(request, HttpResponse.BodyHandlers.ofString());
  }

  private List<UUID> someAttempts() {
    return rows.createQuery("select a.id from AttemptEntity a", UUID.class)
        .setMaxResults(3)
        .getResultList();
  }

  private Person neighbour() {
    return people
        .bySignInName("neighbour")
        .orElseGet(
            () -> {
              Workshop next =
                  new Workshop(UUID.randomUUID(), "Next Door", ZoneOffset.UTC, UnitSystem.METRIC);
              people.addWorkshop(next, Instant.now());
              Person person =
                  new Person(
                      UUID.randomUUID(),
                      next.id(),
                      "Nadia Fence",
                      "neighbour",
                      EnumSet.allOf(Role.class),
                      UnitSystem.METRIC,
                      ZoneOffset.UTC,
                      true);
              people.add(person, Instant.now());
              return person;
            });
  }
}
