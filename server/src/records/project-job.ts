/** What is worked out of a job's book and kept as rows: its card, the oil that went in, its search words. */
import type { JobCard } from '@legwork/contract'
import { type Chapter, chapterOrder, type Id, type JobState, legs, reduceJob, type Stream } from '@legwork/trade'
import type { Writer } from '../store/store.ts'
import { readJobBook } from './job-book.ts'
import { putWords } from './search-words.ts'

function cardOf(stream: Stream, number: number, state: JobState, promised: string | null): JobCard | null {
  const { opened } = state
  if (!opened) return null
  // One standing for each chapter: the list is the order of all of them.
  const chapters = Object.fromEntries(
    chapterOrder.map((chapter) => [chapter, state.chapters[chapter].state]),
  ) as JobCard['chapters']
  const open =
    chapterOrder.find((chapter) => state.chapters[chapter].state !== 'done') ?? ('hand-over' satisfies Chapter)
  return {
    stream,
    number,
    unit: opened.unit,
    rider: opened.rider,
    visit: opened.visit,
    state: state.state,
    chapter: state.next.kind === 'nothing' ? open : state.next.chapter,
    chapters,
    stepIndex: state.currentStep,
    stepCount: state.steps.length,
    minutesPlanned: state.minutesPlanned,
    minutesLeft: state.minutesLeft,
    blockedBy: state.next.blocked?.gate ?? null,
    asked: opened.asked,
    promised,
    stopped: state.stopped !== null,
    contested: state.contested.filter((one) => one.ruling === null).length,
    carriedOver: state.carriedOver,
    openedAt: opened.at,
    lastAt: state.lastAt ?? opened.at,
  }
}

async function numberOf(write: Writer, workshop: Id, stream: Stream): Promise<number> {
  const opened = await write
    .selectFrom('entry')
    .select('position')
    .where('workshop', '=', workshop)
    .where('stream', '=', stream)
    .where('kind', '=', 'job-opened')
    .orderBy('position')
    .executeTakeFirst()
  const before = await write
    .selectFrom('entry')
    .select(({ fn }) => fn.count<number>('stream').distinct().as('jobs'))
    .where('workshop', '=', workshop)
    .where('kind', '=', 'job-opened')
    .where('position', '<=', opened?.position ?? 0)
    .executeTakeFirst()
  return Math.max(1, Number(before?.jobs ?? 1))
}

/** Works a job's rows out anew. @returns its state, or null for a stream that is no job */
export async function projectJob(write: Writer, workshop: Id, stream: Stream, at: string): Promise<JobState | null> {
  if (!stream.startsWith('job:')) return null
  const { entries, context } = await readJobBook(write, workshop, stream)
  const last = entries.at(-1)
  if (!last) return null
  const state = reduceJob(entries, { ...context, now: at })
  const hand = { workshop, person: last.person, station: last.station }
  const visit = state.opened
    ? await write
        .selectFrom('visits')
        .select('promised')
        .where('workshop', '=', workshop)
        .where('id', '=', state.opened.visit)
        .executeTakeFirst()
    : undefined
  const number = await numberOf(write, workshop, stream)
  const card = cardOf(stream, number, state, visit?.promised ?? null)
  await write.deleteFrom('job_card').where('workshop', '=', workshop).where('stream', '=', stream).execute()
  if (card)
    await write
      .insertInto('job_card')
      .values({ ...hand, stream, number, card: JSON.stringify(card) })
      .execute()
  await write.deleteFrom('oil_used').where('workshop', '=', workshop).where('stream', '=', stream).execute()
  for (const step of state.steps) {
    if (step.step !== 'oil-in') continue
    for (const leg of legs) {
      const done = step.done[leg]
      if (done?.reading?.measure === 'm³')
        await write
          .insertInto('oil_used')
          .values({ ...hand, stream, leg, volume: done.reading.value, entry: done.entry })
          .execute()
    }
  }
  if (card)
    await putWords(write, { workshop, person: last.person, station: last.station }, 'job', stream, [
      `J${String(number).padStart(2, '0')}`,
    ])
  return state
}
