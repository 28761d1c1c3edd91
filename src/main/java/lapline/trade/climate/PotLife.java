package lapline.trade.climate;

import lapline.trade.measure.Valid;

/**
 * How long a mixed two-pack can be sprayed, carried from the temperature of its data sheet to
 * another; a guide for small cups only, since a large batch heats itself and is over sooner.
 *
 * <p>Both ways are rules of thumb for how a reaction quickens with warmth, not the product's data;
 * the sheet of the product goes before them. From a sheet's 20 °C they agree within 4 % from 10 to
 * 30 °C at 50 kJ/mol. Source: the rule that ten degrees halve it is common in data sheets and
 * handbooks; the Arrhenius equation with the CODATA 2018 gas constant.
 *
 * @param atReference pot life by the data sheet, any unit of time, more than 0
 * @param reference temperature it is given for, °C, −20 to 60
 */
public record PotLife(double atReference, double reference) {
  /** Molar gas constant, J/(mol K). */
  private static final double GAS = 8.314462618;

  private static final double KELVIN = 273.15;

  public PotLife {
    Valid.positive("atReference", atReference);
    workable("reference", reference);
  }

  private static double workable(String argument, double temperature) {
    return Valid.between(argument, temperature, -20, 60);
  }

  /**
   * By the rule of thumb that ten degrees more halve it, in the unit of the sheet's.
   *
   * @param temperature °C, −20 to 60
   */
  public double halvedPerTenDegrees(double temperature) {
    return atReference * Math.pow(2, (reference - workable("temperature", temperature)) / 10);
  }

  /**
   * By Arrhenius, in the unit of the sheet's.
   *
   * @param temperature °C, −20 to 60
   * @param activationEnergy of the cure, J/mol, more than 0; about 50 000
   */
  public double byActivation(double temperature, double activationEnergy) {
    Valid.positive("activationEnergy", activationEnergy);
    workable("temperature", temperature);
    double slower = 1 / (temperature + KELVIN) - 1 / (reference + KELVIN);
    return atReference * Math.exp(activationEnergy / GAS * slower);
  }

  /**
   * Activation energy at which a cure is twice as fast at one temperature as at another, J/mol.
   *
   * @param cold °C, −20 to 60, below {@code warm}
   * @param warm °C, −20 to 60
   */
  public static double activationThatDoubles(double cold, double warm) {
    workable("cold", cold);
    Valid.positive("warm − cold", workable("warm", warm) - cold);
    return GAS * Math.log(2) / (1 / (cold + KELVIN) - 1 / (warm + KELVIN));
  }
}
