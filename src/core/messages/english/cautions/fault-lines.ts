import type { Section } from '../../model/message.ts';

/** What to do about each fault (shared/fault-policies.json). */
export const faultLines = {
  'cautions.fault.no-glow.line-1':
    'Darken the room and look again: a glow shows late in a bright kitchen.',
  'cautions.fault.no-glow.line-2':
    'On hob glass the zone goes on and off by itself: that is normal, wait.',
  'cautions.fault.no-glow.line-3':
    'Check that it is on high, plugged in, and that the gas is full.',
  'cautions.fault.no-glow.line-4':
    'A coil that senses the pan, a plate with a red dot or a range that gets too little voltage may never redden bare. That is no breakage.',
  'cautions.fault.no-glow.line-5':
    'If it stays dark, turn it off and skip it: it is not purged. Ask which way it is to be purged; until the answer it stays out of use.',
  'cautions.fault.flame-out.line-1': 'Turn the knob off.',
  'cautions.fault.flame-out.line-2': 'Air the room for five minutes before you light it again.',
  'cautions.fault.flame-out.line-3': 'Light it again: the hold begins anew.',
  'cautions.fault.power-cut.line-1':
    'Turn every switch and knob off, so that nothing comes on by itself.',
  'cautions.fault.power-cut.line-2': 'When the power is back, begin each broken hold again.',
  'cautions.fault.smoke.line-1': 'Turn off what smokes. Keep an oven door shut.',
  'cautions.fault.smoke.line-2': 'Run the hood, open windows, and step out of the smoke.',
  'cautions.fault.smoke.line-3':
    'If it does not die down, everybody out and call the fire service.',
  'cautions.fault.fire.line-1':
    'Oven: keep the door shut and turn it off. Pan or burner: turn it off and put a lid on. Never water on grease.',
  'cautions.fault.fire.line-2':
    'Everybody out and call the fire service if it does not go out at once.',
  'cautions.fault.co-alarm.line-1': 'Turn the heat off.',
  'cautions.fault.co-alarm.line-2': 'Everybody out into fresh air, and call the emergency number.',
  'cautions.fault.co-alarm.line-3': 'Go back only when the people called say so.',
  'cautions.fault.gas-smell.line-1': 'No flame, no switch, no phone inside.',
  'cautions.fault.gas-smell.line-2':
    'Close the valve if it is at hand, everybody out, and call from outside.',
  'cautions.fault.unwell.line-1': 'Turn the heat off.',
  'cautions.fault.unwell.line-2': 'Help them first: fresh air, sit or lie down.',
  'cautions.fault.unwell.line-3':
    'Call the emergency number if it is grave or does not pass at once.',
  'cautions.fault.kettle-failed.line-1': 'Unplug it and leave it closed until it is cool.',
  'cautions.fault.kettle-failed.line-2':
    'Go on with another kettle, or boil again: water that has cooled is not poured.',
  'cautions.fault.oven-lock.line-1': 'Wait until it is cool: the lock opens late.',
  'cautions.fault.oven-lock.line-2':
    'Turn the breaker off for a minute, then try again. Do not force the door.',
  'cautions.fault.oven-lock.line-3': 'Have it repaired, or skip it and ask.',
  'cautions.fault.breaker-tripped.line-1': 'Turn off everything on that circuit.',
  'cautions.fault.breaker-tripped.line-2':
    'Move one heater to another circuit, then reset the breaker once.',
  'cautions.fault.breaker-tripped.line-3':
    'If it trips again, leave it off and call an electrician.',
  'cautions.fault.cracked.line-1': 'Stop pouring there and stand clear.',
  'cautions.fault.cracked.line-2': 'Let it cool by itself, without water.',
  'cautions.fault.cracked.line-3':
    'Mark it, ask how it is to be treated, and skip what cannot be done.',
  'cautions.fault.undefined.line-1': 'Turn off what is hot.',
  'cautions.fault.undefined.line-2': 'Write down what happened.',
  'cautions.fault.undefined.line-3': 'Go on when it is put right.',
} satisfies Section;
