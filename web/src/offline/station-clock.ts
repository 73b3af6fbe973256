/**
 * This page's monotonic clock: it goes on whatever is done to the time of day. It begins anew when the page is loaded again;
 * what rested over that is told by the server's receipts.
 */
import type { StationClock } from '@legwork/trade'

const boot = crypto.randomUUID()

/** @example stationClock().reading // 4213, in ms since the page was loaded */
export const stationClock = (): StationClock => ({ boot, reading: Math.round(performance.now()) })
