/** The jobs of today in the demo, worked through the gates like any job, each as far as it has come. */
import type { DemoStation } from './demo-station.ts'
import { type Begun, begin, type DemoShop } from './job-of-today.ts'
import { pressToday } from './press-today.ts'
import { workUntil } from './work-on.ts'

const psi = 6894.757293168

/** Pressed as it came and as it leaves, proved, set up, put back: it waits to be collected. */
function finished(job: Begun, shop: DemoShop): void {
  workUntil(job, 'plan', 'U01', shop)
  pressToday(job, shop, { phase: 'received', pressure: 82 * psi, friction: 34, seed: 1 })
  workUntil(job, 'setting', 'U01', shop)
  pressToday(job, shop, { phase: 'done', pressure: job.state().setUp?.pressure ?? 0, friction: 15, seed: 2 })
  workUntil(job, 'hand-over', 'U01', shop)
  job.write('ready', { minutes: 64 })
}

/** Writes today's jobs as far as they are. */
export function workToday(hand: DemoStation, shop: DemoShop, now: Date): void {
  const earlier = (minutes: number): Date => new Date(now.getTime() - minutes * 60_000)
  const tomorrow = new Date(now.getTime() + 24 * 3_600_000).toISOString()
  const owner = hand.person
  const by = (name: string): void => {
    hand.person = shop.people.get(name) ?? owner
  }
  by('sunniva')
  const bath = begin(hand, shop, 'U09', 'a bit dry, and the 50 hours are up', earlier(95))
  workUntil(bath, 'foot-torque', 'U09', shop)
  by('ikaika')
  begin(hand, shop, 'U02', 'bath and wipers before the marathon', earlier(20))
  by('sunniva')
  const part = begin(hand, shop, 'U06', 'forty hours in the mud', earlier(190))
  workUntil(part, 'air-out', 'U06', shop)
  const wipers = part.text('wiper kit 35 mm, ordered')
  part.write('waiting', { for: 'part', rest: null, until: tomorrow, why: wipers })
  by('ikaika')
  const answer = begin(hand, shop, 'U03', 'sits a little low', earlier(160))
  workUntil(answer, 'plan', 'U03', shop)
  const quoted = answer.text('quoted by telephone, calls back')
  answer.write('waiting', { for: 'answer', rest: null, until: null, why: quoted })
  by('sunniva')
  finished(begin(hand, shop, 'U01', 'a little sticky since the mud last week', earlier(26 * 60 + 30)), shop)
  hand.person = owner
}
