package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.GpsDirectory;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import javax.imageio.ImageIO;
import lapline.practice.photographs.PhonePicture;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;

/**
 * An apprentice adds photographs: what is no picture is told, and a phone's secrets are left out.
 */
class PhotographJourneyIT extends AtThePanel {

  private static final int MEGABYTE = 1024 * 1024;

  private void choose(String name, byte[] bytes) throws IOException {
    Path file = Files.createTempDirectory("photographs").resolve(name);
    Files.write(file, bytes);
    until(By.id("photograph")).sendKeys(file.toString());
  }

  private void add(String name, byte[] bytes) throws IOException {
    choose(name, bytes);
    press("photograph-add");
  }

  private void isToldBeforeItIsSent(String why) {
    waiting().until(d -> d.findElement(By.id("photograph-check")).getText().contains(why));
    press("photograph-add");
    assertThat(browser.getCurrentUrl()).as("nothing was sent").doesNotContain("photograph=");
  }

  private void isRefused(String why) {
    waiting().until(d -> d.findElement(By.id("photograph-wrong")).getText().contains(why));
    assertThat(value("r-fan-width")).as("what was typed stays").isEqualTo("250");
  }

  @Test
  void what_is_no_photograph_or_too_large_is_told_and_readings_stay() throws Exception {
    begin("apprentice13");
    write("r-fan-width", "250");
    untilSaved();
    add("panel.jpg", "This is a letter.".getBytes(StandardCharsets.UTF_8));
    isRefused("not a photograph we can read");
    isAccessible();
    picture("photograph-refused-390");
    String entry = "/learn/entry?" + attempt().replaceAll("[&#].*", "");
    open(entry + "&photograph=busy");
    isRefused("Send yours again in a minute; what you wrote down is kept");
    open(entry);
    choose("panel.jpg", new byte[21 * MEGABYTE]);
    isToldBeforeItIsSent("Too large: panel");
    until(By.id("photograph")).clear();
    for (int i = 0; i < 4; i++) {
      choose("panel" + i + ".jpg", new byte[16 * MEGABYTE]);
    }
    isToldBeforeItIsSent("at most 60 MB at once");
    scripts(false);
    add("panel.jpg", new byte[21 * MEGABYTE]);
    isRefused("too large. Choose one of at most 20 MB");
  }

  /** 70 MB, in files that are each within their limit. */
  @Test
  void photographs_too_large_together_are_told_without_scripts_and_the_caption_stays()
      throws Exception {
    begin("apprentice13");
    write("r-fan-width", "250");
    untilSaved();
    scripts(false);
    for (int i = 0; i < 5; i++) {
      choose("panel" + i + ".jpg", new byte[14 * MEGABYTE]);
    }
    type("photograph-caption", "The lower edge, \u201cfrom near\u201d");
    press("photograph-add");
    isRefused("at most 60 MB at once");
    assertThat(value("photograph-caption")).isEqualTo("The lower edge, \u201cfrom near\u201d");
    assertThat(until(By.id("photograph")).getDomAttribute("aria-describedby"))
        .contains("photograph-wrong");
    picture("photograph-too-much-390");
  }

  @Test
  void a_phones_photograph_stands_upright_and_tells_no_place() throws Exception {
    begin("apprentice13");
    add("phone.jpg", PhonePicture.lying(800, 600));
    untilText("Photographs added.");
    isAccessible();
    byte[] served = bytes(until(By.cssSelector(".pictures a")).getDomProperty("href"));
    var metadata = ImageMetadataReader.readMetadata(new ByteArrayInputStream(served));
    assertThat(metadata.getDirectoriesOfType(GpsDirectory.class)).isEmpty();
    assertThat(metadata.getDirectoriesOfType(ExifDirectoryBase.class)).isEmpty();
    assertThat(new String(served, StandardCharsets.ISO_8859_1))
        .doesNotContain(PhonePicture.OWNER)
        .doesNotContain("Exif");
    BufferedImage upright = ImageIO.read(new ByteArrayInputStream(served));
    assertThat(upright.getWidth()).isEqualTo(600);
    assertThat(upright.getHeight()).isEqualTo(800);
    until(By.cssSelector(".pictures button")).click();
    untilText("Photograph removed.");
  }

  private byte[] bytes(String address) {
    Object text =
        browser.executeAsyncScript(
            """
            const done = arguments[1];
            fetch(arguments[0]).then(a => a.blob()).then(blob => {
              const reader = new FileReader();
              reader.onload = () => done(reader.result.split(',')[1]);
              reader.readAsDataURL(blob);
            });
            """,
            address);
    return Base64.getDecoder().decode(text.toString());
  }
}
