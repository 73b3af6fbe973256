/** Questions drawn by chance that could be asked in earnest: every way of asking, springs with every part they can have. */
import fc from 'fast-check'

type Input = Record<string, unknown>

/** Ways of asking that the example of a calculation does not take. */
const otherWays: Readonly<Record<string, readonly Input[]>> = {
  'fork-load': [{ wheelLoad: '41.5 kg', unsprungMass: '3.2 kg', headAngle: '65°' }],
  'shock-load': [
    { wheelLoad: '62 kg', unsprungMass: '5 kg', leverage: 2.6 },
    {
      rearSprungMass: 55,
      leverage: [
        { stroke: 0, leverage: 2.8 },
        { stroke: '55 mm', leverage: 2.4 },
      ],
      stroke: '20 mm',
    },
  ],
  'air-pressure': [{ altitude: 3000 }],
  'pump-reading': [{ volume: '187 ml', hoseVolume: '5 ml', reading: '5.5 bar' }],
  'hose-ratio': [{ readings: [1.18e6, 1.12e6, 1.06e6], hoseVolume: '5 ml', gaugeResolution: '1 psi' }],
  'leak-down': [
    {
      volume: 187e-6,
      start: { reading: 468_843, temperature: 293.15 },
      end: { reading: 379_212, temperature: 297, how: 'left' },
      duration: 86_400,
      ambient: '950 hPa',
      gaugeResolution: 3000,
    },
  ],
  torque: [{ wanted: 5.5, wrenchLength: 0.245, adapterLength: 0.03, adapterAngle: '90°' }],
  bolt: [{ torque: 6, diameter: 0.008, pitch: 0.00125, nutFactor: [0.16, 0.2] }],
  viscosity: [{ viscosity40: '15 mm²/s', viscosityIndex: 120, temperature: '5 °C' }],
  blend: [{ a: 5e-6, b: 46e-6, target: 15e-6, method: 'Refutas' }],
  saybolt: [{ seconds: 150, temperature: 310.928 }],
  'oil-height': [{ bore: 0.029, volume: '180 ml', legLength: 0.42 }],
  'side-friction': [{ sideLoad: 160, a: 0.23, b: 0.115, mu: [0.05, 0.08] }],
  'ambient-shift': [
    {
      spring: { kind: 'air', stroke: 0.15 },
      pressure: 6e5,
      load: 350,
      from: { temperature: 293, ambient: 101_325 },
      to: { temperature: 276, altitude: 2000 },
    },
  ],
  'travel-used': [
    {
      spring: { kind: 'air', stroke: 0.15 },
      pressure: 6e5,
      load: 350,
      deepest: 0.13,
      to: { pressure: 5.5e5, ambient: 9e4 },
    },
  ],
  'coil-rate': [
    {
      load: 300,
      sag: 0.03,
      preload: 0.005,
      lower: { volume: '205 ml', stanchion: '35 mm', rod: '10 mm', legs: [{ oil: '10 ml' }] },
    },
  ],
}

/** The ways a calculation can be asked, its own example first; `doubt` with few draws, for each is a calculation itself. */
export function waysToAsk(name: string, example: Input): readonly Input[] {
  const first = name === 'doubt' ? { ...example, draws: 200 } : example
  return [first, ...(otherWays[name] ?? [])]
}

const share = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const perhaps = <T>(part: fc.Arbitrary<T>) => fc.option(part, { nil: undefined, freq: 2 })
const circle = (diameter: number) => (Math.PI / 4) * diameter ** 2

interface Size {
  stroke: number
  bore: number
  swept: number
}

