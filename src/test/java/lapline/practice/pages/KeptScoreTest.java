package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import lapline.practice.PanelScorer;
import lapline.practice.ScoreAttempt;
import lapline.practice.ScoreReadings;
import lapline.practice.fit.FilmFieldEstimate;
import org.junit.jupiter.api.Test;

/** A page shows the score that was kept when the panel was judged; it never judges again. */
class KeptScoreTest {
  private static final List<Class<?>> SCORING =
      List.of(PanelScorer.class, FilmFieldEstimate.class, ScoreReadings.class, ScoreAttempt.class);

  @Test
  void no_page_scores_a_panel_or_estimates_its_film() {
    var pages =
        new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("lapline.practice.pages", "lapline.grading.pages");
    assertThat(pages).hasSizeGreaterThan(30);
    List<String> scoring =
        pages.stream()
            // the button under the readings is where a panel is judged
            .filter(c -> !c.isEquivalentTo(EntryPage.class))
            .filter(
                c ->
                    c.getDirectDependenciesFromSelf().stream()
                        .anyMatch(d -> isScoring(d.getTargetClass())))
            .map(JavaClass::getName)
            .toList();
    assertThat(scoring).isEmpty();
  }

  private static boolean isScoring(JavaClass c) {
    return SCORING.stream().anyMatch(c::isEquivalentTo);
  }
}
