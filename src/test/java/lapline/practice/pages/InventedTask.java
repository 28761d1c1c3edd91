package lapline.practice.pages;

import java.util.ArrayList;
import java.util.List;
import lapline.practice.Criterion;
import lapline.practice.Measurand;
import lapline.practice.PanelOutline;
import lapline.practice.PracticeTask;
import lapline.practice.Scope;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.SpokenUnits;
import lapline.trade.measure.TargetRange;

/** A task with everything a task can have, for the drawings and the sheet; invented. */
final class InventedTask {
  private InventedTask() {}

  static PracticeTask full() {
    return sprayed(2, 8);
  }

  static PracticeTask sprayed(int coats, int passesPerCoat) {
    return new PracticeTask(
        "clear/two-coats",
        "clear",
        "Two coats of clear on a flat panel",
        "v1",
        "clear",
        "Lay two even coats of clear with the same spacing, distance and speed from edge to edge.",
        panel(),
        coats,
        coats,
        passesPerCoat,
        List.of(
            "Panel keyed, cleaned and tacked.",
            "Gun clean, the tip for clear fitted, pressure set with the trigger pulled.",
            "A test pattern sprayed on paper and its width measured.",
            "Film gauge verified on its foils, comb and stop watch at hand."),
        List.of(
            "Two-pack clear gives off isocyanates: supplied air or what the product sheet asks for,"
                + " gloves, suit, booth running.",
            "No flame, no spark. Read the product's data sheet; local rules come first."),
        sections(),
        criteria(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  static PanelOutline panel() {
    List<PanelOutline.Place> places = new ArrayList<>();
    for (double y : new double[] {0.05, 0.15, 0.25, 0.35}) {
      for (double x : new double[] {0.08, 0.3, 0.52}) {
        places.add(new PanelOutline.Place(places.size() + 1, x, y, ""));
      }
    }
    return new PanelOutline(0.6, 0.4, List.of(), places, List.of());
  }

  private static List<PracticeTask.Section> sections() {
    return List.of(
        section("Gun and mix", "tip", "turns", "pressure", "fan", "parts"),
        section("Climate", "air", "panel", "humidity"),
        section("Coats", "start", "flash"),
        section("Passes", "spacing", "near", "middle", "far", "time"),
        section("Film and finish", "wet", "before", "after", "gloss"));
  }

  private static PracticeTask.Section section(String title, String... fields) {
    List<PracticeTask.Field> asked = new ArrayList<>();
    for (String id : fields) {
      List<String> steps = id.equals("parts") ? List.of("Clear", "Hardener", "Reducer") : List.of();
      Measurand m = measurand(id);
      boolean needed = id.equals("after");
      asked.add(new PracticeTask.Field(id, m.scope(), m.between(), needed, steps, List.of(), 0));
    }
    return new PracticeTask.Section(title, title, "", asked);
  }

  private static List<Criterion> criteria() {
    List<Criterion> all = new ArrayList<>();
    all.add(criterion("Inlet pressure", Dimension.PRESSURE, 150e3, 180e3));
    all.add(criterion("Distance, mean over the passes", Dimension.LENGTH, 0.0762, 0.127));
    all.add(criterion("Drift of the distance along the stroke", Dimension.LENGTH, 0, 0.015));
    all.add(criterion("Overlap", Dimension.SHARE, 0.65, 0.75));
    all.add(criterion("Stroke speed", Dimension.SPEED, 0.25, 0.4));
    all.add(criterion("Flash between coats", Dimension.DURATION, 480, 900));
    all.add(criterion("Panel above dew point", Dimension.TEMPERATURE_DIFFERENCE, 3, 1e9));
    all.add(criterion("Wet film per coat", Dimension.FILM, 50e-6, 65e-6));
    all.add(criterion("Film build", Dimension.FILM, 50e-6, 65e-6));
    all.add(criterion("Gloss at 60°", Dimension.GLOSS, 85, 100));
    return all;
  }

  private static Criterion criterion(String label, Dimension d, double least, double most) {
    TargetRange target = most > 1e8 ? TargetRange.atLeast(least) : new TargetRange(least, most);
    return new Criterion(
        label, label, label, d, null, Criterion.Judged.MEAN, target, true, 1, 1, "", "", "");
  }

  static Measurand measurand(String id) {
    return switch (id) {
      case "tip" -> of(id, "Fluid tip", Dimension.LENGTH, Scope.PANEL);
      case "turns" -> of(id, "Fluid knob, turns open", Dimension.NUMBER, Scope.PANEL);
      case "pressure" -> of(id, "Inlet pressure", Dimension.PRESSURE, Scope.PANEL);
      case "fan" -> of(id, "Fan width", Dimension.LENGTH, Scope.PANEL);
      case "parts" -> of(id, "Amount in the cup", Dimension.VOLUME, Scope.STEP);
      case "air" -> of(id, "Air temperature", Dimension.TEMPERATURE, Scope.PANEL);
      case "panel" -> of(id, "Panel temperature", Dimension.TEMPERATURE, Scope.PANEL);
      case "humidity" -> of(id, "Relative humidity", Dimension.SHARE, Scope.PANEL);
      case "start" -> of(id, "Coat begun at", Dimension.CLOCK, Scope.COAT);
      case "flash" -> of(id, "Waited before this coat", Dimension.DURATION, Scope.COAT);
      case "spacing" -> of(id, "Step to this pass", Dimension.LENGTH, Scope.PASS);
      case "near" -> of(id, "Distance at the start", Dimension.LENGTH, Scope.PASS);
      case "middle" -> of(id, "In the middle", Dimension.LENGTH, Scope.PASS);
      case "far" -> of(id, "At the end", Dimension.LENGTH, Scope.PASS);
      case "time" -> of(id, "Time of the stroke", Dimension.DURATION, Scope.PASS);
      case "wet" -> of(id, "Wet film", Dimension.FILM, Scope.COAT_PLACE);
      case "before" -> of(id, "Film before", Dimension.FILM, Scope.PLACE);
      case "after" -> of(id, "Film after", Dimension.FILM, Scope.PLACE);
      default -> of(id, "Gloss at 60°", Dimension.GLOSS, Scope.PLACE);
    };
  }

  private static Measurand of(String id, String label, Dimension d, Scope scope) {
    boolean between = id.equals("flash") || id.equals("spacing");
    return new Measurand(
        id, label, "", SpokenUnits.usual(d), scope, between, 0, 1e9, 0, 0, "", List.of());
  }
}
