import { describe, expect, it } from 'vitest'
import { arrowLength, forces } from './forces.ts'
import { forkForTests } from './fork-for-tests.ts'
import type { ForkParameters } from './fork-parameters.ts'
import { forkStations } from './fork-stations.ts'

const arrowsOf = (fork: ForkParameters) => forces(fork, forkStations(fork))
const alongOf = (fork: ForkParameters, name: string) => {
  const shape = arrowsOf(fork).find((one) => one.name === name)
  const along = shape?.outlinePoints.map(([u]) => u) ?? []
  return { from: Math.min(...along), to: Math.max(...along) }
}

describe('arrows of the forces on the piston', () => {
  // Hand calculation: 8 mm of head and 0.03 mm a newton; 7e5 Pa · π/4·(32 mm)² = 563 N: 24.9 mm.
  it('are as long as their forces', () => {
    expect(arrowLength(563, 100)).toBeCloseTo(24.89, 2)
    const { from, to } = alongOf(forkForTests(0), 'force.positive')
    expect(to - from).toBeCloseTo(24.89 - 0.4, 1)
  })

  it('have their tips on the piston’s faces, wherever it stands', () => {
    for (const stroke of [0, 0.03, 0.1]) {
      const fork = forkForTests(stroke)
      const at = forkStations(fork)
      const foot = at.headTo + at.negativeLength + stroke * 1e3
      expect(alongOf(fork, 'force.negative').to).toBeCloseTo(foot - 0.4, 6)
      expect(alongOf(fork, 'force.positive').from).toBeCloseTo(foot + at.pistonLength + 0.4, 6)
    }
  })

  it('never leave their chambers, and a small force is none', () => {
    const hard = { ...forkForTests(0.14), pressures: { positive: 30e5, negative: 20e5, left: 0, right: 0 } }
    const at = forkStations(hard)
    expect(alongOf(hard, 'force.positive').to).toBeLessThan(at.cap)
    const soft = { ...forkForTests(0), pressures: { positive: 1e4, negative: 0, left: 0, right: 0 } }
    expect(arrowsOf(soft)).toEqual([])
  })
})
