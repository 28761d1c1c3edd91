package lapline.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What to do on a practice panel and what is measured on it, with targets; read from a file under
 * {@code curriculum/}. An attempt keeps the whole task it was judged under.
 *
 * @param id path of the file without its ordering prefix, such as {@code clear/two-coats}
 * @param unit id of the unit it belongs to, such as {@code clear}
 * @param version short hash of the file's text
 * @param skill id of the skill it is evidence for
 * @param coats how many coats there is room for; 0 where nothing is sprayed
 * @param coatsNeeded how many of them are sprayed at the least
 * @param passesPerCoat most passes a coat may have on the entry page; 0 where nothing is sprayed
 */
public record PracticeTask(
    String id,
    String unit,
    String title,
    String version,
    String skill,
    String purpose,
    PanelOutline panel,
    int coats,
    int coatsNeeded,
    int passesPerCoat,
    List<String> prepare,
    List<String> cautions,
    List<Section> sections,
    List<Criterion> criteria,
    List<FindingRule> findings,
    List<RubricItem> rubric,
    List<DefectKind> defects,
    List<MixPart> mix) {

  /** A part of the mix in the gun, by volume, as the product's sheet gives it. */
  public record MixPart(String name, double parts) {}

  /** A group of fields on the entry page and the task sheet. */
  public record Section(String id, String title, String note, List<Field> fields) {

    /**
     * What is read equally often, together where the first of it stands: the order of the entry
     * page and of the task sheet alike, so that a thumb goes down the paper.
     */
    public List<List<Field>> alike() {
      List<List<Field>> groups = new ArrayList<>();
      for (Field field : fields) {
        groups.stream()
            .filter(g -> g.get(0).isReadLike(field))
            .findFirst()
            .ifPresentOrElse(g -> g.add(field), () -> groups.add(new ArrayList<>(List.of(field))));
      }
      return groups;
    }
  }

  /**
   * One measurand asked for.
   *
   * @param scope how often it is read; null where nobody knows the measurand
   * @param between whether it lies between a coat or pass and the one before
   * @param required whether no panel can be scored without it
   * @param steps names of the steps for {@link Scope#STEP}; empty otherwise
   * @param places numbers of the places it is read at; empty for all places of the panel
   * @param placesNeeded at how many of them it has to be read; 0 for all
   */
  public record Field(
      String measurand,
      Scope scope,
      boolean between,
      boolean required,
      List<String> steps,
      List<Integer> places,
      int placesNeeded) {

    private boolean isReadLike(Field other) {
      return scope == other.scope && (scope != Scope.STEP || steps.equals(other.steps));
    }

    /** A measurand asked for wherever it can be read, that a panel can be scored without. */
    public static Field of(Measurand m) {
      return new Field(m.id(), m.scope(), m.between(), false, List.of(), List.of(), 0);
    }
  }

  /** A rating an instructor gives by eye, from described anchors, worst first. */
  public record RubricItem(
      String id, String label, boolean critical, int acceptedFrom, List<Anchor> anchors) {

    /** Whether it rates how safely the person worked, which goes before any look of the panel. */
    public boolean ratesSafeWork() {
      return id.equals("conduct");
    }
  }

  /** What a mark of the rubric looks like. */
  public record Anchor(int mark, String looksLike) {}

  /** A defect that may be marked on the panel drawing, with what usually causes it. */
  public record DefectKind(String id, String label, String looksLike) {}

  /**
   * A cause in the task's own words, offered when a criterion comes out as stated.
   *
   * @param criterion id of a criterion of this task
   * @param side {@code low}, {@code high} or {@code any}: which side of the range the value lies
   * @param beyond how far outside the range it has to lie, in SI; 0 for anything outside
   * @param change the one thing to change next
   */
  public record FindingRule(
      String criterion,
      String side,
      double beyond,
      String cause,
      String change,
      List<String> rivals) {}

  /** Whether any target can come from a gun's card. */
  public boolean usesGun() {
    return criteria.stream().anyMatch(c -> !c.card().isEmpty());
  }

  public Optional<Criterion> criterion(String criterionId) {
    return criteria.stream().filter(c -> c.id().equals(criterionId)).findFirst();
  }

  /** This task with the criteria of a workshop's data sheet or gun card in place of its own. */
  public PracticeTask withCriteria(List<Criterion> other) {
    return with(panel, other);
  }

  /** This task with places to read beside its own. */
  public PracticeTask withFurther(List<PanelOutline.Place> further) {
    return with(panel.withFurther(further), criteria);
  }

  private PracticeTask with(PanelOutline otherPanel, List<Criterion> otherCriteria) {
    return new PracticeTask(
        id,
        unit,
        title,
        version,
        skill,
        purpose,
        otherPanel,
        coats,
        coatsNeeded,
        passesPerCoat,
        prepare,
        cautions,
        sections,
        otherCriteria,
        findings,
        rubric,
        defects,
        mix);
  }

  public Optional<Field> field(String measurand) {
    for (Section section : sections) {
      for (Field field : section.fields()) {
        if (field.measurand().equals(measurand)) {
          return Optional.of(field);
        }
      }
    }
    return Optional.empty();
  }
}
