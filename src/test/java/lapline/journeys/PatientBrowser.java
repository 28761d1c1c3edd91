package lapline.journeys;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.openqa.selenium.By;
import org.openqa.selenium.NoSuchElementException;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.WrapsElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Locatable;

/**
 * A browser whose elements are found anew where the page was renewed between finding and using
 * them, as a person looks again. An element that is stale was neither read nor pressed, so doing it
 * again does nothing twice.
 */
final class PatientBrowser extends ChromeDriver {
  private static final int LOOKS = 5;

  PatientBrowser(ChromeDriverService service, ChromeOptions options) {
    super(service, options);
  }

  @Override
  public WebElement findElement(By what) {
    return patient(super.findElement(what), () -> again(what));
  }

  @Override
  public List<WebElement> findElements(By what) {
    List<WebElement> found = super.findElements(what);
    return IntStream.range(0, found.size())
        .mapToObj(i -> patient(found.get(i), () -> again(what, i)))
        .toList();
  }

  private WebElement again(By what) {
    return super.findElement(what);
  }

  private WebElement again(By what, int place) {
    List<WebElement> now = super.findElements(what);
    if (place >= now.size()) {
      throw new NoSuchElementException("only " + now.size() + " left of " + what);
    }
    return now.get(place);
  }

  private static WebElement patient(WebElement element, Supplier<WebElement> again) {
    return (WebElement)
        Proxy.newProxyInstance(
            PatientBrowser.class.getClassLoader(),
            new Class<?>[] {WebElement.class, WrapsElement.class, Locatable.class},
            new Found(element, again));
  }

  /**
   * The driver's word for an element that goes while it is looked at differs from the usual one.
   */
  private static boolean isGone(Throwable thrown) {
    return thrown instanceof StaleElementReferenceException
        || (thrown instanceof WebDriverException
            && String.valueOf(thrown.getMessage()).contains("does not belong to the document"));
  }

  private static final class Found implements InvocationHandler {
    private final Supplier<WebElement> again;
    private WebElement element;

    Found(WebElement element, Supplier<WebElement> again) {
      this.element = element;
      this.again = again;
    }

    @Override
    public Object invoke(Object proxy, Method method, Object[] arguments) throws Throwable {
      if (method.getName().equals("getWrappedElement")) {
        return element;
      }
      for (int look = 1; ; look++) {
        try {
          return method.invoke(element, arguments);
        } catch (InvocationTargetException thrown) {
          if (!isGone(thrown.getCause())) {
            throw thrown.getCause();
          }
          if (look == LOOKS) {
            throw new StaleElementReferenceException("gone at each look", thrown.getCause());
          }
          element = again.get();
        }
      }
    }
  }
}
