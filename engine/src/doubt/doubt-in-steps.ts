import { seededDraws } from '../numerics/random.ts'
import { refuseOne } from '../refusal/found.ts'
import { type Doubtful, sourcesOf, startOf } from './doubtful.ts'
import {
  type AnsweredClasses,
  classEdges,
  classesFor,
  classOf,
  type DrawnClasses,
  firstOrderIndex,
  putDraw,
} from './first-order-index.ts'
import { type Spread, spreadOf } from './spread.ts'

/** What is drawn, and what is worked out from each draw. */
export interface DoubtStudy {
  readonly inputs: readonly Doubtful[]
  /** A name for each input, under which its own error's share is told. */
  readonly names: readonly string[]
  /** How many outputs `run` gives. */
  readonly outputs: number
  /** The outputs at one draw of the inputs; null where it is refused. */
  readonly run: (values: Float64Array) => ArrayLike<number> | null
  readonly draws: number
  readonly seed: number
}

export interface DoubtProgress {
  drawn: number
  draws: number
  refused: number
}

export interface DoubtedOutput {
  spread: Spread
  /** First-order index of each independent error, by the input's or the shared error's name. */
  shares: Record<string, number>
  /** Every answered draw, in order. */
  values: Float64Array
}

export interface DoubtResult {
  refused: number
  outputs: DoubtedOutput[]
}

const mostRefused = 0.01

/** Sums that an output's shares need, kept while it is drawn: nothing has to be sorted afterwards. */
class Tally {
  readonly values: Float64Array
  private readonly classes: AnsweredClasses[]
  private squares = 0
  private about: number | null = null
  private filled = 0

  constructor(draws: number, sources: number, classes: number) {
    this.values = new Float64Array(draws)
    this.classes = Array.from({ length: sources }, () => ({
      y: new Float64Array(classes),
      xy: new Float64Array(classes),
    }))
  }

  take(value: number, inClass: Uint8Array, drawn: Float64Array): void {
    this.about ??= value
    const off = value - this.about
    this.values[this.filled] = value
    this.filled += 1
    this.squares += off * off
    for (let source = 0; source < this.classes.length; source += 1) {
      const into = this.classes[source]
      if (into === undefined) break
      const at = inClass[source] ?? 0
      into.y[at] = (into.y[at] ?? 0) + off
      into.xy[at] = (into.xy[at] ?? 0) + off * (drawn[source] ?? 0)
    }
  }

  read(names: readonly string[], drawn: readonly DrawnClasses[]): DoubtedOutput {
    const values = this.values.subarray(0, this.filled)
    const size = this.about ?? 0
    const shares = this.classes.map((classes, source) => {
      const of = drawn[source]
      return [names[source] ?? '', of ? firstOrderIndex(of, classes, this.squares, size) : 0] as const
    })
    return { spread: spreadOf(values), shares: Object.fromEntries(shares), values }
  }
}

/**
 * Propagates the doubt of inputs through a calculation by draws, in steps: between two steps the work can be shown, left
 * for a while, or stopped by asking for no more.
 *
 * @param study  inputs, calculation, number of draws, seed
 * @param every  draws a step
 * @returns a generator that yields how far it is, and at last the spread and shares of each output
 * @throws Refusal `no-answer` once over 1 % of the draws are refused
 * @source JCGM 101:2008 (GUM supplement 1), 5 and 7: propagation of distributions by draws
 * @example doubtAtOnce({ inputs: [{ value: 5, u: 0 }], names: ['a'], outputs: 1, run: (x) => x, draws: 100, seed: 1 }).outputs[0].spread.median // 5
 */
export function* doubtInSteps(study: DoubtStudy, every = 500): Generator<DoubtProgress, DoubtResult, void> {
  const { inputs, names, outputs, run, draws, seed } = study
  const sources = sourcesOf(inputs, names)
  const classes = classesFor(draws)
  const draw = seededDraws(seed)
  const start = Float64Array.from(inputs, startOf)
  const values = new Float64Array(inputs.length)
  const shapes = [...new Set(sources.map(({ shape }) => shape))]
  const edgesOf = new Map(shapes.map((shape) => [shape, classEdges(shape.quantile, classes)]))
  const edges = sources.map(({ shape }) => edgesOf.get(shape) ?? new Float64Array())
  const inClass = new Uint8Array(sources.length)
  const drawn = new Float64Array(sources.length)
  const into = sources.map(
    (): DrawnClasses => ({
      count: new Float64Array(classes),
      x: new Float64Array(classes),
      xx: new Float64Array(classes),
    }),
  )
  const tallies = Array.from({ length: outputs }, () => new Tally(draws, sources.length, classes))
  let refused = 0
  for (let round = 1; round <= draws; round += 1) {
    values.set(start)
    for (let index = 0; index < sources.length; index += 1) {
      const source = sources[index]
      const edge = edges[index]
      if (source === undefined || edge === undefined) break
      const by = source.shape.draw(draw)
      drawn[index] = by
      inClass[index] = classOf(by, edge)
      for (const add of source.adds) values[add.input] = (values[add.input] ?? 0) + add.by * by
    }
    const answer = run(values)
    if (answer === null) refused += 1
    else {
      for (let index = 0; index < sources.length; index += 1) {
        const classesOf = into[index]
        if (classesOf) putDraw(classesOf, inClass[index] ?? 0, drawn[index] ?? 0)
      }
      for (let output = 0; output < outputs; output += 1) tallies[output]?.take(answer[output] ?? 0, inClass, drawn)
    }
    if (refused > mostRefused * draws) {
      const came = `${refused} of ${round} draws refused`
      const allowed = 'doubts whose draws are answered, but for 1 in 100'
      refuseOne('input', 'no-answer', came, allowed, 'Give smaller doubts, or values further from their limits.')
    }
    if (round % every === 0 && round < draws) yield { drawn: round, draws, refused }
  }
  const told = sources.map(({ name }) => name)
  return { refused, outputs: tallies.map((tally) => tally.read(told, into)) }
}

/**
 * `doubtInSteps` without a pause.
 *
 * @param study  inputs, calculation, number of draws, seed
 * @returns median and 90 % band of each output in its own unit, shares [-] by error, every draw
 * @throws Refusal `no-answer` once over 1 % of the draws are refused
 * @source JCGM 101:2008 (GUM supplement 1), 5 and 7: propagation of distributions by draws
 * @example doubtAtOnce({ inputs: [{ value: 0, low: -1, high: 1 }], names: ['a'], outputs: 1, run: (x) => x, draws: 1000, seed: 1 }).outputs[0].shares.a // 1
 */
export function doubtAtOnce(study: DoubtStudy): DoubtResult {
  const steps = doubtInSteps(study, study.draws)
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value
}
