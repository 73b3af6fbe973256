import { type RefObject, useLayoutEffect, useRef, useState } from 'react'

/**
 * Keeps a part in view beside a longer one: the `top` at which it sticks. One taller than the page sticks by its lower end,
 * so that all of it can be scrolled to.
 */
export function useStickyTop<E extends HTMLElement>(): [RefObject<E | null>, number] {
  const ref = useRef<E>(null)
  const [top, setTop] = useState(0)
  useLayoutEffect(() => {
    const part = ref.current
    const page = part?.closest('.page')
    if (!part || !page) return
    const follow = () => setTop(Math.min(0, page.clientHeight - part.offsetHeight - 20))
    follow()
    const observer = new ResizeObserver(follow)
    observer.observe(part)
    observer.observe(page)
    return () => observer.disconnect()
  }, [])
  return [ref, top]
}