/** What both kinds of spring can have, in sound proportion to stroke and bore. */
function around({ stroke, bore }: Size) {
  const stanchion = bore + 0.003
  const volume = circle(stanchion) * stroke * 1.6
  const length = (min: number, max: number) => share(min * stroke, max * stroke)
  return {
    stroke: fc.constant(stroke),
    lower: perhaps(
      fc.record(
        {
          volume: fc.constant(volume),
          stanchion: fc.constant(stanchion),
          rod: share(0, 0.012),
          closedAt: share(80_000, 110_000),
          closedStroke: length(0, 0.1),
          legs: fc.array(
            fc.record(
              {
                oil: share(0, 2e-5),
                volume: share(0.95 * volume, volume),
                rod: share(0, 0.012),
                stanchion: fc.constant(stanchion),
              },
              { requiredKeys: ['oil'] },
            ),
            { minLength: 1, maxLength: 2 },
          ),
        },
        { requiredKeys: ['volume', 'stanchion', 'rod', 'legs'] },
      ),
    ),
    topOut: perhaps(fc.record({ rate: share(2000, 20_000), length: length(0.01, 0.06) })),
    bumper: perhaps(fc.record({ rate: share(5000, 50_000), length: length(0.05, 0.2), exponent: share(1, 3) })),
    damperGas: perhaps(
      fc.record({
        pressure: share(5e5, 2e6),
        volume: share(3, 5).map((times) => circle(0.01) * stroke * times),
        rod: fc.constant(0.01),
      }),
    ),
  }
}

function air(size: Size): fc.Arbitrary<Input> {
  const { stroke, bore, swept } = size
  const negative = fc.oneof(
    fc.constant({ kind: 'port' }),
    fc.record({ kind: fc.constant('valve'), pressure: share(1e5, 9e5) }),
    fc.record({
      kind: fc.constant('coil'),
      rate: share(1000, 6000),
      length: share(0.05, 0.2).map((of) => of * stroke),
    }),
    fc.constant({ kind: 'none' }),
  )
  return fc.record({
    kind: fc.constant('air'),
    bore: fc.constant(bore),
    shaft: share(0.2, 0.5).map((of) => of * bore),
    positiveShaft: perhaps(share(0, 0.3).map((of) => of * bore)),
    positiveVolume: share(1.5, 2).map((of) => of * swept),
    negativeVolume: share(0.12, 0.4).map((of) => of * swept),
    equalisingStroke: perhaps(share(0, 0.04).map((of) => of * stroke)),
    spacerVolume: fc.constant(0.04 * swept),
    spacers: perhaps(fc.nat(3)),
    chamberOil: perhaps(share(0, 0.03).map((of) => of * swept)),
    negative: perhaps(negative),
    second: perhaps(fc.record({ volume: share(0.2, 0.5).map((of) => of * swept), pressure: share(1.3e6, 2.5e6) })),
    maxPressure: perhaps(share(1.2e6, 2.4e6)),
    ...around(size),
  })
}

function coil(size: Size): fc.Arbitrary<Input> {
  return fc.record({
    kind: fc.constant('coil'),
    rate: share(0.7, 2).map((of) => (of * 1300) / size.stroke),
    preload: perhaps(share(0, 0.05).map((of) => of * size.stroke)),
    ...around(size),
  })
}

/** A spring as long as that of the example or a little longer, so that its strokes lie on it. */
export function drawnSpring(stroke: number): fc.Arbitrary<Input> {
  return fc
    .record({ longer: share(1, 1.2), bore: share(0.028, 0.045) })
    .map(({ longer, bore }) => ({ stroke: stroke * longer, bore, swept: circle(bore) * stroke * longer }))
    .chain((size) => fc.oneof({ weight: 5, arbitrary: air(size) }, { weight: 1, arbitrary: coil(size) }))
}

function isInput(value: unknown): value is Input {
  return value !== null && typeof value === 'object' && !Array.isArray(value)
}

function strokeOf(spring: Input): number {
  const { stroke } = spring
  return typeof stroke === 'number' ? stroke : Number.parseFloat(String(stroke)) / 1000
}

/** The question with its springs drawn anew; one in three as it was. */
export function withDrawnSprings(input: Input): fc.Arbitrary<Input> {
  const parts = Object.entries(input).map(([key, value]): [string, fc.Arbitrary<unknown>] => {
    if (!isInput(value)) return [key, fc.constant(value)]
    if (key !== 'spring') return [key, withDrawnSprings(value)]
    const own = 'bore' in value ? [{ weight: 1, arbitrary: fc.constant(value) }] : []
    return [key, fc.oneof(...own, { weight: 2, arbitrary: drawnSpring(strokeOf(value)) })]
  })
  return fc.record(Object.fromEntries(parts))
}
