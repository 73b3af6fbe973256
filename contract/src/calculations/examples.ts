/** Dimensions for the examples: invented, plausible, of no real fork or shock. */
export const exampleFork = {
  kind: 'air',
  bore: '32 mm',
  shaft: '10 mm',
  stroke: '150 mm',
  positiveVolume: '197 ml',
  negativeVolume: '31 ml',
  equalisingStroke: '2.5 mm',
  spacerVolume: '10 ml',
  spacers: 1,
  lower: { volume: '205 ml', stanchion: '35 mm', rod: '10 mm', legs: [{ oil: '10 ml' }, { oil: '10 ml' }] },
} as const

export const exampleShock = {
  kind: 'air',
  bore: '40 mm',
  shaft: '12.7 mm',
  stroke: '55 mm',
  positiveVolume: '103 ml',
  negativeVolume: '12.4 ml',
  equalisingStroke: '1 mm',
  spacerVolume: '8 ml',
  spacers: 1,
} as const
