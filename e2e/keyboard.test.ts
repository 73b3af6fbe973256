/** The whole walk without a finger on the glass: every act is reached by Tab and done by a key. */
import { describe, expect, it } from 'vitest'
import { useBench } from './src/bench.ts'
import { keysOn } from './src/hand.ts'
import {
  agreePlan,
  chapterLink,
  chassisSound,
  enterDemo,
  handOver,
  keepSnapshot,
  proveLeak,
  proveLength,
  takeIn,
  workThrough,
  writeSetting,
  writeStartPressure,
} from './src/walk.ts'

describe('by keys alone', () => {
  const bench = useBench({ clock: true })

  it('from the first page to the unit handed over', async () => {
    const { page, address } = bench
    const hand = keysOn(page)
    await enterDemo(page, address, hand)
    await takeIn(hand, 'U01', '50 h service')
    await keepSnapshot(hand, 'P1')
    await chassisSound(hand)
    await agreePlan(hand)
    await writeStartPressure(hand)
    await hand.press(chapterLink(page, 'Work'))
    expect(await workThrough(hand, ['22 psi', '44 psi', '88 psi'])).toHaveLength(17)
    await proveLength(hand, '165')
    await writeSetting(hand, ['27', '33'])
    await proveLeak(hand, ['88psi', '86psi'])
    await handOver(hand, 'Mateus Corvalho-Wynd', 'M. C.-W.')
    expect(await page.getByRole('link', { name: 'Hand-over page (PDF)' }).getAttribute('href')).toMatch(
      /hand-over\.pdf/,
    )
  })
})
