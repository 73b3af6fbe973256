/** What a press finds where the sheet itself is only about right: the smallest fault named in 9 of 10 forks. */
import { type HypothesisName, pressTest } from '@legwork/engine'
import { quantile } from '@legwork/engine/numerics/quantile.ts'
import { standing, truths } from './press-cells.ts'
import { realSheet, session, type Truth, testFork } from './press-forks.ts'

export interface Search {
  readonly fault: string
  readonly right: HypothesisName
  /** The fork with a fault of so many steps. */
  readonly fork: (steps: number) => Truth
  /** How a size of so many steps is written. */
  readonly shown: (steps: number) => string
  readonly most: number
}

export const searches: readonly Search[] = [
  {
    fault: 'oil in the chamber',
    right: 'volume-less',
    fork: (steps) => truths.oil(steps * 1e-6),
    shown: (steps) => `${steps} ml`,
    most: 60,
  },
  {
    fault: 'bath oil more, per leg',
    right: 'bath-over',
    fork: (steps) => truths.bath(steps * 1e-6),
    shown: (steps) => `${steps} ml`,
    most: 60,
  },
  {
    fault: 'negative pressure lost',
    right: 'negative-off',
    fork: (steps) => truths.negative(1 - steps / 100),
    shown: (steps) => `${steps} %`,
    most: 60,
  },
]

/** Shares of forks on real sheets whose fault is named alone, or at least stands among what is named. */
export function found(fork: Truth, right: HypothesisName, presses: readonly number[], forks: number) {
  let alone = 0
  let among = 0
  for (let seed = 1; seed <= forks; seed += 1) {
    const answer = pressTest(testFork, session(fork, seed, presses, realSheet).question)
    const stands = standing(answer, right)
    if (stands === 'right') alone += 1
    if (stands !== 'wrong') among += 1
  }
  return { alone: alone / forks, among: among / forks }
}

/** What 95 of 100 sound forks on real sheets stay under, where each fault is supposed of them. */
export function soundLooksLike(presses: readonly number[], forks: number): { name: HypothesisName; size: number }[] {
  const answers = Array.from({ length: forks }, (_, index) => {
    return pressTest(testFork, session({ spring: testFork }, index + 1, presses, realSheet).question)
  })
  return searches.map(({ right }) => {
    const sizes = answers.map(({ hypotheses }) => {
      const estimate = hypotheses.find(({ name }) => name === right)?.estimate ?? 0
      return right === 'negative-off' ? Math.abs(estimate - 1) : estimate
    })
    return {
      name: right,
      size: quantile(
        sizes.sort((one, other) => one - other),
        0.95,
      ),
    }
  })
}

/** The smallest size found in 9 of 10; halving, as a larger fault is found more often. Null where none is. */
export function smallest(
  { fork, right, most }: Search,
  presses: readonly number[],
  how: 'alone' | 'among',
  forks: number,
): number | null {
  let lost = 0
  let seen = most + 1
  while (seen - lost > 1) {
    const middle = Math.floor((lost + seen) / 2)
    if (found(fork(middle), right, presses, forks)[how] >= 0.9) seen = middle
    else lost = middle
  }
  return seen > most ? null : seen
}
