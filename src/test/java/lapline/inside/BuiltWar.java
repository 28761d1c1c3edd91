package lapline.inside;

import java.io.File;
import org.jboss.shrinkwrap.api.ShrinkWrap;
import org.jboss.shrinkwrap.api.spec.WebArchive;

/** The WAR exactly as it was built, with test classes laid beside it. */
public final class BuiltWar {
  private BuiltWar() {}

  public static WebArchive with(Class<?>... tests) {
    return ShrinkWrap.createFromZipFile(
            WebArchive.class, new File(System.getProperty("lapline.war", "target/lapline.war")))
        .addClasses(tests);
  }
}
