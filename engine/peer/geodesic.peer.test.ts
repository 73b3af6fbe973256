/** Distances against GeodSolve (GeographicLib, Debian geographiclib-tools): 4,000 pairs drawn by seed, a metre apart to opposite. */
import { spawnSync } from 'node:child_process'
import { seededDraws } from '@legwork/engine'
import { geodesicDistance } from '@legwork/engine/ride/geodesic.ts'
import { describe, expect, it } from 'vitest'

const chance = seededDraws(1975)
const latitude = () => (Math.asin(2 * chance() - 1) * 180) / Math.PI
const longitude = () => chance() * 360 - 180
const near = (value: number, reach: number) => value + (chance() - 0.5) * reach
const inRange = (value: number) => Math.max(-90, Math.min(90, value))

type Four = readonly [number, number, number, number]
const kinds: Readonly<Record<string, () => Four>> = {
  anywhere: () => [latitude(), longitude(), latitude(), longitude()],
  'two points of a ride': () => {
    const [north, east] = [latitude(), longitude()]
    return [north, east, inRange(near(north, 2e-4)), near(east, 2e-4)]
  },
  'nearly opposite': () => {
    const [north, east] = [latitude(), longitude()]
    return [north, east, inRange(near(-north, 2)), near(east + 180, 2)]
  },
  'poles, equator, the same or the opposite meridian': () => {
    const [north, east] = [latitude(), longitude()]
    const other = [0, 90, -90, north, -north][Math.floor(chance() * 5)] ?? 0
    return [chance() < 0.5 ? north : 0, east, other, east + ([0, 180, 90, 179.5][Math.floor(chance() * 4)] ?? 0)]
  },
}

const found = spawnSync('GeodSolve', ['--version'], { encoding: 'utf8' }).status === 0
const lacking = found ? '' : 'GeodSolve is needed (Debian: geographiclib-tools)'

describe.skipIf(!found && process.env.CI !== 'true')(`distances against GeodSolve ${lacking}`, () => {
  it.each(Object.keys(kinds))('%s, to 0.1 µm', (kind) => {
    expect(lacking).toBe('')
    const pairs = Array.from({ length: 1000 }, () => kinds[kind]?.() ?? [0, 0, 0, 0])
    const input = `${pairs.map((pair) => pair.join(' ')).join('\n')}\n`
    const { stdout } = spawnSync('GeodSolve', ['-i', '-p', '9'], { input, encoding: 'utf8', maxBuffer: 1e8 })
    const distances = stdout
      .trim()
      .split('\n')
      .map((line) => Number(line.split(' ')[2]))
    expect(distances).toHaveLength(pairs.length)
    pairs.forEach(([north, east, north2, east2], at) => {
      const ours = geodesicDistance({ latitude: north, longitude: east }, { latitude: north2, longitude: east2 })
      expect(Math.abs(ours - (distances[at] ?? Number.NaN)), `${pairs[at]}`).toBeLessThanOrEqual(1e-7)
    })
  })
})
