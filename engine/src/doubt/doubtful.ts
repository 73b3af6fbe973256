/**
 * What makes an input doubtful: an error of its own, and errors it shares with others by name, like one pump's.
 *
 * The input moves to value + own + Σ shared. All inputs that name an error move with the same draw of it, each by its own
 * standard uncertainty: two that share nothing else are fully correlated.
 */
export type Doubtful = (
  | { readonly value: number }
  /** Normal, standard uncertainty u. */
  | { readonly value: number; readonly u: number }
  /** Rectangular: anywhere from low to high alike. */
  | { readonly value: number; readonly low: number; readonly high: number }
) & {
  /** Standard uncertainty by the name of the error, normal; with a minus the input moves the other way. */
  readonly shared?: Readonly<Record<string, number>>
}

/** One independent error: where it adds to which inputs, per standard draw or over its width. */
export interface DoubtSource {
  readonly name: string
  readonly shape: 'normal' | 'rectangular'
  readonly adds: readonly { readonly input: number; readonly by: number }[]
}

/**
 * The independent errors behind doubtful inputs: each input's own under the input's name, then the shared ones.
 *
 * @param inputs  doubtful inputs
 * @param names   a name for each
 * @example sourcesOf([{ value: 1, u: 0.1, shared: { pump: 0.2 } }], ['pressure']).length // 2
 */
export function sourcesOf(inputs: readonly Doubtful[], names: readonly string[]): DoubtSource[] {
  const own = inputs.map((doubtful, input): DoubtSource => {
    const by = 'u' in doubtful ? doubtful.u : 'low' in doubtful ? doubtful.high - doubtful.low : 0
    const shape = 'low' in doubtful ? 'rectangular' : 'normal'
    return { name: names[input] ?? String(input), shape, adds: [{ input, by }] }
  })
  const shared = new Set(inputs.flatMap((doubtful) => Object.keys(doubtful.shared ?? {})))
  const common = [...shared].map((name): DoubtSource => {
    const adds = inputs.flatMap((doubtful, input) => {
      const by = Object.hasOwn(doubtful.shared ?? {}, name) ? (doubtful.shared?.[name] ?? 0) : 0
      return by === 0 ? [] : [{ input, by }]
    })
    return { name, shape: 'normal', adds }
  })
  return [...own.filter(({ adds }) => adds.some(({ by }) => by !== 0)), ...common]
}

/** Where an input stands before any error is drawn: its value, or the lower end of a rectangle. */
export function startOf(doubtful: Doubtful): number {
  return 'low' in doubtful ? doubtful.low : doubtful.value
}
