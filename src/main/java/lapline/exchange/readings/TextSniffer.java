package lapline.exchange.readings;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Makes text of a file's bytes: by its byte order mark, else as UTF-8 where it is that, else as
 * Windows-1252, which is what spreadsheets on older machines write.
 */
final class TextSniffer {
  private static final Charset WINDOWS = Charset.forName("windows-1252");

  private TextSniffer() {}

  /** A file's text and the encoding it was in. */
  record Text(String text, Charset charset) {}

  /** Empty when the bytes are no text: a picture, a workbook. */
  static Optional<Text> read(byte[] bytes) {
    if (startsWith(bytes, 0xEF, 0xBB, 0xBF)) {
      return decoded(bytes, 3, StandardCharsets.UTF_8);
    }
    if (startsWith(bytes, 0xFF, 0xFE)) {
      return decoded(bytes, 2, StandardCharsets.UTF_16LE);
    }
    if (startsWith(bytes, 0xFE, 0xFF)) {
      return decoded(bytes, 2, StandardCharsets.UTF_16BE);
    }
    for (byte b : bytes) {
      if (b == 0) {
        return Optional.empty();
      }
    }
    return decoded(bytes, 0, StandardCharsets.UTF_8).or(() -> decoded(bytes, 0, WINDOWS));
  }

  private static boolean startsWith(byte[] bytes, int... mark) {
    if (bytes.length < mark.length) {
      return false;
    }
    for (int i = 0; i < mark.length; i++) {
      if ((bytes[i] & 0xFF) != mark[i]) {
        return false;
      }
    }
    return true;
  }

  private static Optional<Text> decoded(byte[] bytes, int from, Charset charset) {
    try {
      String text =
          charset
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes, from, bytes.length - from))
              .toString();
      return Optional.of(new Text(text, charset));
    } catch (CharacterCodingException e) {
      return Optional.empty();
    }
  }
}
