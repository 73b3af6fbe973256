/** Addresses of a job's pages. */
import { type Chapter, chapterOrder, type Stream } from '@legwork/trade'

const idOf = (stream: Stream): string => stream.slice(stream.indexOf(':') + 1)

export const chapterHref = (stream: Stream, chapter: Chapter): string => `/jobs/${idOf(stream)}/${chapter}`
export const jobBookHref = (stream: Stream): string => `/jobs/${idOf(stream)}/book`

/** A chapter out of an address, or null where it names none. */
export function chapterIn(text: string | undefined): Chapter | null {
  return chapterOrder.find((chapter) => chapter === text) ?? null
}
