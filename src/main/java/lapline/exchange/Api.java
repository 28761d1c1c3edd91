package lapline.exchange;

import jakarta.ws.rs.ApplicationPath;
import jakarta.ws.rs.core.Application;

/** The public way in for programs, and for the pages' own scripts. */
@ApplicationPath("/api/v1")
public class Api extends Application {}
