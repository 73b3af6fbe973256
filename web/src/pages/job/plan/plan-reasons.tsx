/** Why a service: each reason on a line of its own. */
export function Reasons({ reasons }: { reasons: readonly string[] }) {
  return reasons.map((reason) => (
    <span key={reason} className="reason" translate="no">
      {reason}
    </span>
  ))
}
