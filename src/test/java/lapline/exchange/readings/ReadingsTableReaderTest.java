package lapline.exchange.readings;

import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReadingsTableReaderTest {

  private static ReadingsTable table(byte[] bytes) {
    return ((TableReading.Readable) ReadingsTableReader.read(bytes)).table();
  }

  private static String refusal(byte[] bytes) {
    return ((TableReading.Refused) ReadingsTableReader.read(bytes)).key();
  }

  @Test
  void a_decimal_comma_is_no_separator_where_a_semicolon_separates() {
    ReadingsTable t = table("place;film\n1;62,5\n2;61,0\n".getBytes(UTF_8));
    assertThat(t.header()).containsExactly("place", "film");
    assertThat(t.rows()).containsExactly(List.of("1", "62,5"), List.of("2", "61,0"));
  }

  @Test
  void one_column_with_decimal_commas_stays_one_column() {
    assertThat(table("film\n62,5\n61,0".getBytes(UTF_8)).rows())
        .containsExactly(List.of("62,5"), List.of("61,0"));
  }

  @Test
  void every_encoding_that_a_spreadsheet_writes_is_found() {
    String text = "place\tfilm (µm)\r\n1\t62\r\n";
    assertThat(table(text.getBytes(UTF_8)).header()).contains("film (µm)");
    assertThat(table(text.getBytes(Charset.forName("windows-1252"))).header())
        .contains("film (µm)");
    ByteArrayOutputStream marked = new ByteArrayOutputStream();
    marked.write(0xFF);
    marked.write(0xFE);
    marked.writeBytes(text.getBytes(UTF_16LE));
    assertThat(table(marked.toByteArray()).header()).containsExactly("place", "film (µm)");
    assertThat(table(("\uFEFF" + text).getBytes(UTF_8)).header().get(0)).isEqualTo("place");
  }

  @Test
  void ragged_rows_are_filled_up_and_empty_ones_left_out() {
    assertThat(table("a,b,c\n1\n\n,,\n2,3,4\n".getBytes(UTF_8)).rows())
        .containsExactly(List.of("1", "", ""), List.of("2", "3", "4"));
  }

  @Test
  void what_is_no_table_is_told_in_words() {
    assertThat(refusal(new byte[] {'P', 'K', 3, 4, 0, 0})).isEqualTo("import.not-text");
    assertThat(refusal("film\n".getBytes(UTF_8))).isEqualTo("import.no-rows");
    assertThat(refusal(new byte[0])).isEqualTo("import.no-rows");
    assertThat(refusal(new byte[ReadingsTableReader.MOST_BYTES + 1])).isEqualTo("import.too-long");
    assertThat(refusal("a,b\n\"1,2\n3,4".getBytes(UTF_8))).isEqualTo("import.quotes");
    assertThat(refusal("a\n".concat("1\n".repeat(2001)).getBytes(UTF_8)))
        .isEqualTo("import.too-many");
  }
}
