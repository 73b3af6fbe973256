/** Questions drawn by chance that could be asked in earnest: every way of asking, springs with every part they can have. */
import type { Draws } from '@legwork/engine'

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
function waysToAsk(name: string, example: Input): readonly Input[] {
  const first = name === 'doubt' ? { ...example, draws: 200 } : example
  return [first, ...(otherWays[name] ?? [])]
}

const circle = (diameter: number) => (Math.PI / 4) * diameter ** 2

/** A spring by chance: numbers between two ends, parts that are there two times in three. */
class SpringDraw {
  private readonly draws: Draws
  private readonly stroke: number
  private readonly bore: number
  private readonly swept: number

  constructor(draws: Draws, stroke: number) {
    this.draws = draws
    this.stroke = stroke
    this.bore = this.between(0.028, 0.045)
    this.swept = circle(this.bore) * stroke
  }

  private between(low: number, high: number): number {
    return low + (high - low) * this.draws()
  }

  private perhaps(name: string, make: () => unknown): Input {
    return this.draws() < 2 / 3 ? { [name]: make() } : {}
  }

  /** What both kinds can have, in sound proportion to stroke and bore. */
  private around(): Input {
    const { stroke } = this
    const stanchion = this.bore + 0.003
    const volume = circle(stanchion) * stroke * 1.6
    const leg = () => ({
      oil: this.between(0, 2e-5),
      ...this.perhaps('volume', () => this.between(0.95 * volume, volume)),
      ...this.perhaps('rod', () => this.between(0, 0.012)),
      ...this.perhaps('stanchion', () => stanchion),
    })
    return {
      stroke,
      ...this.perhaps('lower', () => ({
        volume,
        stanchion,
        rod: this.between(0, 0.012),
        ...this.perhaps('closedAt', () => this.between(80_000, 110_000)),
        ...this.perhaps('closedStroke', () => this.between(0, 0.1 * stroke)),
        legs: this.draws() < 0.5 ? [leg()] : [leg(), leg()],
      })),
      ...this.perhaps('topOut', () => ({
        rate: this.between(2000, 20_000),
        length: this.between(0.01, 0.06) * stroke,
      })),
      ...this.perhaps('bumper', () => ({
        rate: this.between(5000, 50_000),
        length: this.between(0.05, 0.2) * stroke,
        exponent: this.between(1, 3),
      })),
      ...this.perhaps('damperGas', () => ({
        pressure: this.between(5e5, 2e6),
        volume: circle(0.01) * stroke * this.between(3, 5),
        rod: 0.01,
      })),
    }
  }

  private negative(): Input {
    const drawn = this.draws()
    if (drawn < 0.25) return { kind: 'port' }
    if (drawn < 0.5) return { kind: 'valve', pressure: this.between(1e5, 9e5) }
    if (drawn < 0.75)
      return { kind: 'coil', rate: this.between(1000, 6000), length: this.between(0.05, 0.2) * this.stroke }
    return { kind: 'none' }
  }

  spring(): Input {
    const { stroke, bore, swept } = this
    if (this.draws() < 1 / 6) {
      const rate = (this.between(0.7, 2) * 1300) / stroke
      return { kind: 'coil', rate, ...this.perhaps('preload', () => this.between(0, 0.05) * stroke), ...this.around() }
    }
    return {
      kind: 'air',
      bore,
      shaft: this.between(0.2, 0.5) * bore,
      positiveVolume: this.between(1.5, 2) * swept,
      negativeVolume: this.between(0.12, 0.4) * swept,
      spacerVolume: 0.04 * swept,
      ...this.perhaps('positiveShaft', () => this.between(0, 0.3) * bore),
      ...this.perhaps('equalisingStroke', () => this.between(0, 0.04) * stroke),
      ...this.perhaps('spacers', () => Math.floor(this.between(0, 4))),
      ...this.perhaps('chamberOil', () => this.between(0, 0.03) * swept),
      ...this.perhaps('negative', () => this.negative()),
      ...this.perhaps('second', () => ({
        volume: this.between(0.2, 0.5) * swept,
        pressure: this.between(1.3e6, 2.5e6),
      })),
      ...this.perhaps('maxPressure', () => this.between(1.2e6, 2.4e6)),
      ...this.around(),
    }
  }
}

function isInput(value: unknown): value is Input {
  return value !== null && typeof value === 'object' && !Array.isArray(value)
}

function strokeOf(spring: Input): number {
  const { stroke } = spring
  return typeof stroke === 'number' ? stroke : Number.parseFloat(String(stroke)) / 1000
}

/** Springs drawn anew, as long as the one that stood there or a little longer, so that its strokes lie on them. */
function withDrawnSprings(input: Input, draws: Draws): Input {
  return Object.fromEntries(
    Object.entries(input).map(([key, value]) => {
      if (!isInput(value)) return [key, value]
      if (key !== 'spring') return [key, withDrawnSprings(value, draws)]
      const isWhole = 'bore' in value || 'rate' in value
      if (isWhole && draws() < 1 / 3) return [key, value]
      return [key, new SpringDraw(draws, strokeOf(value) * (1 + 0.2 * draws())).spring()]
    }),
  )
}

/** A question that could be asked in earnest: one of its ways, its springs drawn anew. */
export function drawnQuestion(name: string, example: Input, draws: Draws): Input {
  const ways = waysToAsk(name, example)
  return withDrawnSprings(ways[Math.floor(draws() * ways.length)] ?? example, draws)
}
