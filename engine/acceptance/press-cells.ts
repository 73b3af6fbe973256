/** The acceptance table of the press test: what was done to a fork, how it was pressed, and how often the answer must be right. */
import { type AirSpring, type HypothesisName, type PressTest, pressTest } from '@legwork/engine'
import { session, type Truth, testFork } from './press-forks.ts'

/** Per thousand forks. */
export interface Wanted {
  readonly what: 'right' | 'cannot-tell' | 'wrong' | 'as-sheet' | 'friction within'
  readonly least?: number
  readonly most?: number
}

export interface Cell {
  readonly truth: string
  readonly fork: Truth
  readonly right: HypothesisName
  /** The parameter of the right hypothesis. */
  readonly size: number | null
  /** Shares of the fork's pressure, one a press. */
  readonly presses: readonly number[]
  /** What the friction may be off [N]. */
  readonly frictionWithin: number
  readonly wanted: readonly Wanted[]
}

export interface Counts {
  forks: number
  right: number
  'cannot-tell': number
  /** Another fault named, as-sheet where it is not, nothing-fits, or a `together` without the truth. */
  wrong: number
  'as-sheet': number
  'friction within': number
  /** 90 % intervals that hold the truth. */
  frictionCovered: number
  sizeCovered: number
}

const oil = (volume: number): Truth => ({ spring: { ...testFork, chamberOil: volume } })

function bath(volume: number): Truth {
  const { lower } = testFork
  if (!lower) throw new Error('the test fork has lower legs')
  const legs = lower.legs.map((leg) => ({ ...leg, oil: leg.oil + volume }))
  const spring: AirSpring = { ...testFork, lower: { ...lower, legs } }
  return { spring }
}

export const truths = { oil, bath, negative: (share: number): Truth => ({ spring: testFork, negative: share }) }

const once = [1]
const twice = [1, 0.5]
type Row = Pick<Cell, 'truth' | 'fork' | 'right' | 'size'>

function cells(row: Row, one: readonly Wanted[], two: readonly Wanted[]): Cell[] {
  return [
    { ...row, presses: once, frictionWithin: 4, wanted: one },
    { ...row, presses: twice, frictionWithin: 3, wanted: two },
  ]
}

const right = (least: number): Wanted[] => [{ what: 'right', least }]
const open = (least: number, most: number): Wanted[] => [
  { what: 'cannot-tell', least },
  { what: 'wrong', most },
]
const friction = (least: number): Wanted[] => [{ what: 'friction within', least }]

export const table: readonly Cell[] = [
  ...cells({ truth: 'as sheet', fork: { spring: testFork }, right: 'as-sheet', size: null }, right(970), right(980)),
  ...cells(
    { truth: 'negative at 60 %', fork: truths.negative(0.6), right: 'negative-off', size: 0.6 },
    right(990),
    right(990),
  ),
  ...cells(
    { truth: 'friction 60 N', fork: { spring: testFork, friction: 60 }, right: 'as-sheet', size: null },
    friction(960),
    friction(980),
  ),
  ...cells(
    { truth: '18 ml oil in the chamber', fork: oil(18e-6), right: 'volume-less', size: 18e-6 },
    open(825, 20),
    right(980),
  ),
  ...cells(
    { truth: '25 ml bath oil more per leg', fork: bath(25e-6), right: 'bath-over', size: 25e-6 },
    open(950, 20),
    right(980),
  ),
  ...cells(
    { truth: '40 ml bath oil more per leg', fork: bath(40e-6), right: 'bath-over', size: 40e-6 },
    [
      { what: 'as-sheet', most: 0 },
      { what: 'wrong', most: 30 },
    ],
    right(980),
  ),
]

/** Whether an answer is right, open with the truth among what stands together, or wrong. */
export function standing({ verdict, together }: PressTest, truth: HypothesisName): 'right' | 'cannot-tell' | 'wrong' {
  if (verdict === truth) return 'right'
  return verdict === 'cannot-tell' && together?.some((name) => name === truth) ? 'cannot-tell' : 'wrong'
}

const holds = (band: readonly [number, number] | null | undefined, value: number) =>
  band !== null && band !== undefined && value >= band[0] && value <= band[1]

/** Whether a count is met at the same proportion; a share of one fork counts as one. */
export function isMet(counts: Counts, { what, least, most }: Wanted): boolean {
  const enough = least === undefined || counts[what] >= Math.floor((least * counts.forks) / 1000)
  return enough && (most === undefined || counts[what] <= Math.ceil((most * counts.forks) / 1000))
}

/** 90 % intervals that hold the truth less than 84 or more than 96 times in a hundred. */
export function missedBands(cell: Cell, counts: Counts): string[] {
  const bands: ['friction' | 'size', number][] = [['friction', counts.frictionCovered]]
  if (cell.size !== null) bands.push(['size', counts.sizeCovered])
  return bands.flatMap(([name, held]) => (held < 0.84 * counts.forks || held > 0.96 * counts.forks ? [name] : []))
}

/** Presses forks 1 … `forks` of a cell: fork number i is drawn with seed i. */
export function countCell(cell: Cell, forks: number): Counts {
  const counts: Counts = {
    forks,
    right: 0,
    'cannot-tell': 0,
    wrong: 0,
    'as-sheet': 0,
    'friction within': 0,
    frictionCovered: 0,
    sizeCovered: 0,
  }
  for (let seed = 1; seed <= forks; seed += 1) {
    const { question, friction } = session(cell.fork, seed, cell.presses)
    const answer = pressTest(testFork, question)
    counts[standing(answer, cell.right)] += 1
    if (answer.verdict === 'as-sheet') counts['as-sheet'] += 1
    if (Math.abs(answer.friction - friction) <= cell.frictionWithin) counts['friction within'] += 1
    if (holds(answer.frictionBand, friction)) counts.frictionCovered += 1
    const band = answer.hypotheses.find(({ name }) => name === cell.right)?.band
    if (cell.size !== null && holds(band, cell.size)) counts.sizeCovered += 1
  }
  return counts
}
