package deadband.trade;

/**
 * What a meter bills, netted over the phases or phase by phase.
 *
 * <p>Sign: import positive, export negative, phase by phase; unit that of the arguments (W, kW or
 * Wh in a period). Whether a billing meter nets across phases differs by country and meter: ask.
 */
public final class Metering {
  private Metering() {}

  /** Import of a meter that nets: max(0, sum of the phases). */
  public static double nettedImport(double... phases) {
    return Math.max(0, sum(phases));
  }

  /** Export of a meter that nets: max(0, −sum of the phases). */
  public static double nettedExport(double... phases) {
    return Math.max(0, -sum(phases));
  }

  /** Import of a meter that counts each phase: the sum of those that import. */
  public static double perPhaseImport(double... phases) {
    double imported = 0;
    for (double phase : phases) {
      imported += Math.max(0, phase);
    }
    return imported;
  }

  /** Export of a meter that counts each phase: the sum of those that export. */
  public static double perPhaseExport(double... phases) {
    double exported = 0;
    for (double phase : phases) {
      exported += Math.max(0, -phase);
    }
    return exported;
  }

  private static double sum(double[] phases) {
    double sum = 0;
    for (double phase : phases) {
      sum += phase;
    }
    return sum;
  }

  /** What one phase carries of a balanced three-phase load [kW]: P/3. */
  public static double onePhaseOf_kW(double load_kW) {
    return load_kW / 3;
  }

  /**
   * Part of a balanced three-phase load that a surplus on one phase covers where the meter does not
   * net: min(S, P/3).
   *
   * @param load_kW balanced three-phase load P [kW], 0 or more
   * @param surplus_kW surplus S on one phase [kW]
   * @return [kW]; the rest of the load is imported while the rest of the surplus is exported
   */
  public static double balancedLoadCovered_kW(double load_kW, double surplus_kW) {
    double onePhase_kW = onePhaseOf_kW(Require.notNegative("load_kW", load_kW));
    return Math.min(Math.max(0, surplus_kW), onePhase_kW);
  }
}
