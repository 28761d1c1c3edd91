package lapline.practice.photographs;

import java.time.Instant;
import java.util.UUID;

/**
 * A picture of a panel, as listed with its attempt; the picture itself lies in a file.
 *
 * @param hash SHA-256 of the kept picture, in hexadecimal; names its file
 * @param caption what it shows, in the words of who took it; may be empty
 */
public record Photograph(
    UUID id, UUID attempt, String hash, String caption, int width, int height, Instant at) {}
