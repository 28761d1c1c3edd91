package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URL;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lapline.demo.Arranged;
import org.jboss.arquillian.container.test.api.Deployment;
import org.jboss.arquillian.container.test.api.RunAsClient;
import org.jboss.arquillian.junit5.ArquillianExtension;
import org.jboss.arquillian.test.api.ArquillianResource;
import org.jboss.shrinkwrap.api.spec.WebArchive;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/**
 * Every page of every role, found by itself and filled with the role's own things, on a telephone,
 * a tablet and a wide screen, with all that can be folded out folded out: anybody can use it,
 * nothing stands out of the side, it has one title, and its main action can be reached and hit by
 * hand.
 */
@ExtendWith(ArquillianExtension.class)
@RunAsClient
class EveryPageIT extends Journey {
  /** Hit by a thumb in a glove. */
  private static final int LEAST_HEIGHT = 44;

  /** Status of an address and where it leads, which costs a tenth of opening it. */
  private static final String ASK =
      "const done = arguments[arguments.length - 1];"
          + "fetch(arguments[0]).then(a => a.text().then(() => done([a.status, a.url])));";

  private static final String FOLD_OUT =
      "document.querySelectorAll('details').forEach(d => d.open = true);";

  private static final String WIDER =
      "const room = document.documentElement.clientWidth;"
          + "if (document.documentElement.scrollWidth <= window.innerWidth) return [];"
          + "return ['wider than the screen: ' + [...document.querySelectorAll('main *')]"
          + ".filter(e => e.getBoundingClientRect().right > room + 1 && !e.closest('.wide'))"
          + ".slice(-3).map(e => e.tagName + '#' + e.id + '.' + e.className)];";

  private static final String CUT_OFF =
      "return [...document.querySelectorAll('.wide:has(.stacked)')]"
          + ".filter(w => w.scrollWidth > w.clientWidth + 1)"
          + ".map(w => 'rows that stand as blocks are cut off: ' + w.ariaLabel);";

  private static final String TITLES =
      "const n = document.querySelectorAll('h1').length;"
          + "return n === 1 ? [] : ['has ' + n + ' titles'];";

  private static final String MAIN_ACTION =
      "return [...document.querySelectorAll('.main')].filter(m => m.getClientRects().length)"
          + ".filter(m => { m.focus(); return m.tabIndex < 0 || document.activeElement !== m"
          + " || m.getBoundingClientRect().height < arguments[0]; })"
          + ".map(m => 'main action out of reach or too low: ' + m.outerHTML.slice(0, 160));";

  private static final Pattern NAMES = Pattern.compile("[?].*|[.]xhtml");

  private static Arranged shop;

  /** Pages that stood here with the same title for somebody else need no second look by axe. */
  private static final Set<String> LOOKED_AT = new LinkedHashSet<>();

  @ArquillianResource private URL desk;
  private final Set<String> opened = new LinkedHashSet<>();
  private final List<String> broken = new ArrayList<>();
  private final Map<String, String> tabs = new HashMap<>();

  @Deployment(testable = false)
  static WebArchive desk() {
    return Arranging.desk();
  }

  @BeforeEach
  void arrange() throws Exception {
    if (shop == null) {
      shop = Arranging.workshop(desk, "Mansard");
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "apprentice", "beginner", "instructor", "examiner", "owner", "registrar"})
  void every_page_can_be_used_by_anybody_on_any_screen(String who) {
    if (who.isEmpty()) {
      open("/sign-in");
    } else {
      signIn(shop.people().get(who), shop.password());
    }
    SiteMap.pages().stream()
        .flatMap(way -> Stream.concat(named(way), Stream.of(Addresses.plain(way))))
        .distinct()
        .forEach(this::look);
    assertThat(opened).as("pages opened").hasSizeGreaterThan(who.isEmpty() ? 2 : 5);
    assertThat(broken).isEmpty();
  }

  private static Stream<String> named(SiteMap.Way way) {
    return Addresses.naming(way, shop).stream();
  }

  private void look(String address) {
    List<?> asked = (List<?>) browser.executeAsyncScript(ASK, address);
    if ((Long) asked.get(0) < 400 && opened.add((String) asked.get(1))) {
      width(390);
      open(address);
      browser.executeScript(FOLD_OUT);
      tell(address, 390, WIDER);
      tell(address, 390, CUT_OFF);
      tell(address, 390, TITLES);
      saysWhichItIs(address);
      tell(address, 390, MAIN_ACTION);
      if (LOOKED_AT.add(address + " " + title().replace(myName(), ""))) {
        barriers().forEach(b -> broken.add(address + " at 390: " + b));
      }
      // the same words and colours as on the telephone, so that only their room can be wrong
      for (int wider : new int[] {820, 1440}) {
        width(wider);
        tell(address, wider, WIDER);
      }
    }
  }

  /** Two pages that are called the same are not told apart in tabs, in the history, or by ear. */
  private void saysWhichItIs(String address) {
    String page = NAMES.matcher(browser.getCurrentUrl()).replaceAll("");
    String before = tabs.putIfAbsent(browser.getTitle(), page);
    if (before != null && !before.equals(page)) {
      broken.add(address + " is called as " + before + " is: " + browser.getTitle());
    }
  }

  /** As the frame has it; empty for nobody. */
  private String myName() {
    return browser.findElements(By.cssSelector(".frame .who")).stream()
        .map(WebElement::getText)
        .findFirst()
        .orElse("");
  }

  private void tell(String address, int width, String script) {
    for (Object fault : (List<?>) browser.executeScript(script, LEAST_HEIGHT)) {
      broken.add(address + " at " + width + ": " + fault);
    }
  }
}
