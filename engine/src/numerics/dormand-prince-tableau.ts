/**
 * Coefficients of the pair: J. R. Dormand, P. J. Prince (1980), table 2; values between steps after Hairer, Nørsett,
 * Wanner, Solving Ordinary Differential Equations I, II.6. A test holds them to their order conditions.
 */

/** Where in the step each stage stands. */
export const nodes = [0, 1 / 5, 3 / 10, 4 / 5, 8 / 9, 1, 1] as const

/** Stages 2 to 6: how much of each earlier slope. Stage 7 is the answer itself. */
export const rows = [
  [1 / 5],
  [3 / 40, 9 / 40],
  [44 / 45, -56 / 15, 32 / 9],
  [19_372 / 6561, -25_360 / 2187, 64_448 / 6561, -212 / 729],
  [9017 / 3168, -355 / 33, 46_732 / 5247, 49 / 176, -5103 / 18_656],
] as const

export const weights = {
  /** Order 5. */
  answer: [35 / 384, 0, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84, 0],
  /** Order 5 less order 4. */
  error: [71 / 57_600, 0, -71 / 16_695, 71 / 1920, -17_253 / 339_200, 22 / 525, -1 / 40],
  dense: [
    -12_715_105_075 / 11_282_082_432,
    0,
    87_487_479_700 / 32_700_410_799,
    -10_690_763_975 / 1_880_347_072,
    701_980_252_875 / 199_316_789_632,
    -1_453_857_185 / 822_651_844,
    69_997_945 / 29_380_423,
  ],
} as const
