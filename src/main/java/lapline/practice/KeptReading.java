package lapline.practice;

import java.time.Instant;

/**
 * What was typed at one place of a panel's record, as kept.
 *
 * @param cell key of the {@link Cell}
 * @param typed as the person wrote it; empty where it was taken out again
 * @param revision the attempt's revision when it was written
 */
public record KeptReading(String cell, String typed, Instant at, long revision) {}
