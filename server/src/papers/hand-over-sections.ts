/** The hand-over page's lists, in the order of reading; an empty one says so in a sentence. */
import { say } from '@legwork/trade'
import type { HandOverPage, SectionPair } from './hand-over-page-data.ts'
import type { RuledRow, Section } from './ruled-section.ts'

const or = (rows: readonly RuledRow[], none: string): readonly RuledRow[] => (rows.length > 0 ? rows : [{ what: none }])
const plain = (list: readonly string[]): RuledRow[] => list.map((what) => ({ what }))

function nextSection(page: HandOverPage): Section {
  return { head: say('paper.head.next'), rows: [...or(page.next, say('paper.no-next')), ...plain(page.declined)] }
}

/** Two and two beside each other. */
export function sectionsOf(page: HandOverPage): SectionPair[] {
  const pairs = page.beforeAfter.map(({ what, before, after, source }) => ({
    what,
    figure: `${before} → ${after}`,
    source,
  }))
  const optional = (head: string, rows: readonly RuledRow[]): Section[] => (rows.length > 0 ? [{ head, rows }] : [])
  const sections: Section[] = [
    { head: say('paper.head.found'), rows: or(page.found, say('paper.no-found')), foot: page.limits },
    { head: say('paper.head.done'), rows: or(page.done, say('paper.no-done')), foot: page.hands },
    { head: say('paper.head.before-after'), rows: or(pairs, say('paper.no-before-after')) },
    ...optional(say('paper.head.holds-air'), page.holdsAir),
    ...optional(say('paper.head.elsewhere'), page.elsewhere),
    nextSection(page),
    { head: say('paper.head.ride'), rows: or(plain(page.beforeYouRide), say('paper.no-ride')) },
    ...optional(say('paper.head.notes'), plain(page.kept)),
  ]
  return Array.from({ length: Math.ceil(sections.length / 2) }, (_, row): SectionPair => {
    const [first = { head: '', rows: [] }, second = null] = sections.slice(row * 2, row * 2 + 2)
    return [first, second]
  })
}
