/** Riders: who rides what, and how heavy, how and how much: a part of its own, loaded when it is opened. */
import '../units/words.ts'

export { RiderPage } from './rider-page.tsx'
export { RidersPage } from './riders-page.tsx'
