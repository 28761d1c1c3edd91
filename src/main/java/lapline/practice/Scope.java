package lapline.practice;

/** How often a measurand is read on one panel. */
public enum Scope {
  /** Once for the whole panel. */
  PANEL,
  /** At each numbered place of the panel. */
  PLACE,
  /** Once for each coat. */
  COAT,
  /** At each numbered place after each coat. */
  COAT_PLACE,
  /** For each pass of each coat. */
  PASS,
  /** For each of a row of numbered steps, such as sanding grits or the parts of a mix. */
  STEP
}
