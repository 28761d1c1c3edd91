package lapline.demo;

/** What an invented apprentice does wrong while they are new to it. */
enum Fault {
  WIDE_SPACING,
  ARCING,
  DRIFTING,
  SHORT_FLASH,
  THIN_MIX
}
