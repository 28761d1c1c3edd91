package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import lapline.people.NotAllowedException;
import lapline.people.NotFoundException;
import lapline.practice.photographs.LookAfterPhotographs;
import lapline.practice.photographs.Photograph;
import lapline.practice.photographs.PhotographFiles;
import lapline.practice.photographs.PhotographRecords;
import lapline.practice.photographs.PhotographRefusedException;
import lapline.practice.photographs.SweepPhotographs;
import lapline.server.Settings;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who may add, see and take away photographs of a panel, and how many there may be. */
class PhotographsTest {
  @TempDir Path folder;
  private final PracticeShop shop = new PracticeShop();
  private PhotographFiles files;
  private LookAfterPhotographs photographs;

  /** Two hours on. */
  private SweepPhotographs later;

  private Attempt panel;

  @BeforeEach
  void open() {
    Remembered list = new Remembered();
    files = new PhotographFiles(new Settings(folder, false, false, ""), shop.clock);
    SweepPhotographs sweep = new SweepPhotographs(files, list, shop.clock);
    photographs =
        new LookAfterPhotographs(list, shop.attempts, shop.find, files, sweep, shop.clock);
    later = new SweepPhotographs(files, list, Clock.offset(shop.clock, Duration.ofHours(2)));
    panel = shop.draft();
  }

  @Test
  void the_same_photograph_twice_is_one() throws Exception {
    Photograph first = photographs.add(shop.apprentice, panel.id(), picture(1), "corner");
    Photograph again = photographs.add(shop.apprentice, panel.id(), picture(1), "corner");
    assertThat(again).isEqualTo(first);
    assertThat(photographs.of(shop.apprentice, panel.id())).containsExactly(first);
  }

  @Test
  void an_instructor_sees_and_adds_and_another_apprentice_does_neither() throws Exception {
    Photograph one = photographs.add(shop.instructor, panel.id(), picture(1), "");
    assertThat(photographs.photograph(shop.instructor, one.id())).isEqualTo(one);
    assertThatThrownBy(() -> photographs.photograph(shop.other, one.id()))
        .isInstanceOf(NotAllowedException.class);
    assertThatThrownBy(() -> photographs.add(shop.other, panel.id(), picture(2), ""))
        .isInstanceOf(NotAllowedException.class);
  }

  @Test
  void for_another_workshop_there_is_no_such_photograph() throws Exception {
    Photograph one = photographs.add(shop.apprentice, panel.id(), picture(1), "");
    assertThatThrownBy(() -> photographs.photograph(shop.stranger, one.id()))
        .isInstanceOf(NotFoundException.class);
    assertThatThrownBy(() -> photographs.of(shop.stranger, panel.id()))
        .isInstanceOf(NotFoundException.class);
  }

  @Test
  void a_panel_holds_so_many_and_no_more() throws Exception {
    for (int i = 0; i < LookAfterPhotographs.MOST; i++) {
      photographs.add(shop.apprentice, panel.id(), picture(i), "");
    }
    byte[] oneMore = picture(LookAfterPhotographs.MOST);
    assertThatThrownBy(() -> photographs.add(shop.apprentice, panel.id(), oneMore, ""))
        .isInstanceOfSatisfying(
            PhotographRefusedException.class,
            e -> assertThat(e.reason()).isEqualTo(PhotographRefusedException.Reason.TOO_MANY));
  }

  @Test
  void a_picture_taken_away_stays_where_another_panel_shows_it() throws Exception {
    Photograph one = photographs.add(shop.apprentice, panel.id(), picture(1), "");
    Attempt others = shop.start.run(shop.other, PracticeShop.TASK, null, "");
    Photograph same = photographs.add(shop.other, others.id(), picture(1), "");
    photographs.remove(shop.apprentice, one.id());
    later.ifDue();
    assertThat(photographs.of(shop.apprentice, panel.id())).isEmpty();
    assertThat(photographs.picture(same, true)).isNotEmpty();
  }

  @Test
  void the_file_of_a_picture_that_no_panel_shows_goes_an_hour_later() throws Exception {
    Photograph one = photographs.add(shop.apprentice, panel.id(), picture(1), "");
    photographs.remove(shop.apprentice, one.id());
    assertThat(photographs.picture(one, true)).as("it may be undone").isNotEmpty();
    later.ifDue();
    assertThatThrownBy(() -> photographs.picture(one, true)).isInstanceOf(RuntimeException.class);
  }

  private static byte[] picture(int which) throws IOException {
    BufferedImage image = new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB);
    image.createGraphics().fillRect(0, 0, 3 * which, 30);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, "png", out);
    return out.toByteArray();
  }

  /** The list in memory. */
  private static final class Remembered implements PhotographRecords {
    private final Map<UUID, Photograph> all = new LinkedHashMap<>();

    @Override
    public void add(Photograph photograph) {
      all.put(photograph.id(), photograph);
    }

    @Override
    public List<Photograph> of(UUID attempt) {
      return all.values().stream().filter(p -> p.attempt().equals(attempt)).toList();
    }

    @Override
    public Optional<Photograph> photograph(UUID id) {
      return Optional.ofNullable(all.get(id));
    }

    @Override
    public void remove(UUID id) {
      all.remove(id);
    }

    @Override
    public Set<String> shown(String beginning) {
      return all.values().stream()
          .map(Photograph::hash)
          .filter(hash -> hash.startsWith(beginning))
          .collect(Collectors.toSet());
    }
  }
}
