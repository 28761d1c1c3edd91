package lapline;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Who may use whom. One table; a room that is not in it, or a row that names nothing, fails. */
class ArchitectureTest {

  /** Each room with the rooms it may use; a room may always use itself. */
  private static final Map<String, Set<String>> MAY_USE =
      Map.ofEntries(
          Map.entry("trade", Set.of()),
          Map.entry("judgement", Set.of()),
          Map.entry("content", Set.of("trade")),
          Map.entry("pages", Set.of("trade")),
          Map.entry("people", Set.of("trade", "pages", "content", "server")),
          Map.entry("lessons", Set.of("trade", "content", "pages", "people", "server")),
          Map.entry("practice", Set.of("trade", "content", "pages", "people", "server", "lessons")),
          Map.entry(
              "exams",
              Set.of("trade", "judgement", "content", "pages", "people", "server", "lessons")),
          Map.entry(
              "grading",
              Set.of(
                  "trade",
                  "judgement",
                  "content",
                  "pages",
                  "people",
                  "server",
                  "lessons",
                  "practice",
                  "exams")),
          Map.entry(
              "signoff",
              Set.of(
                  "trade",
                  "judgement",
                  "content",
                  "pages",
                  "people",
                  "server",
                  "lessons",
                  "practice",
                  "exams",
                  "grading")),
          Map.entry(
              "board",
              Set.of(
                  "trade",
                  "judgement",
                  "content",
                  "pages",
                  "people",
                  "server",
                  "lessons",
                  "practice",
                  "exams",
                  "grading",
                  "signoff")),
          Map.entry(
              "exchange",
              Set.of(
                  "trade",
                  "content",
                  "pages",
                  "people",
                  "server",
                  "lessons",
                  "practice",
                  "exams",
                  "grading",
                  "signoff",
                  "board")),
          Map.entry(
              "demo",
              Set.of(
                  "trade",
                  "content",
                  "pages",
                  "people",
                  "server",
                  "lessons",
                  "practice",
                  "exams",
                  "grading",
                  "signoff",
                  "board")),
          Map.entry("server", Set.of("people", "content", "pages")));

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("lapline");

  @Test
  void enough_classes_were_looked_at_for_the_rules_to_mean_something() {
    assertThat(CLASSES.size()).isGreaterThan(100);
  }

  @Test
  void every_room_is_in_the_table_and_every_row_is_a_room() {
    Set<String> rooms =
        CLASSES.stream().map(ArchitectureTest::room).collect(Collectors.toCollection(TreeSet::new));
    assertThat(rooms).isEqualTo(new TreeSet<>(MAY_USE.keySet()));
  }

  @Test
  void rooms_use_only_the_rooms_the_table_allows() {
    Map<String, List<String>> broken = new TreeMap<>();
    for (JavaClass c : CLASSES) {
      for (Dependency d : c.getDirectDependenciesFromSelf()) {
        JavaClass target = d.getTargetClass().getBaseComponentType();
        if (target.getPackageName().startsWith("lapline.") && !allowed(room(c), room(target))) {
          broken
              .computeIfAbsent(room(c) + " -> " + room(target), k -> new ArrayList<>())
              .add(d.getDescription());
        }
      }
    }
    assertThat(broken).isEmpty();
  }

  @Test
  void the_science_uses_the_jdk_and_numerics_only_and_measure_is_its_ground() {
    assertUses(
        "lapline.trade",
        "java.",
        "lapline.trade.",
        "org.apache.commons.statistics.",
        "org.apache.commons.numbers.",
        "org.apache.commons.rng.",
        "org.hipparchus.",
        "org.locationtech.jts.");
    assertUses("lapline.judgement", "java.", "lapline.judgement.");
    assertUses(
        "lapline.trade.measure",
        "java.",
        "lapline.trade.measure",
        "org.apache.commons.statistics.",
        "org.apache.commons.numbers.",
        "org.hipparchus.");
  }

  @Test
  void only_the_stores_know_persistence() {
    onlyIn("\\.store(\\..*)?$|^lapline\\.server$", "jakarta.persistence.", "org.hibernate.");
  }

  @Test
  void only_pages_and_the_server_know_faces() {
    onlyIn("\\.pages(\\..*)?$|^lapline\\.server$", "jakarta.faces.", "org.primefaces.");
  }

  @Test
  void only_exchange_and_server_and_the_sign_in_page_know_http() {
    onlyIn(
        "^lapline\\.(exchange|server)(\\..*)?$|^lapline\\.people\\.pages$",
        "jakarta.servlet.",
        "jakarta.ws.rs.");
  }

  @Test
  void rules_never_know_rows_or_pages_of_their_feature() {
    Set<String> broken = new TreeSet<>();
    for (JavaClass c : CLASSES) {
      boolean edge =
          c.getPackageName().matches(".*\\.(pages|store)(\\..*)?")
              || room(c).matches("exchange|demo|server");
      for (Dependency d : c.getDirectDependenciesFromSelf()) {
        String target = d.getTargetClass().getPackageName();
        if (!edge && target.matches("lapline\\.[a-z]+\\.(pages|store)(\\..*)?")) {
          broken.add(d.getDescription());
        }
      }
    }
    assertThat(broken).isEmpty();
  }

  @Test
  void no_class_is_named_after_what_it_is_made_of_instead_of_what_it_is() {
    assertThat(
            CLASSES.stream()
                .map(JavaClass::getSimpleName)
                .filter(
                    n ->
                        n.matches(
                            ".*(Util|Utils|Helper|Manager|Service|Impl|DTO|Dto)$|^(Abstract|Common).*")))
        .isEmpty();
  }

  private static boolean allowed(String from, String to) {
    return from.equals(to) || MAY_USE.getOrDefault(from, Set.of()).contains(to);
  }

  private static String room(JavaClass c) {
    String[] parts = c.getPackageName().split("\\.");
    return parts.length > 1 ? parts[1] : "";
  }

  private static void assertUses(String packagePrefix, String... allowed) {
    Set<String> broken = new TreeSet<>();
    for (JavaClass c : CLASSES) {
      if (!(c.getPackageName() + ".").startsWith(packagePrefix + ".")) {
        continue;
      }
      for (Dependency d : c.getDirectDependenciesFromSelf()) {
        JavaClass target = d.getTargetClass().getBaseComponentType();
        if (!target.isPrimitive()
            && java.util.Arrays.stream(allowed).noneMatch(target.getName()::startsWith)) {
          broken.add(d.getDescription());
        }
      }
    }
    assertThat(broken).as(packagePrefix).isEmpty();
  }

  private static void onlyIn(String packages, String... libraries) {
    Set<String> broken = new TreeSet<>();
    java.util.regex.Pattern place = java.util.regex.Pattern.compile(packages);
    for (JavaClass c : CLASSES) {
      for (Dependency d : c.getDirectDependenciesFromSelf()) {
        String target = d.getTargetClass().getName();
        boolean guarded = java.util.Arrays.stream(libraries).anyMatch(target::startsWith);
        if (guarded && !place.matcher(c.getPackageName()).find()) {
          broken.add(d.getDescription());
        }
      }
    }
    assertThat(broken).isEmpty();
  }
}
