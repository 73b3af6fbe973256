/** The app around the jobs: figures, sources, gates, what every page shares. */
export const appFrameWords = {
  'app.name': 'Legwork',
  'app.subtitle': 'Bench book and arithmetic for forks and rear shocks',

  'gate.blocked': 'Blocked',
  'gate.open': 'Open',

  'act.close': 'Close',
  'act.keep': 'Keep it',
  'act.back': 'Back',
  'act.later': 'Leave it for later',

  'figure.none': 'not known',
  'doubt.band': '{low} to {high}, nine times in ten.',
  'quantity.refused': 'You typed {came}; it must be {allowed}. {next}',
  'quantity.missing': 'Nothing is written here yet. Write a number.',

  'source.revision': 'rev {revision}',
  'source.page': 'page {page}',
  'source.somebody': 'somebody no longer named',
  'source.some-instrument': 'an instrument no longer listed',
} as const satisfies Record<string, string>
