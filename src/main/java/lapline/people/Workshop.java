package lapline.people;

import java.time.ZoneId;
import java.util.UUID;
import lapline.trade.measure.UnitSystem;

/** A shop or school: the wall around its people's data. */
public record Workshop(UUID id, String name, ZoneId zone, UnitSystem units) {}
