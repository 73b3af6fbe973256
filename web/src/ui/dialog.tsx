import { lazy, Suspense } from 'react'
import type { DialogProps } from './dialog-leaf.tsx'

// Most pages are never asked for a leaf, so none waits for what it takes to draw one.
const Leaf = lazy(() => import('./dialog-leaf.tsx').then(({ DialogLeaf }) => ({ default: DialogLeaf })))

/** A leaf laid over the page; Escape, the ground around it and 'Close' put it away. */
export function Dialog(props: DialogProps) {
  if (!props.isOpen) return null
  return (
    <Suspense>
      <Leaf {...props} />
    </Suspense>
  )
}
