/** A positive finding: its leak, and the chance that each cause brings it. */
export interface Finding {
  readonly leak: number
  /** By place of the cause. */
  readonly links: ReadonlyMap<number, number>
}

/** One cause on its way through: findings that begin with it, what it brings by bit, bits that end with it. */
export interface Step {
  readonly cause: number
  /** Leak of each new bit, from the lowest free one up. */
  readonly opens: readonly number[]
  readonly brings: readonly { readonly bit: number; readonly chance: number }[]
  /** From the highest bit down, so that the others keep their places while they go. */
  readonly closes: readonly number[]
  /** Bits while it is there. */
  readonly width: number
}

export interface Order {
  readonly steps: readonly Step[]
  /** Product of the leaks of findings without any cause. */
  readonly unexplained: number
  /** Additions and multiplications, about. */
  readonly work: number
}

/**
 * Order in which causes are summed out, so that few findings are open at a time: next is always the cause with which the
 * fewest are open.
 *
 * @param findings  the positive ones
 * @param causes    how many there are; those that bring none of the findings take no step
 * @returns steps, and about how many sums and products they take
 * @source fewest open at a time: variable elimination, N. L. Zhang, D. Poole, J. Artif. Intell. Res. 5 (1996) 301
 * @example eliminationOrder([{ leak: 0.02, links: new Map([[1, 0.5]]) }], 2).steps.length // 1
 */
export function eliminationOrder(findings: readonly Finding[], causes: number): Order {
  const left = findings.map(({ links }) => links.size)
  const waiting = new Set<number>()
  for (let cause = 0; cause < causes; cause += 1) if (findings.some(({ links }) => links.has(cause))) waiting.add(cause)
  const open: number[] = []
  const steps: Step[] = []
  let work = 0
  const cost = (cause: number) => {
    let opens = 0
    let closes = 0
    findings.forEach(({ links }, index) => {
      if (!links.has(cause)) return
      if (!open.includes(index)) opens += 1
      if (left[index] === 1) closes += 1
    })
    return (open.length + opens) * 1000 - closes
  }
  while (waiting.size > 0) {
    let cause = -1
    let least = Number.POSITIVE_INFINITY
    for (const one of waiting) {
      const its = cost(one)
      if (its < least) {
        cause = one
        least = its
      }
    }
    waiting.delete(cause)
    const opens: number[] = []
    findings.forEach(({ leak, links }, index) => {
      if (!links.has(cause) || open.includes(index)) return
      open.push(index)
      opens.push(leak)
    })
    const brings: { bit: number; chance: number }[] = []
    const closes: number[] = []
    const width = open.length
    open.forEach((index, bit) => {
      const chance = findings[index]?.links.get(cause)
      if (chance === undefined) return
      brings.push({ bit, chance })
      left[index] = (left[index] ?? 0) - 1
      if (left[index] === 0) closes.unshift(bit)
    })
    for (const bit of closes) open.splice(bit, 1)
    work += 2 ** width * (brings.length + 2)
    steps.push({ cause, opens, brings, closes, width })
  }
  const unexplained = findings.reduce((product, { leak, links }) => (links.size === 0 ? product * leak : product), 1)
  return { steps, unexplained, work }
}
