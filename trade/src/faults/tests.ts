/**
 * Tests that tell causes apart: minutes, chance of a positive reading by cause and by none. One technician's estimate;
 * minutes are common practice.
 */
import type { FaultTest } from '@legwork/engine'

export const faultTests = [
  { id: 'T01', minutes: 4, falsePositive: 0.03, links: { C07: 0.85, C08: 0.75, C36: 0.6 } },
  { id: 'T02', minutes: 5, falsePositive: 0.08, links: { C07: 0.9 } },
  {
    id: 'T03',
    minutes: 6,
    falsePositive: 0.05,
    links: { C07: 0.8, C08: 0.8, C36: 0.8, C06: 0.65, C05: 0.3, C37: 0.2, C50: 0.05 },
  },
  { id: 'T04', minutes: 4, falsePositive: 0.04, links: { C50: 0.9 } },
  { id: 'T05', minutes: 7, falsePositive: 0.04, links: { C05: 0.8, C37: 0.8, C09: 0.15 } },
  { id: 'T06', minutes: 4, falsePositive: 0.06, links: { C09: 0.65, C49: 0.05 } },
  { id: 'T07', minutes: 3, falsePositive: 0.1, links: { C48: 0.9, C06: 0.7, C03: 0.4 } },
  { id: 'T08', minutes: 3, falsePositive: 0.03, links: { C06: 0.75, C48: 0.08 } },
  {
    id: 'T09',
    minutes: 5,
    falsePositive: 0.08,
    links: { C02: 0.6, C16: 0.75, C20: 0.55, C38: 0.6, C40: 0.5, C18: 0.2 },
  },
  { id: 'T10', minutes: 4, falsePositive: 0.04, links: { C21: 0.85 } },
  { id: 'T11', minutes: 3, falsePositive: 0.04, links: { C15: 0.85, C43: 0.05 } },
  { id: 'T12', minutes: 3, falsePositive: 0.04, links: { C43: 0.9, C15: 0.03 } },
  { id: 'T13', minutes: 5, falsePositive: 0.06, links: { C01: 0.6, C17: 0.7, C03: 0.4, C35: 0.7, C36: 0.4 } },
  { id: 'T14', minutes: 3, falsePositive: 0.03, links: { C17: 0.95, C18: 0.8, C40: 0.5 } },
  { id: 'T15', minutes: 10, falsePositive: 0.08, links: { C02: 0.8, C32: 0.4 } },
  { id: 'T16', minutes: 10, falsePositive: 0.02, links: { C03: 0.9, C24: 0.7, C25: 0.5 } },
  { id: 'T17', minutes: 3, falsePositive: 0.12, links: { C04: 0.8, C15: 0.4, C18: 0.4, C23: 0.5, C01: 0.3 } },
  {
    id: 'T18',
    minutes: 10,
    falsePositive: 0.04,
    links: { C26: 0.75, C28: 0.6, C22: 0.5, C24: 0.5, C34: 0.4, C33: 0.35, C35: 0.35, C29: 0.2, C45: 0.03, C46: 0.03 },
  },
  { id: 'T19', minutes: 10, falsePositive: 0.08, links: { C34: 0.6, C23: 0.6, C22: 0.5, C33: 0.5 } },
  {
    id: 'T20',
    minutes: 25,
    falsePositive: 0.04,
    links: { C22: 0.9, C33: 0.85, C34: 0.85, C24: 0.7, C25: 0.7, C35: 0.5, C26: 0.2 },
  },
  { id: 'T21', minutes: 2, falsePositive: 0.06, links: { C27: 0.7, C22: 0.4, C25: 0.4, C28: 0.4, C33: 0.4, C34: 0.4 } },
  { id: 'T22', minutes: 2, falsePositive: 0.04, links: { C28: 0.85, C26: 0.1 } },
  { id: 'T23', minutes: 8, falsePositive: 0.02, links: { C11: 0.9 } },
  { id: 'T24', minutes: 8, falsePositive: 0.05, links: { C12: 0.85 } },
  { id: 'T25', minutes: 8, falsePositive: 0.03, links: { C10: 0.92, C35: 0.35, C05: 0.15 } },
  { id: 'T26', minutes: 10, falsePositive: 0.06, links: { C13: 0.9, C10: 0.1, C47: 0.1 } },
  { id: 'T27', minutes: 10, falsePositive: 0.06, links: { C14: 0.9, C05: 0.4, C37: 0.4, C41: 0.35 } },
  {
    id: 'T28',
    minutes: 15,
    falsePositive: 0.08,
    links: { C16: 0.8, C02: 0.7, C20: 0.7, C38: 0.7, C21: 0.2, C40: 0.5 },
  },
  { id: 'T29', minutes: 15, falsePositive: 0.05, links: { C11: 0.8, C10: 0.8, C03: 0.7, C48: 0.4 } },
  { id: 'T30', minutes: 18, falsePositive: 0.03, links: { C15: 0.95 } },
  { id: 'T31', minutes: 10, falsePositive: 0.05, links: { C16: 0.8, C20: 0.4 } },
  { id: 'T32', minutes: 12, falsePositive: 0.03, links: { C20: 0.7, C40: 0.85 } },
  { id: 'T33', minutes: 8, falsePositive: 0.06, links: { C19: 0.85 } },
  { id: 'T34', minutes: 8, falsePositive: 0.05, links: { C39: 0.9 } },
  { id: 'T35', minutes: 12, falsePositive: 0.05, links: { C44: 0.9 } },
  { id: 'T36', minutes: 2, falsePositive: 0.1, links: { C45: 0.75, C46: 0.75, C47: 0.85, C13: 0.6, C14: 0.6 } },
  { id: 'T37', minutes: 5, falsePositive: 0.04, links: { C32: 0.9, C24: 0.1 } },
  { id: 'T38', minutes: 8, falsePositive: 0.05, links: { C41: 0.8 } },
  { id: 'T39', minutes: 3, falsePositive: 0.03, links: { C42: 0.9 } },
  { id: 'T40', minutes: 3, falsePositive: 0.01, links: { C30: 0.95, C31: 0.95 } },
] as const satisfies readonly FaultTest[]

export type TestId = (typeof faultTests)[number]['id']
