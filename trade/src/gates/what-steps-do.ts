/**
 * What a hand does in each step, by name, written down once more from the services' descriptions: the yardstick goes by
 * this and not by the procedures' own data, so that an act forgotten there is found. The last lines are the steps of small
 * procedures in tests.
 */
const steps = (text: string): ReadonlySet<string> => new Set(text.trim().split(/\s+/))

export const whatStepsDo = {
  letsAirOut: steps('air-out'),
  /** In the line of a cap, or a circlip that may jump. */
  opensOrSprings: steps('cap-off circlip-out circlip-in'),
  turnsAdjuster: steps('lever-open preload-off knob-off'),
  loosens: steps('foot-off cap-off circlip-out'),
  taps: steps('foot-off'),
  drains: steps('foot-off'),
  usesOil: steps('foot-off oil-in'),
  pullsLowers: steps('lowers-off'),
  cleans: steps('clean'),
  fitsSeals: steps('seals-in'),
  fillsOil: steps('oil-in'),
  seats: steps('foot-torque'),
  torques: steps('foot-torque cap-torque lower-clamp-torque upper-clamp-torque clamps-torque feet-torqued'),
  cycles: steps('air-out travel-air-out travel-spring-out'),
  provesTravel: steps('travel-air-out travel-spring-out'),
  fillsAir: steps('fill-quarter fill-half fill-target'),
  addsPreload: steps('preload-on'),
  stripsDamper: steps('damper-off'),
  opensGas: steps('reservoir-open'),
  cyclesGasDamper: steps('damper-cycled'),
} as const satisfies Record<string, ReadonlySet<string>>

/** How far the filling has come with a step. */
export const filledWith: Readonly<Record<string, 1 | 2 | 3>> = { 'fill-quarter': 1, 'fill-half': 2, 'fill-target': 3 }
