/** The demo workshop's units: what stands on their sheets beside the spring's dimensions. All invented. */
import { toSI } from '@legwork/engine'
import type { Body, DamperKind, UnitKind } from '../sheets/sheet.ts'

export interface DemoUnit {
  key: string
  rider: string
  kind: UnitKind
  body: Body
  damper: DamperKind
  description: string
  sheet: { name: string; revision: string }
  /** Forks only. */
  chassis: {
    /** [m] */
    freeLength: number
    /** Bath oil per leg [m³]: left (spring), right (damper). */
    bathOil: readonly [number, number]
    /** [N·m], left and right. */
    footTorque: readonly [number, number]
    /** [Pa] gauge; null for a coil. */
    maxPressure: number | null
  } | null
  clicks: { rebound: number; compression: number | null }
}

const ml = 1e-6
/** Invented sheets share one maximum by spring kind and size. */
const fork = (
  freeLength: number,
  oil: readonly [number, number],
  footTorque: readonly [number, number],
  maxPressure: number | null,
) => ({
  freeLength,
  bathOil: [oil[0] * ml, oil[1] * ml] as const,
  footTorque,
  maxPressure: maxPressure === null ? null : toSI(maxPressure, 'psi'),
})

export const demoUnits: readonly DemoUnit[] = [
  {
    key: 'U01',
    rider: 'R01',
    kind: 'fork-air',
    body: 'single-crown',
    damper: 'sealed-cartridge',
    description: '35 mm air fork, 150 mm',
    sheet: { name: 'Q35-150', revision: 'C' },
    chassis: fork(0.165, [10, 10], [5.5, 5.5], 140),
    clicks: { rebound: 18, compression: null },
  },
  {
    key: 'U02',
    rider: 'R02',
    kind: 'fork-air',
    body: 'single-crown',
    damper: 'sealed-cartridge',
    description: '34 mm air fork, 120 mm, remote lever',
    sheet: { name: 'Q34-120', revision: 'B' },
    chassis: fork(0.135, [10, 10], [5.5, 5.5], 130),
    clicks: { rebound: 20, compression: null },
  },
  {
    key: 'U03',
    rider: 'R03',
    kind: 'fork-air',
    body: 'single-crown',
    damper: 'bladder-cartridge',
    description: '36 mm air fork, 160 mm',
    sheet: { name: 'Q36-160', revision: 'A' },
    chassis: fork(0.175, [15, 15], [7, 7], 130),
    clicks: { rebound: 16, compression: 12 },
  },
  {
    key: 'U04',
    rider: 'R04',
    kind: 'fork-air',
    body: 'single-crown',
    damper: 'bladder-cartridge',
    description: '38 mm air fork, 170 mm',
    sheet: { name: 'Q38-170', revision: 'A' },
    chassis: fork(0.185, [15, 15], [7, 7], 130),
    clicks: { rebound: 16, compression: 14 },
  },
  {
    key: 'U05',
    rider: 'R05',
    kind: 'fork-air',
    body: 'single-crown',
    damper: 'sealed-cartridge',
    description: '32 mm air fork, 100 mm',
    sheet: { name: 'Q32-100', revision: 'D' },
    chassis: fork(0.115, [8, 8], [5, 5], 140),
    clicks: { rebound: 18, compression: null },
  },
  {
    key: 'U06',
    rider: 'R06',
    kind: 'fork-air',
    body: 'single-crown',
    damper: 'sealed-cartridge',
    description: '35 mm air fork, 140 mm',
    sheet: { name: 'Q35-140', revision: 'B' },
    chassis: fork(0.155, [15, 15], [5.5, 5.5], 140),
    clicks: { rebound: 18, compression: null },
  },
  {
    key: 'U07',
    rider: 'R10',
    kind: 'fork-air',
    body: 'dual-crown',
    damper: 'sealed-cartridge',
    description: '40 mm dual-crown air fork, 200 mm',
    sheet: { name: 'Q40-200', revision: 'A' },
    chassis: fork(0.215, [20, 20], [8, 8], 120),
    clicks: { rebound: 20, compression: 16 },
  },
  {
    key: 'U08',
    rider: 'R08',
    kind: 'fork-coil',
    body: 'single-crown',
    damper: 'open-bath',
    description: '35 mm coil fork, 150 mm',
    sheet: { name: 'Q35C-150', revision: 'B' },
    chassis: fork(0.165, [10, 10], [6, 6], null),
    clicks: { rebound: 12, compression: null },
  },
  {
    key: 'U09',
    rider: 'R07',
    kind: 'fork-air',
    body: 'single-crown',
    damper: 'sealed-cartridge',
    description: '34 mm air fork, 130 mm',
    sheet: { name: 'Q34-130', revision: 'B' },
    chassis: fork(0.145, [10, 10], [5.5, 5.5], 130),
    clicks: { rebound: 20, compression: null },
  },
  {
    key: 'U10',
    rider: 'R01',
    kind: 'shock-air',
    body: 'in-line',
    damper: 'in-line-ifp',
    description: 'in-line air shock, 210 × 55',
    sheet: { name: 'S210-55', revision: 'B' },
    chassis: null,
    clicks: { rebound: 14, compression: null },
  },
  {
    key: 'U11',
    rider: 'R03',
    kind: 'shock-air',
    body: 'piggyback',
    damper: 'piggyback-ifp',
    description: 'piggyback air shock, 230 × 65',
    sheet: { name: 'S230-65', revision: 'A' },
    chassis: null,
    clicks: { rebound: 16, compression: 10 },
  },
  {
    key: 'U12',
    rider: 'R08',
    kind: 'shock-coil',
    body: 'piggyback',
    damper: 'piggyback-ifp',
    description: 'coil shock, 230 × 65',
    sheet: { name: 'S230C-65', revision: 'A' },
    chassis: null,
    clicks: { rebound: 16, compression: 12 },
  },
  {
    key: 'U13',
    rider: 'R09',
    kind: 'shock-air',
    body: 'in-line',
    damper: 'in-line-ifp',
    description: 'in-line air shock, 190 × 45, lever',
    sheet: { name: 'S190-45', revision: 'C' },
    chassis: null,
    clicks: { rebound: 14, compression: null },
  },
  {
    key: 'U14',
    rider: 'R12',
    kind: 'shock-air',
    body: 'in-line',
    damper: 'in-line-ifp',
    description: 'air shock, 205 × 65, cross-bolt mount',
    sheet: { name: 'S205-65', revision: 'A' },
    chassis: null,
    clicks: { rebound: 14, compression: null },
  },
  {
    key: 'U15',
    rider: 'R10',
    kind: 'shock-coil',
    body: 'piggyback',
    damper: 'piggyback-ifp',
    description: 'coil shock, 250 × 75',
    sheet: { name: 'S250C-75', revision: 'A' },
    chassis: null,
    clicks: { rebound: 18, compression: 14 },
  },
  {
    key: 'U16',
    rider: 'R11',
    kind: 'fork-coil',
    body: 'single-crown',
    damper: 'open-bath',
    description: '32 mm coil fork, 120 mm, hand-me-down',
    sheet: { name: 'Q32C-120', revision: 'A' },
    chassis: fork(0.135, [10, 10], [6, 6], null),
    clicks: { rebound: 10, compression: null },
  },
]
