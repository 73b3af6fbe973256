import type { Bars } from '../doubt-messages.ts'

/** What a picture is drawn from: the question as it was read [SI], and its answer. */
export interface PictureProps {
  /** As it was asked. */
  asked: Record<string, unknown>
  /** The same read by the calculation's schema: SI, nothing refused. */
  input: unknown
  output: Record<string, unknown>
  /** Of `doubt`: the draws of each answer. */
  bars: Readonly<Record<string, Bars>>
  width: number
}
