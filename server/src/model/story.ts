/** Chance stories of one job: two stations, one of them without the network for a while, careful hands and careless ones. */
import type { ChassisPart, GateId, PutBackItem, SnapshotItem } from '@legwork/trade'

export type Act =
  /** What the job's page offers next, done well. */
  | { is: 'next' }
  /** Any step of the plan, out of turn; entered so many minutes late. */
  | { is: 'tick'; which: number; careless: boolean; late: number | null }
  /** How it came in, out of turn: read, a pressure perhaps without its pump, or said that it is not known. */
  | { is: 'keep'; item: SnapshotItem; how: 'read' | 'no-pump' | 'not-known'; late: number | null }
  | { is: 'strike'; which: number }
  | { is: 'rule'; ruling: 'stands' | 'struck' }
  | { is: 'take-over' }
  | { is: 'wait'; minutes: number }
  | { is: 'waive'; gate: GateId }
  | { is: 'length'; good: boolean }
  | { is: 'leak'; end: boolean }
  | { is: 'setting'; other: boolean }
  | { is: 'pressure'; over: boolean }
  | { is: 'back'; item: PutBackItem }
  | { is: 'look'; part: ChassisPart; sound: boolean }
  | { is: 'plan' }
  | { is: 'leave' }
  | { is: 'stop' }
  | { is: 'lift' }
  /** The page is loaded anew: its monotonic clock begins again. */
  | { is: 'reload' }
  /** Somebody sets the time of day of this station [min off]. */
  | { is: 'set-clock'; off: number }

/** A job begun so far, before the story; null from the opening on. */
const beginnings = [null, 'plan', 'foot-off', 'lowers-on', 'foot-torque', 'filling', 'filled'] as const
export type Beginning = (typeof beginnings)[number]

export interface Story {
  unit: 'U01' | 'U07' | 'U08'
  service: 'lower-legs' | 'air-spring'
  beginning: Beginning
  /** The first station, with the network. */
  before: readonly Act[]
  /** The second station has lost the network: `off` where it is the one that acts. */
  apart: readonly { off: boolean; act: Act }[]
  /** It is back: both act in turn. */
  after: readonly { second: boolean; act: Act }[]
}

/** Chance that a seed repeats: mulberry32, public domain, from memory. */
export class Chance {
  #state: number

  constructor(seed: number) {
    this.#state = seed >>> 0
  }

  /** A whole number from 0 to `count − 1`. */
  below(count: number): number {
    this.#state = (this.#state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(this.#state ^ (this.#state >>> 15), this.#state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32) * count)
  }

  pick<Item>(items: readonly [Item, ...Item[]]): Item {
    return items[this.below(items.length)] ?? items[0]
  }

  /** True once in so many times. */
  once(times: number): boolean {
    return this.below(times) === 0
  }
}

/** Mostly at once; else so many minutes later. */
const lateness = (chance: Chance): number | null => (chance.once(6) ? chance.pick([0, 12, 120]) : null)

/** Every sort of act with its weight. */
const sorts: readonly (readonly [number, (chance: Chance) => Act])[] = [
  [16, () => ({ is: 'next' })],
  [5, (chance) => ({ is: 'tick', which: chance.below(41), careless: chance.once(2), late: lateness(chance) })],
  [
    1,
    (chance) => ({
      is: 'keep',
      item: chance.pick(['length', 'ring', 'photos', 'pressure', 'rebound']),
      how: chance.pick(['read', 'read', 'no-pump', 'not-known']),
      late: lateness(chance),
    }),
  ],
  [2, (chance) => ({ is: 'strike', which: chance.below(61) })],
  [2, (chance) => ({ is: 'rule', ruling: chance.pick(['stands', 'struck']) })],
  [1, () => ({ is: 'take-over' })],
  [3, (chance) => ({ is: 'wait', minutes: chance.pick([3, 6, 9, 16, 13 * 60]) })],
  [
    1,
    (chance) => ({
      is: 'waive',
      gate: chance.pick(['R2', 'R3', 'R9', 'R12', 'R13', 'R14', 'R15', 'R17', 'R21', 'R22', 'R26']),
    }),
  ],
  [1, (chance) => ({ is: 'length', good: chance.once(2) })],
  [3, (chance) => ({ is: 'leak', end: chance.once(2) })],
  [1, (chance) => ({ is: 'setting', other: chance.once(2) })],
  [1, (chance) => ({ is: 'pressure', over: chance.once(2) })],
  [
    1,
    (chance) => ({
      is: 'back',
      item: chance.pick(['wheel', 'axle', 'caliper', 'cables', 'brake-holds', 'wheel-free']),
    }),
  ],
  [1, (chance) => ({ is: 'look', part: chance.pick(['crown', 'steerer', 'dropouts']), sound: !chance.once(4) })],
  [1, () => ({ is: 'plan' })],
  [1, () => ({ is: 'leave' })],
  [1, (chance) => chance.pick<Act>([{ is: 'stop' }, { is: 'lift' }])],
  [1, () => ({ is: 'reload' })],
  [1, (chance) => ({ is: 'set-clock', off: chance.pick([0, 0.5, 3, -90, 400]) })],
]
const weights = sorts.reduce((sum, [weight]) => sum + weight, 0)

function act(chance: Chance): Act {
  let left = chance.below(weights)
  for (const [weight, make] of sorts) {
    if (left < weight) return make(chance)
    left -= weight
  }
  return { is: 'next' }
}

const some = <Item>(chance: Chance, most: number, make: () => Item): readonly Item[] =>
  Array.from({ length: chance.below(most + 1) }, make)

/** @example storyOf(7) // the same every time */
export function storyOf(seed: number): Story {
  const chance = new Chance(seed)
  return {
    unit: chance.pick(['U01', 'U01', 'U01', 'U07', 'U08']),
    service: chance.pick(['lower-legs', 'lower-legs', 'air-spring']),
    beginning: chance.pick(beginnings),
    before: some(chance, 8, () => act(chance)),
    apart: some(chance, 14, () => ({ off: chance.once(2), act: act(chance) })),
    after: some(chance, 10, () => ({ second: chance.once(2), act: act(chance) })),
  }
}

/** Every story with one act less, to find the shortest that still goes wrong. */
export function shorterThan(story: Story): readonly Story[] {
  const without = <Item>(items: readonly Item[]) => items.map((_, index) => items.filter((_one, at) => at !== index))
  return [
    ...without(story.after).map((after) => ({ ...story, after })),
    ...without(story.apart).map((apart) => ({ ...story, apart })),
    ...without(story.before).map((before) => ({ ...story, before })),
  ]
}
