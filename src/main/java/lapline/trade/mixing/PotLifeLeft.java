package lapline.trade.mixing;

import java.util.List;
import lapline.trade.climate.PotLife;
import lapline.trade.climate.Spell;

/**
 * What is left of a cup's pot life after it stood at one temperature or several.
 *
 * <p>By the rule of thumb that ten degrees more halve it, each spell using up its share of the pot
 * life at its temperature; so it is a guess to plan by, for a small cup. A mix that thickens or
 * strings is over whatever this says, and is not thinned back to life: the product's sheet decides.
 *
 * @param shareUsed of the pot life, 0 or more; above 1 it is over
 * @param seconds left at the last temperature; negative where it has been over for so long
 */
public record PotLifeLeft(double shareUsed, double seconds) {

  /**
   * @param life by the product's sheet, in seconds
   * @param sinceMixed spells since hardener met paint, at least one, the last still going on;
   *     temperatures of the mix, °C, −20 to 60
   */
  public static PotLifeLeft of(PotLife life, List<Spell> sinceMixed) {
    double used = Spell.shareUsed(sinceMixed, life::halvedPerTenDegrees);
    double now = sinceMixed.get(sinceMixed.size() - 1).temperature();
    return new PotLifeLeft(used, (1 - used) * life.halvedPerTenDegrees(now));
  }

  /** Whether the pot life is over by this rule. */
  public boolean over() {
    return shareUsed >= 1;
  }
}
