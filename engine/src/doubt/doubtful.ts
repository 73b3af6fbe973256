import { arcsine, curvedTrapezoid, type ErrorShape, normal, rectangular, student, triangular } from './error-shapes.ts'

/**
 * What makes an input doubtful: an error of its own, and errors it shares with others by name, like one pump's.
 *
 * The input moves to value + own + Σ shared. All inputs that name an error move with the same draw of it, each by its own
 * standard uncertainty: two that share nothing else are fully correlated.
 */
export type Doubtful = (
  | { readonly value: number }
  /** Normal, standard uncertainty u; with its degrees of freedom, whole, 3 … 10,000: Student's t with u as its scale. */
  | { readonly value: number; readonly u: number; readonly freedom?: number }
  /**
   * From low to high, all alike, unless `shape` says otherwise: likeliest in the middle, or at the ends as a swing is. With
   * `ends` both are only known to ± so much, half the way between them at most.
   */
  | {
      readonly value: number
      readonly low: number
      readonly high: number
      readonly shape?: 'rectangular' | 'triangular' | 'arcsine'
      readonly ends?: number
    }
) & {
  /** Standard uncertainty by the name of the error, normal; with a minus the input moves the other way. */
  readonly shared?: Readonly<Record<string, number>>
}

/** One independent error: where it adds to which inputs, for one unit of its shape. */
export interface DoubtSource {
  readonly name: string
  readonly shape: ErrorShape
  readonly adds: readonly { readonly input: number; readonly by: number }[]
}

/** Own error of an input: its spread, and what one unit of that is. */
function ownError(doubtful: Doubtful): { shape: ErrorShape; by: number } {
  if ('u' in doubtful) {
    return { shape: doubtful.freedom === undefined ? normal : student(doubtful.freedom), by: doubtful.u }
  }
  if (!('low' in doubtful)) return { shape: normal, by: 0 }
  const { low, high, shape = 'rectangular', ends = 0 } = doubtful
  const half = (high - low) / 2
  if (ends > 0) return { shape: curvedTrapezoid(ends / half), by: half }
  if (shape === 'rectangular') return { shape: rectangular, by: high - low }
  return { shape: shape === 'triangular' ? triangular : arcsine, by: half }
}

/**
 * The independent errors behind doubtful inputs: each input's own under the input's name, then the shared ones.
 *
 * @param inputs  doubtful inputs
 * @param names   a name for each
 * @returns those that move anything at all
 * @source JCGM 101:2008 (GUM supplement 1), 6.4: distributions by what is known; common errors as JCGM 100:2008, F.1.2.3
 * @example sourcesOf([{ value: 1, u: 0.1, shared: { pump: 0.2 } }], ['pressure']).length // 2
 */
export function sourcesOf(inputs: readonly Doubtful[], names: readonly string[]): DoubtSource[] {
  const own = inputs.map((doubtful, input): DoubtSource => {
    const { shape, by } = ownError(doubtful)
    return { name: names[input] ?? String(input), shape, adds: [{ input, by }] }
  })
  const shared = new Set(inputs.flatMap((doubtful) => Object.keys(doubtful.shared ?? {})))
  const common = [...shared].map((name): DoubtSource => {
    const adds = inputs.flatMap((doubtful, input) => {
      const by = Object.hasOwn(doubtful.shared ?? {}, name) ? (doubtful.shared?.[name] ?? 0) : 0
      return by === 0 ? [] : [{ input, by }]
    })
    return { name, shape: normal, adds }
  })
  return [...own.filter(({ adds }) => adds.some(({ by }) => by !== 0)), ...common]
}

/**
 * Where an input stands before any error is drawn: its value, the lower end of a rectangle, the middle of what has two flanks.
 *
 * @example startOf({ value: 5, low: 4, high: 7, shape: 'arcsine' }) // 5.5
 */
export function startOf(doubtful: Doubtful): number {
  if (!('low' in doubtful)) return doubtful.value
  const { low, high, shape = 'rectangular', ends = 0 } = doubtful
  return shape === 'rectangular' && ends === 0 ? low : (low + high) / 2
}
