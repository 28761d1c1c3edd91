package lapline.server;

import java.nio.file.Path;

/** What was set on the command line when the server was started. */
public record Settings(Path dataFolder, boolean demo, boolean demoStory, String address) {

  static Settings fromSystem() {
    return new Settings(
        Path.of(System.getProperty("lapline.data", "lapline-data")).toAbsolutePath(),
        Boolean.getBoolean("lapline.demo"),
        !"false".equals(System.getProperty("lapline.demo.story")),
        addressSet());
  }

  /** The address people use; for links in the log when nothing else is set. */
  private static String addressSet() {
    int port = 8080 + Integer.getInteger("jboss.socket.binding.port-offset", 0);
    String set = System.getProperty("lapline.address", "");
    return set.isBlank() ? "http://localhost:" + port : set.strip();
  }

  /**
   * The address to print.
   *
   * @param here address under which the page was opened; used where no other was set, since a phone
   *     cannot open this machine's own name for itself
   */
  public String addressOr(String here) {
    return address.startsWith("http://localhost") ? here : address;
  }
}
