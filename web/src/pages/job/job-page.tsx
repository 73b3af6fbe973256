/** One job: seven chapters down the edge, its book, and what stops it. */
import { type Chapter, chapterOrder, type Sheet, type Stream, say, sayMessage } from '@legwork/trade'
import { useMemo, useState } from 'react'
import { clock, day } from '../../figures/moment.ts'
import { useHands, useHome, useJob, useNow, useRegisters, useStation, useWriteRegister } from '../../offline/hooks.tsx'
import { Frame } from '../../ui/frame.tsx'
import type { EdgePlace } from '../../ui/thumb-edge.tsx'
import { KeptOrSent } from '../kept-or-sent.tsx'
import { NotHere } from '../not-here.tsx'
import { PageTrouble } from '../page-trouble.tsx'
import { JobBook } from './book/job-book.tsx'
import { ChapterCutaway } from './chapter-cutaway.tsx'
import { HandOver } from './hand-over/hand-over.tsx'
import { chapterHref, chapterIn, jobBookHref } from './job-address.ts'
import { type JobView, JobViewProvider } from './job-view.tsx'
import { LookOver } from './look-over/look-over.tsx'
import { Plan } from './plan/plan.tsx'
import { Prove } from './prove/prove.tsx'
import { SetUp } from './set-up/set-up.tsx'
import { Stopped } from './stopped.tsx'
import { TakeInChapter } from './take-in/take-in-chapter.tsx'
import { holderOf, TakeOver } from './take-over.tsx'
import { useVisitJobs } from './visit-jobs.tsx'
import { Work } from './work-chapter/work.tsx'
import './job.css'

const pages: Readonly<Record<Chapter, () => React.ReactNode>> = {
  'take-in': TakeInChapter,
  'look-over': LookOver,
  plan: Plan,
  work: Work,
  prove: Prove,
  'set-up': SetUp,
  'hand-over': HandOver,
}

function useView(stream: Stream): JobView | null {
  const job = useJob(stream)
  const registers = useRegisters()
  const { person } = useHands()
  const writeRegister = useWriteRegister()
  const station = useStation()
  const home = useHome()
  return useMemo(() => {
    const { opened } = job.state
    if (!opened || !person) return null
    const unit = registers.units.find((one) => one.id === opened.unit) ?? null
    return {
      ...job,
      unit,
      rider: registers.riders.find((one) => one.id === opened.rider) ?? null,
      bike: registers.bikes.find((one) => one.id === (opened.bike ?? unit?.bike)) ?? null,
      bikeHere: opened.bike !== null,
      home,
      visit: registers.visits.find((one) => one.id === opened.visit) ?? null,
      sheet: job.state.sheet,
      people: registers.people,
      instruments: registers.instruments,
      hands: person,
      paperHref: (paper: string, asked: Readonly<Record<string, number>> = {}) => {
        const query = [`person=${person.id}`, ...Object.entries(asked).map(([name, value]) => `${name}=${value}`)]
        return `/api/workshops/${station.workshop}/jobs/${encodeURIComponent(stream)}/${paper}?${query.join('&')}`
      },
      writeSheet: (sheet: Sheet) => writeRegister('sheets', sheet),
    }
  }, [job, registers, person, writeRegister, station, stream, home])
}

/** A job at an address; `stream` is its id. */
export function JobPage({ params }: { params: { stream: string; chapter?: string | undefined } }) {
  const id = decodeURIComponent(params.stream).replace(/^job:/, '')
  const stream: Stream = `job:${id}`
  const view = useView(stream)
  const now = useNow()
  const together = useVisitJobs(view?.visit?.id ?? null)
  const [taking, setTaking] = useState(false)
  if (!view) return <NotHere />
  const { state, unit, rider, sheet } = view
  const book = params.chapter === 'book'
  const chapter = chapterIn(params.chapter) ?? (state.next.kind === 'nothing' ? 'hand-over' : state.next.chapter)
  const places: EdgePlace[] = chapterOrder.map((one) => {
    const standing = state.chapters[one]
    const current = !book && one === chapter
    const sent = view.sent ? 'sent' : 'kept'
    const detail =
      standing.state === 'done' && standing.at
        ? clock(standing.at)
        : standing.state === 'shut' && standing.because
          ? state.stopped
            ? say('stop.title')
            : sayMessage(standing.because)
          : say(`chapter.state.${standing.state}`)
    const todo = standing.state === 'done' ? 'done' : standing.state === 'open' ? 'open' : 'todo'
    return {
      name: say(`chapter.${one}`),
      href: chapterHref(stream, one),
      state: current ? 'now' : standing.state === 'shut' ? 'shut' : todo,
      detail,
      ...(standing.state === 'done' && standing.at ? { kept: sent } : {}),
    }
  })
  const holder = holderOf(view)
  // The next one of the visit, and from the last to the first.
  const other =
    together.length > 1
      ? together[(together.findIndex((job) => job.stream === stream) + 1) % together.length]
      : undefined
  const Body = pages[chapter]
  const title = `${unit?.label ?? ''} ${book ? say('book.title') : say(`chapter.${chapter}`)}`
  return (
    <JobViewProvider view={view}>
      <Frame
        title={title}
        block={{
          home: { label: say('place.bench'), href: '/' },
          cells: [
            {
              label: <span translate="no">{state.opened && day(state.opened.at)}</span>,
              value: view.number ? <span translate="no">{view.number}</span> : say('page.job'),
              href: jobBookHref(stream),
            },
            {
              label: say('page.unit'),
              value: (
                <span translate="no">
                  {unit?.label} · {unit?.description}
                </span>
              ),
              phone: 'show',
              grow: true,
            },
            ...(holder
              ? [
                  {
                    label: say('take-over.holder'),
                    value: <span translate="no">{holder}</span>,
                    onPress: () => setTaking(true),
                    wide: true,
                  },
                ]
              : []),
            ...(other
              ? [
                  {
                    label: say('visit.same'),
                    value: <span translate="no">{other.unit?.label}</span>,
                    href: `/jobs/${encodeURIComponent(other.stream)}`,
                    phone: 'show' as const,
                  },
                ]
              : []),
            {
              label: say('page.rider'),
              value: rider ? <span translate="no">{rider.name}</span> : say('page.no-rider'),
            },
            {
              label: say('page.sheet'),
              value: sheet ? (
                <span translate="no">{say('page.sheet-revision', { name: sheet.name, revision: sheet.revision })}</span>
              ) : (
                say('page.no-sheet')
              ),
            },
            {
              label: say('place.search.find'),
              value: say('place.search'),
              href: '/search',
              wide: holder ? 'desktop' : true,
            },
            {
              label: <span translate="no">{clock(now)}</span>,
              value: <KeptOrSent />,
              href: jobBookHref(stream),
              phone: 'show',
            },
          ],
        }}
        edge={{ label: say('page.chapters'), of: 'chapters', places }}
      >
        <Stopped />
        {holder && <TakeOver name={holder} isOpen={taking} onClose={() => setTaking(false)} />}
        <PageTrouble key={`${stream} ${book ? 'book' : chapter}`}>
          {!book && <ChapterCutaway chapter={chapter} />}
          {book ? <JobBook /> : <Body />}
        </PageTrouble>
      </Frame>
    </JobViewProvider>
  )
}
