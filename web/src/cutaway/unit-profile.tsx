/** A unit's small profile in a list: the words beside it say what it is, so it isn't spoken. */
import { type ProfileFill, type ProfileOf, profileShapes } from './profile-shapes.ts'

const paints: Readonly<Record<ProfileFill, string>> = {
  steel: 'var(--steel)',
  alloy: 'var(--alloy)',
  ink: 'var(--ink)',
  none: 'none',
}

function Profile({ of, scale, width, height }: { of: ProfileOf; scale: number; width: number; height: number }) {
  return (
    <svg
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      aria-hidden="true"
      focusable="false"
      style={{ display: 'block' }}
    >
      {profileShapes(of, scale, height / 2).map(({ name, d, fill, width: pen }) => (
        <path
          key={name + d}
          d={d}
          fill={paints[fill]}
          stroke="var(--ink)"
          strokeWidth={pen}
          strokeLinejoin="round"
          strokeLinecap="round"
        />
      ))}
    </svg>
  )
}

/** One scale for a whole page: 0.172 px/mm on a tablet, 0.118 on a phone. */
export function UnitProfile({ of }: { of: ProfileOf }) {
  return (
    <>
      <span className="tablet-up">
        <Profile of={of} scale={0.172} width={150} height={38} />
      </span>
      <span className="phone-only">
        <Profile of={of} scale={0.118} width={94} height={28} />
      </span>
    </>
  )
}
