import type { Section } from '../../model/message.ts';

/** What can go wrong, and what to do (shared/fault-policies.json). */
export const faults = {
  'cautions.fault.burned.name': 'Somebody is burned',
  'cautions.fault.no-glow.name': 'It does not glow',
  'cautions.fault.flame-out.name': 'The flame went out',
  'cautions.fault.power-cut.name': 'The power failed',
  'cautions.fault.smoke.name': 'Smoke',
  'cautions.fault.fire.name': 'Fire',
  'cautions.fault.co-alarm.name': 'The CO alarm sounds',
  'cautions.fault.gas-smell.name': 'It smells of gas',
  'cautions.fault.unwell.name': 'Somebody is hurt or unwell',
  'cautions.fault.kettle-failed.name': 'The kettle failed',
  'cautions.fault.oven-lock.name': 'The oven door stays locked',
  'cautions.fault.breaker-tripped.name': 'A breaker tripped',
  'cautions.fault.cracked.name': 'Something cracked',
  'cautions.fault.undefined.name': 'Something else',
} satisfies Section;
