/** The page around a chapter: title block, the seven chapters down the edge, what stops the job, the bottom line. */
import { type Chapter, chapterOrder, say } from '@legwork/trade'
import type { ReactNode } from 'react'
import { clock, day } from '../../figures/moment.ts'
import { type BlockCell, Frame } from '../../ui/frame.tsx'
import type { EdgePlace } from '../../ui/thumb-edge.tsx'
import { chapterHref, jobBookHref } from './job-address.ts'
import { type JobView, useJobView } from './job-view.tsx'
import { Stopped } from './stopped.tsx'
import { TakeOver } from './take-over.tsx'

function edgePlace({ state, stream, entries }: JobView, chapter: Chapter, now: Chapter | 'book'): EdgePlace {
  const { state: standing, at, because } = state.chapters[chapter]
  const states = { done: 'done', open: 'open', shut: 'shut', 'not-yet': 'todo', 'not-needed': 'todo' } as const
  const unsent = entries.some((entry) => entry.seq === null && entry.madeAt === at)
  const working =
    chapter === 'work' && state.currentStep !== null && standing !== 'not-yet' && standing !== 'not-needed'
  const detail =
    standing === 'done' && at ? (
      <span translate="no">{clock(at)}</span>
    ) : working ? (
      say('page.step', { n: (state.currentStep ?? 0) + 1 })
    ) : (
      say(`chapter.state.${standing}`)
    )
  return {
    name: say(`chapter.${chapter}`),
    href: chapterHref(stream, chapter),
    state: chapter === now ? 'now' : states[standing],
    detail,
    ...(standing === 'done' && because === null ? { kept: unsent ? 'kept' : 'sent' } : {}),
  }
}

function cellsOf({ state, unit, rider, sheet, entries, stream }: JobView): readonly BlockCell[] {
  const unsent = entries.filter((entry) => entry.seq === null).length
  const last = entries.at(-1)
  const data = (text: string) => <span translate="no">{text}</span>
  return [
    {
      label: state.opened ? data(day(state.opened.at)) : say('page.job'),
      value: data(unit?.label ?? '–'),
      phone: 'show',
    },
    { label: say('page.unit'), value: data(unit?.description ?? '–') },
    { label: say('page.rider'), value: rider ? data(rider.name) : say('page.no-rider'), grow: true },
    {
      label: say('page.sheet'),
      value: sheet
        ? data(say('page.sheet-revision', { name: sheet.name, revision: sheet.revision }))
        : say('page.no-sheet'),
    },
    {
      label: last ? data(say('page.book-at', { time: clock(last.madeAt) })) : say('page.book'),
      value: <span className={unsent > 0 ? 'kept' : 'sent'}>{say(unsent > 0 ? 'page.kept' : 'page.sent')}</span>,
      href: jobBookHref(stream),
      phone: 'show',
    },
  ]
}

interface ChapterFrameProps {
  chapter: Chapter | 'book'
  actions?: ReactNode
  children: ReactNode
}

export function ChapterFrame({ chapter, actions, children }: ChapterFrameProps) {
  const view = useJobView()
  const name = chapter === 'book' ? say('book.title') : say(`chapter.${chapter}`)
  const title = say('page.title', { chapter: name, unit: view.unit?.label ?? '–' })
  return (
    <Frame
      className={`job ${chapter}`}
      title={title}
      block={{ home: { label: say('page.bench'), href: '/' }, cells: cellsOf(view) }}
      edge={{
        label: say('page.chapters'),
        of: 'chapters',
        places: chapterOrder.map((one) => edgePlace(view, one, chapter)),
      }}
      actions={actions}
    >
      <h1 className={chapter === 'work' ? 'unseen' : 'chapter-name'}>{name}</h1>
      <Stopped />
      <TakeOver />
      {children}
    </Frame>
  )
}
