import { type RefObject, useLayoutEffect, useRef, useState } from 'react'

/** Width of the element that gets the ref [px]; `before` until it is laid out. A drawing follows it, its lettering stays. */
export function useOwnWidth(before: number): [RefObject<HTMLDivElement | null>, number] {
  const ref = useRef<HTMLDivElement>(null)
  const [width, setWidth] = useState(before)
  useLayoutEffect(() => {
    const element = ref.current
    if (!element) return
    const follow = () => setWidth(Math.max(120, Math.round(element.clientWidth)))
    follow()
    const observer = new ResizeObserver(follow)
    observer.observe(element)
    return () => observer.disconnect()
  }, [])
  return [ref, width]
}
