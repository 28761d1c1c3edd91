package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;

/** An apprentice chooses files of every encoding, and some that are no readings at all. */
class ImportJourneyIT extends AtThePanel {
  private static final String READINGS = "Place;Film after (µm);Prüfer\n1;62,5;Jürgen\n2;61;Zoë\n";

  private void choose(byte[] bytes) throws IOException {
    Path file = Files.createTempFile("readings", ".csv");
    Files.write(file, bytes);
    until(By.id("upload:file")).sendKeys(file.toString());
    press("upload:go");
  }

  private void isRead(Charset charset, byte[] bytes) throws IOException {
    choose(bytes);
    until(By.id("mapping:take"));
    assertThat(text()).contains("read as " + charset).contains("Prüfer").contains("62.5 µm");
    press("mapping:over");
    until(By.id("upload:file"));
  }

  private void isRefused(String why, byte[] bytes) throws IOException {
    choose(bytes);
    // the refusal before this one may still stand there while it is looked at
    waiting().until(d -> d.findElement(By.cssSelector("#upload .wrong")).getText().contains(why));
    assertThat(browser.findElement(By.cssSelector(".errors")).getText()).contains(why);
  }

  @Test
  void a_file_is_read_in_its_encoding_or_refused_in_words() throws Exception {
    begin("apprentice14");
    String attempt = attempt();
    open("/learn/import?" + attempt);
    isRead(StandardCharsets.UTF_8, READINGS.getBytes(StandardCharsets.UTF_8));
    isRead(StandardCharsets.UTF_16LE, ("\uFEFF" + READINGS).getBytes(StandardCharsets.UTF_16LE));
    isRead(Charset.forName("windows-1252"), READINGS.getBytes(StandardCharsets.ISO_8859_1));
    isRefused("not a text file", new byte[] {'P', 'K', 3, 4, 0, 0, 7});
    isRefused("not a text file", READINGS.getBytes(StandardCharsets.UTF_16BE));
    isAccessible();
    picture("import-refused-390");
    isRefused("longer than 1 MB", "1;2\n".repeat(2_600_000).getBytes(StandardCharsets.UTF_8));
    open("/learn/entry?" + attempt);
    assertThat(value("r-film-after-at1")).as("looking takes nothing").isEmpty();
  }
}
