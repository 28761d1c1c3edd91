package lapline.journeys;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import jakarta.servlet.annotation.WebServlet;
import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.annotation.Annotation;
import java.lang.reflect.Method;
import java.lang.reflect.Parameter;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Every way into the application, found from its own files: pages, resources of the interface and
 * servlets, each with the parameters it reads. Nothing is listed here, so nothing can be forgotten.
 */
final class SiteMap {
  private static final java.nio.file.Path PAGES = java.nio.file.Path.of("src/main/webapp");
  private static final java.nio.file.Path CODE = java.nio.file.Path.of("src/main/java");
  private static final Pattern INCLUDED = Pattern.compile("(?:include src|template)=\"(/[^\"]+)\"");
  private static final Pattern BEAN = Pattern.compile("\\b([a-z]\\w*Page)\\b");
  private static final Pattern READ =
      Pattern.compile("viewParam name=\"(\\w+)\"|\\bparam\\.(\\w+)|getParameter\\(\"(\\w+)\"");
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("lapline");

  private SiteMap() {}

  /**
   * One way in.
   *
   * @param path may have places to fill in, such as {@code {id}}
   * @param parameters that may stand behind the path
   */
  record Way(String method, String path, Set<String> parameters) {
    @Override
    public String toString() {
      return method + " " + path;
    }
  }

  static List<Way> pages() {
    try (Stream<java.nio.file.Path> all = Files.walk(PAGES)) {
      return all.filter(p -> p.toString().endsWith(".xhtml"))
          .map(p -> PAGES.relativize(p).toString())
          .filter(p -> !p.startsWith("WEB-INF/") && !p.startsWith("resources/"))
          .sorted()
          .map(p -> new Way("GET", "/" + p.replace(".xhtml", ""), parameters(p)))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What the page, its parts and its beans read from the address. */
  private static Set<String> parameters(String page) {
    Set<String> names = new TreeSet<>();
    Set<String> beans = new TreeSet<>();
    for (String text : texts("/" + page, new TreeSet<>())) {
      names(text, names);
      Matcher bean = BEAN.matcher(text);
      while (bean.find()) {
        beans.add(bean.group(1).substring(0, 1).toUpperCase() + bean.group(1).substring(1));
      }
    }
    CLASSES.stream()
        .filter(c -> beans.contains(c.getSimpleName()))
        .forEach(c -> names(text(CODE.resolve(c.getName().replace('.', '/') + ".java")), names));
    return names;
  }

  private static List<String> texts(String page, Set<String> seen) {
    List<String> all = new ArrayList<>();
    if (seen.add(page)) {
      String text = text(PAGES.resolve(page.substring(1)));
      all.add(text);
      Matcher included = INCLUDED.matcher(text);
      while (included.find()) {
        all.addAll(texts(included.group(1), seen));
      }
    }
    return all;
  }

  private static void names(String text, Set<String> into) {
    Matcher read = READ.matcher(text);
    while (read.find()) {
      for (int group = 1; group <= read.groupCount(); group++) {
        if (read.group(group) != null) {
          into.add(read.group(group));
        }
      }
    }
  }

  private static String text(java.nio.file.Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Methods of the interface for programs. */
  static List<Way> resources() {
    List<Way> ways = new ArrayList<>();
    for (JavaClass c : CLASSES) {
      if (c.isAnnotatedWith(Path.class)) {
        for (Method m : c.reflect().getDeclaredMethods()) {
          Arrays.stream(m.getAnnotations())
              .map(a -> a.annotationType().getAnnotation(HttpMethod.class))
              .filter(h -> h != null)
              .forEach(h -> ways.add(new Way(h.value(), path(c, m), queries(m))));
        }
      }
    }
    return ways;
  }

  private static String path(JavaClass c, Method m) {
    Path below = m.getAnnotation(Path.class);
    String path = "/" + c.getAnnotationOfType(Path.class).value() + "/";
    return ("/api/v1" + path + (below == null ? "" : below.value()))
        .replaceAll("/+", "/")
        .replaceAll("/$", "");
  }

  private static Set<String> queries(Method m) {
    Set<String> names = new TreeSet<>();
    for (Parameter p : m.getParameters()) {
      for (Annotation a : p.getAnnotations()) {
        if (a instanceof QueryParam query) {
          names.add(query.value());
        }
      }
    }
    return names;
  }

  /** Patterns of the servlets that are not the pages' own. */
  static List<String> servlets() {
    return CLASSES.stream()
        .filter(c -> c.isAnnotatedWith(WebServlet.class))
        .flatMap(c -> Arrays.stream(c.getAnnotationOfType(WebServlet.class).value()))
        .sorted()
        .toList();
  }

  /** Patterns of the servlets that web.xml names. */
  static List<String> servletsInDescriptor() {
    Matcher pattern =
        Pattern.compile("<servlet-mapping>.*?<url-pattern>([^<]+)<", Pattern.DOTALL)
            .matcher(text(PAGES.resolve("WEB-INF/web.xml")));
    return pattern.results().map(r -> r.group(1)).toList();
  }
}
