/**
 * How far the ideal gas is off real dry air: shares of the pressure.
 *
 * Two kinds: of one state, |1 − Z|, and of what a stroke makes of its filling, |1 − Z(end)/Z(filling)|, which is what a force
 * near the end hangs on. `cold` says what either grows to below freezing.
 *
 * @source Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331; a test works each bound out from its equation
 */
export const idealGasBound = {
  /** To 27 bar, where a fork ends a fast stroke; filled from 5 bar up. From 0 °C to 50 °C. */
  fork: { one: 0.014, stroke: 0.012 },
  /** To 80 bar; a shock ends a fast stroke at 73 bar, filled from 10 bar up. From 0 °C to 50 °C. */
  shock: { one: 0.029, stroke: 0.023 },
  /** The same at −15 °C. */
  cold: { fork: { one: 0.02, stroke: 0.016 }, shock: { one: 0.044, stroke: 0.035 } },
} as const
