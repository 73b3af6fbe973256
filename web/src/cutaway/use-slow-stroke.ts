import { useEffect, useRef, useState } from 'react'

/** One way down [s]; as slow as a hand presses on a bench. */
const wayDown = 4
/** Where motion is not wanted the fork goes on in still pictures, so many down, one a second. */
const pictures = 10

/**
 * The stroke at a moment of one slow press, down and up again: a half cosine each way.
 *
 * @param seconds  since it began
 * @returns stroke [m]; null when it is over
 * @example slowStroke(4, 0.15) // 0.15
 */
export function slowStroke(seconds: number, fullStroke: number): number | null {
  if (seconds >= 2 * wayDown) return null
  return (fullStroke * (1 - Math.cos((Math.PI * seconds) / wayDown))) / 2
}

const wantsNoMotion = () => matchMedia('(prefers-reduced-motion: reduce)').matches

/** A slow press of the fork that can be stopped at any moment; it ends where the stroke was before. */
export function useSlowStroke(stroke: number, fullStroke: number, onStroke: (stroke: number) => void) {
  const [playing, setPlaying] = useState(false)
  const latest = useRef({ stroke, onStroke })
  latest.current = { stroke, onStroke }
  useEffect(() => {
    if (!playing) return
    const before = latest.current.stroke
    const still = wantsNoMotion()
    const began = performance.now()
    let asked = 0
    const end = () => {
      latest.current.onStroke(before)
      setPlaying(false)
    }
    const picture = (now: number) => {
      const seconds = (now - began) / 1000
      const part = still ? (Math.floor(seconds) / pictures) * wayDown : seconds
      const here = slowStroke(Math.max(0, part), fullStroke)
      if (here === null) return end()
      latest.current.onStroke(here)
      asked = still ? window.setTimeout(() => picture(performance.now()), 1000) : requestAnimationFrame(picture)
    }
    picture(began)
    return () => (still ? clearTimeout(asked) : cancelAnimationFrame(asked))
  }, [playing, fullStroke])
  return { playing, toggle: () => setPlaying((was) => !was) }
}
