/** What came with the unit: the rider's words, mass and posture, the bike, what was promised and left on it. */
import { say } from '@legwork/trade'
import { QuantityText } from '../../../figures/figure.tsx'
import { day } from '../../../figures/moment.ts'
import { SideHead, ValueRow } from '../../../ui/ledger.tsx'
import { useJobView } from '../job-view.tsx'
import { postureText } from '../posture.ts'
import { VisitJobs } from '../visit-jobs.tsx'
import { AskedSigns } from './asked-signs.tsx'

export function VisitNotes() {
  const { state, rider, bike, bikeHere, visit, text, home } = useJobView()
  const asked = state.opened?.asked ? text(state.opened.asked) : null
  return (
    <aside>
      <SideHead place="above" title={say(home ? 'keep.said.home' : 'keep.said')}>
        <p className="saying book" translate="no">
          {asked ? <i>{say('take-in.saying', { words: asked })}</i> : say('take-in.asked-none')}
        </p>
      </SideHead>
      <AskedSigns />
      {!rider && <p className="book">{say('keep.no-rider')}</p>}
      {rider && (
        <SideHead place="above" title={say('keep.rider')}>
          <ValueRow name={<span translate="no">{rider.name}</span>} note={say('keep.mass')}>
            <QuantityText kind="mass" value={rider.mass} hand />
          </ValueRow>
          <ValueRow name={say('keep.share', { posture: postureText(rider.posture) })}>
            <QuantityText kind="fraction" value={rider.frontShare} />
          </ValueRow>
        </SideHead>
      )}
      {!bikeHere && !bike && <p className="book">{say('keep.alone')}</p>}
      {bike && (
        <SideHead
          place="above"
          title={bike.name === '–' ? say('keep.bike') : <span translate="no">{bike.name}</span>}
          note={bikeHere ? null : say('keep.alone')}
        >
          <ValueRow name={say('keep.head-angle')}>
            <QuantityText kind="angle" value={bike.headAngle} hand />
          </ValueRow>
          <ValueRow name={say('keep.front-mass')}>
            <QuantityText kind="mass" value={bike.frontMass} />
          </ValueRow>
        </SideHead>
      )}
      {(state.opened?.spendAllowed != null || visit?.promised || visit?.leftWith) && (
        <SideHead place="above" title={say('keep.visit')}>
          {state.opened?.spendAllowed != null && (
            <ValueRow name={say('keep.spend')}>
              <span translate="no">{state.opened.spendAllowed}</span>
            </ValueRow>
          )}
          {visit?.promised && (
            <ValueRow name={say('keep.promised')}>
              <span translate="no">{day(visit.promised)}</span>
            </ValueRow>
          )}
          {visit?.leftWith && (
            <ValueRow name={say('keep.left-with')}>
              <span translate="no">{visit.leftWith}</span>
            </ValueRow>
          )}
        </SideHead>
      )}
      <VisitJobs />
    </aside>
  )
}
