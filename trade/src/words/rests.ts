/** Rests and the leak-down. */
export const restWords = {
  'rest.soak.left': 'The rings soak: {minutes} min to go.',
  'rest.soak.over': 'The rings have soaked.',
  'rest.settle.left': 'The warm air settles: {minutes} min to go.',
  'rest.settle.over': 'The air has settled.',
  'rest.leak.left': '{minutes} min to go at least; 24 h finds small leaks too.',
  'rest.leak.over': 'Long enough for a gross leak; 24 h finds small leaks too.',
  'rest.no-clock': 'No clock here can tell how long it has rested: this tablet was started anew, or the clocks differ.',
  'rest.again': 'Wait again: {minutes} min from now',

  'prove.leak-down': 'Leak-down',
  'prove.leak-down.note': 'after every filling, 15 min later at the earliest',
  'prove.leak-down.how': 'as it shows before the pump comes off',
  'prove.leak-down-start.reading': 'Gauge, as it comes off',
  'prove.leak-down-start.act': 'Start the leak-down',
  'prove.leak-down-end.reading': 'Gauge, put on again',
  'prove.leak-down-end.act': 'Finish the leak-down',
  'prove.leak-down.expected': 'If nothing is lost it shows {reading}.',
  'prove.leak-down.lost': 'Lost {lost} in {minutes} min, more than the gauge’s doubt: find the leak.',
  'prove.leak-down.tight': 'In {minutes} min nothing was lost beyond the gauge’s doubt.',
  'prove.leak-down.no-clock': 'How long it took no clock can tell.',
} as const satisfies Record<string, string>
