/** Dates and times as the bench writes them: `9 May`, `10:42`, in the station's own time zone. */
const dayFormat = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long' })
const yearFormat = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric' })
const clockFormat = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' })

export type Moment = string | number | Date

/** @example day('2026-05-09T10:42:00.000Z') // '9 May' */
export const day = (moment: Moment): string => dayFormat.format(new Date(moment))
/** @example dayAndYear('2026-05-09T10:42:00.000Z') // '9 May 2026' */
export const dayAndYear = (moment: Moment): string => yearFormat.format(new Date(moment))
/** @example clock('2026-05-09T10:42:00.000Z') // '10:42' in UTC */
export const clock = (moment: Moment): string => clockFormat.format(new Date(moment))
