package lapline.trade.colour;

/**
 * One step of a formula for the pairs of a block: a loop without a branch, so short that a
 * processor takes several pairs at a time.
 *
 * <p>Passes are called through a list, not by name, so that each is compiled by itself. Called by
 * name they are all compiled into their caller, where the compiler leaves some as they are.
 */
@FunctionalInterface
interface Pass {
  /** Over the first {@code n} pairs. */
  void over(int n);
}
