package lapline.content;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Text as editors save it: UTF-8 and nothing else, any line ends, a byte order mark allowed. */
final class Utf8 {
  private static final char BYTE_ORDER_MARK = '\uFEFF';
  private static final String SAVE_AGAIN =
      "save it again as UTF-8 (in your editor: 'Save with encoding')";

  private Utf8() {}

  static Optional<String> decode(byte[] bytes, Problems problems) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length);
    CoderResult result = decoder.decode(in, out, true);
    if (result.isError()) {
      problems.add(lineOf(bytes, in.position()), "the file is not UTF-8 text", SAVE_AGAIN);
      return Optional.empty();
    }
    String text = out.flip().toString();
    if (text.indexOf('\0') >= 0) {
      problems.add(1, "the file is not UTF-8 text (UTF-16?)", SAVE_AGAIN);
      return Optional.empty();
    }
    return Optional.of(tidy(text));
  }

  private static String tidy(String text) {
    String from = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    return from.replace("\r\n", "\n").replace('\r', '\n');
  }

  private static int lineOf(byte[] bytes, int position) {
    int line = 1;
    for (int i = 0; i < position; i++) {
      if (bytes[i] == '\n') {
        line++;
      }
    }
    return line;
  }
}
