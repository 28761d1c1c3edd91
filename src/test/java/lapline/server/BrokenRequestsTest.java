package lapline.server;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What broke can be found in the log by the number on the page, and the page leads back. */
class BrokenRequestsTest {
  private final Map<Object, Object> attributes = new HashMap<>();
  private final List<Object> sent = new ArrayList<>();
  private final Heard heard = new Heard();

  @Test
  void the_number_on_the_page_stands_in_the_log_beside_what_broke() throws Exception {
    Logger log = Logger.getLogger("lapline.pages");
    log.addHandler(heard);
    Error broken = new OutOfMemoryError("a large picture");
    new BrokenRequests()
        .doFilter(
            request(),
            response(),
            (request, response) -> {
              throw broken;
            });
    log.removeHandler(heard);
    String number = (String) attributes.get("number");
    assertThat(number).hasSize(8);
    assertThat(heard.records.get(0).getMessage()).contains(number);
    assertThat(heard.records.get(0).getThrown()).isSameAs(broken);
    assertThat(sent).containsExactly(500);
  }

  @ParameterizedTest
  @CsvSource({
    "http://shop:8080/learn/entry?attempt=7, /learn/entry?attempt=7",
    "http://shop:8080/, /",
    "http://elsewhere/learn/entry, ''",
    "http://shop:8080//elsewhere/learn, ''",
    "http://shop:8080/a b, ''",
    ", ''"
  })
  void the_page_leads_back_to_where_one_was_on_this_server_only(String referer, String back) {
    assertThat(TroublePage.back(referer, "shop:8080")).isEqualTo(back);
  }

  private HttpServletRequest request() {
    return standIn(
        HttpServletRequest.class, (name, args) -> attributes.put(args[0].toString(), args[1]));
  }

  private HttpServletResponse response() {
    return standIn(
        HttpServletResponse.class,
        (name, args) -> name.equals("isCommitted") ? (Object) false : sent.add(args[0]));
  }

  private interface Call {
    Object answer(String name, Object[] args);
  }

  private static <T> T standIn(Class<T> type, Call call) {
    return type.cast(
        Proxy.newProxyInstance(
            type.getClassLoader(),
            new Class<?>[] {type},
            (proxy, method, args) -> {
              Object answer = call.answer(method.getName(), args);
              return method.getReturnType() == void.class ? null : answer;
            }));
  }

  private static final class Heard extends Handler {
    private final List<LogRecord> records = new ArrayList<>();

    @Override
    public void publish(LogRecord entry) {
      records.add(entry);
    }

    @Override
    public void flush() {}

    @Override
    public void close() {}
  }
}
