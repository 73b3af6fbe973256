/** The section of a unit, alive: moved by the finger, the keys or the rule under it, or by itself in one slow press. */
import type { DrawnOtherwise, ForkParameters, ForkView } from '@legwork/drawing'
import { say } from '@legwork/trade'
import type { ReactNode } from 'react'
import { useQuantityWords } from '../figures/quantity-words.ts'
import { measureFor, shown } from '../figures/shown.ts'
import { useMeasures } from '../figures/world.tsx'
import { Button } from '../ui/button.tsx'
import type { Balloon } from './balloons.tsx'
import { chamberFigures } from './chamber-figures.ts'
import { type CutawayWords, Down, ForkCutaway, strokeAxisOf } from './fork-cutaway.tsx'
import { SectionTable } from './section-table.tsx'
import { StrokeRule } from './stroke-rule.tsx'
import { useSlowStroke } from './use-slow-stroke.ts'

/** Pressure, volume and force of each chamber, where they act. */
function useCutawayWords(): (fork: ForkParameters) => CutawayWords | null {
  const person = useMeasures()
  return (fork) => {
    const figures = chamberFigures(fork)
    if (!figures) return null
    const of = (kind: 'pressure' | 'volume' | 'force', value: number) => {
      const { number, unit } = shown(value, measureFor(kind, person))
      return { value: number, unit }
    }
    const force = (value: number) => Object.values(of('force', value)).join(' ')
    const chamber = ({ pressure, volume }: { pressure: number; volume: number }) => [
      of('pressure', pressure),
      of('volume', volume),
    ]
    // Below the air outside a chamber works the other way round.
    const way = (chamber: 'positive' | 'negative', way: 'pushes' | 'pulls', size: number) =>
      say(`cutaway.${chamber}.${way}`, { force: force(Math.abs(size)) })
    const { positive, negative } = figures
    const { left, right } = fork.legs
    const swapped = fork.springLeg === 'right'
    return {
      leftLeg: swapped ? say('cutaway.leg.right-spring') : say('cutaway.leg.left-spring'),
      rightLeg: swapped ? say('cutaway.leg.left-damper') : say('cutaway.leg.right-damper'),
      callouts: {
        bath: {
          figures: [of('volume', left.oil)],
          words:
            left.oil === right.oil
              ? say('cutaway.bath.each')
              : swapped
                ? say('cutaway.bath.right', { left: Object.values(of('volume', right.oil)).join(' ') })
                : say('cutaway.bath.left', { right: Object.values(of('volume', right.oil)).join(' ') }),
        },
        negative: {
          figures: chamber(negative),
          words: way('negative', negative.force < 0 ? 'pushes' : 'pulls', negative.force),
        },
        positive: {
          figures: chamber(positive),
          words: way('positive', positive.force < 0 ? 'pulls' : 'pushes', positive.force),
        },
      },
    }
  }
}

export interface LiveCutawayProps {
  fork: ForkParameters
  /** How far the spring lets it go [m]. */
  fullStroke: number
  onStroke: (stroke: number) => void
  view?: ForkView
  /** Where a chart under the drawing carries the grip, the drawing needs none of its own. */
  rule?: boolean
  /** More acts beside the drawing's own. */
  acts?: ReactNode
  /** Over the spring leg alone: what ties rows of the page to its parts. */
  balloons?: readonly Balloon[]
  /** What the drawing does not show as it is. */
  otherwise?: DrawnOtherwise | null
  /** More tables behind the drawing's own. */
  tables?: () => ReactNode
}

export function LiveCutaway(props: LiveCutawayProps) {
  const { fork, fullStroke, onStroke, view = 'both-legs', rule = true } = props
  const text = useQuantityWords()
  const wordsOf = useCutawayWords()
  const { travel } = fork
  const axis = strokeAxisOf(fork, view)
  const { playing, toggle } = useSlowStroke(fork.stroke, fullStroke, onStroke)
  const words = view === 'both-legs' ? wordsOf(fork) : null
  const says = say('cutaway.at', { stroke: text(fork.stroke, 'length'), travel: text(travel, 'length') })
  const grip = { fullStroke, onStroke, label: say('cutaway.grip'), says }
  const acts = (
    <div className="cutaway-acts screen-only">
      <Button kind="second" size="row" onPress={toggle}>
        {playing ? say('cutaway.stop') : say('cutaway.press')}
      </Button>
      <SectionTable fork={fork} more={props.tables} />
      {props.acts}
    </div>
  )
  return (
    <div className={`live-cutaway ${view}`}>
      <ForkCutaway
        fork={fork}
        view={view}
        label={says}
        grip={{ ...grip, keysElsewhere: rule }}
        {...(words ? { words } : {})}
        {...(props.balloons ? { balloons: props.balloons } : {})}
      />
      {rule && <StrokeRule grip={grip} stroke={fork.stroke} axis={axis} travel={travel} unit="mm" />}
      <div className="cutaway-foot">
        <Down word={say('set-up.down')} />
        {acts}
      </div>
      {props.otherwise && <p className="book">{say(`cutaway.otherwise.${props.otherwise}`)}</p>}
      {fullStroke < travel - 0.0005 && (
        <p className="book">{say('cutaway.full', { stroke: text(fullStroke, 'length') })}</p>
      )}
    </div>
  )
}
