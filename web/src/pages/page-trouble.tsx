import { say } from '@legwork/trade'
import { Component, type ReactNode } from 'react'
import { Button } from '../ui/button.tsx'

interface PageTroubleProps {
  children: ReactNode
}

/**
 * Says so where a page can't be drawn, instead of taking everything else away with it: what was written lies on the disk, and
 * other pages work. Given another `key`, as with another page, it tries again.
 */
export class PageTrouble extends Component<PageTroubleProps, { error: Error | null }> {
  override state: { error: Error | null } = { error: null }

  static getDerivedStateFromError(error: unknown): { error: Error } {
    return { error: error instanceof Error ? error : new Error(String(error)) }
  }

  override render(): ReactNode {
    const { error } = this.state
    if (!error) return this.props.children
    return (
      <section role="alert" className="page-trouble">
        <h1>{say('place.trouble')}</h1>
        <p>{say('place.trouble.kept')}</p>
        <p className="book" translate="no">
          {error.message}
        </p>
        <Button kind="second" onPress={() => location.reload()}>
          {say('place.trouble.again')}
        </Button>
      </section>
    )
  }
}
