package lapline.practice;

/**
 * What somebody has just typed at one place of a panel's record.
 *
 * @param cell key of the {@link Cell}
 * @param typed as it stands in the field; empty to take a reading out
 * @param base the revision of what stood there when they began; 0 for nothing
 */
public record TypedReading(String cell, String typed, long base) {

  /** Longest text that a field takes. */
  public static final int LONGEST = 200;

  public TypedReading {
    typed = typed == null ? "" : typed.strip();
  }

  boolean isTooLong() {
    return typed.length() > LONGEST;
  }

  /** Whether the same place was given another value meanwhile, which this one would wipe out. */
  boolean clashesWith(KeptReading kept) {
    return kept != null && kept.revision() > base && !kept.typed().equals(typed);
  }

  /** Whether it says anything that is not kept already. */
  boolean isNews(KeptReading kept) {
    return kept == null ? !typed.isEmpty() : !kept.typed().equals(typed);
  }
}
