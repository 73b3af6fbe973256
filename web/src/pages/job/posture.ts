import { postures, say } from '@legwork/trade'

/** A posture in words; one that is not ours stays as it was written. */
export function postureText(text: string | null): string {
  const known = postures.find((one) => one === text)
  return known ? say(`take-in.posture.${known}`) : (text ?? '–')
}
