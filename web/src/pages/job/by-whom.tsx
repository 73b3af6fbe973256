/** Who wrote it and when, in the ink of the hand. */
import { type Made, say } from '@legwork/trade'
import { clock } from '../../figures/moment.ts'
import { useNameOf } from './job-view.tsx'

export function ByWhom({ made }: { made: Made }) {
  const nameOf = useNameOf()
  return (
    <span className="hand" translate="no">
      {say('page.by', { name: nameOf(made.person), time: clock(made.at) })}
    </span>
  )
}
