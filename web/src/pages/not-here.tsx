import { say } from '@legwork/trade'
import { LinkButton } from '../ui/button.tsx'
import { ShopFrame } from './shop-frame.tsx'

export function NotHere() {
  return (
    <ShopFrame
      place={null}
      title={say('place.not-here')}
      actions={
        <LinkButton kind="main" href="/">
          {say('place.not-here.act')}
        </LinkButton>
      }
    >
      <h1>{say('place.not-here')}</h1>
    </ShopFrame>
  )
}
