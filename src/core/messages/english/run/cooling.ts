import type { Message, Section } from '../../model/message.ts';

/**
 * Somebody is burned: what to do, one thing a sentence, in order. Sources: ANZCOR
 * Guideline 9.1.3 and others, in shared/sources/safety.json (burn-first-aid).
 */
export const cooling = {
  'cautions.fault.burned.line-1':
    'Hold the burn under cool running water, at once and for 20 minutes.',
  'cautions.fault.burned.line-2': 'Take off rings, watches and wet clothes; leave what sticks.',
  'cautions.fault.burned.line-3': 'Put nothing on it: no ice, no butter, no cream.',
  'cautions.fault.burned.line-4': 'Keep the rest of the body warm and dry.',
  'cautions.fault.burned.line-5':
    'After 20 minutes lay cling film or a clean cloth loosely over it; do not wrap it round.',

  'run.cooling.title': 'Cool the burn',
  'run.cooling.title-over': 'Now cover the burn',
  'run.cooling.since': ({ when }: { when: Message }, f) => `Under water since ${f.say(when)}`,
  'run.cooling.call': ({ number }: { number: string }) => `Call ${number} now if:`,
  'run.cooling.call-local': 'Call the local emergency number now if:',
  'run.cooling.doctor': ({ number }: { number: string }) =>
    `Does it need a doctor? Call ${number} if:`,
  'run.cooling.doctor-local': 'Does it need a doctor? Call the local emergency number if:',
  'run.cooling.call.where': 'it is on the face, a hand, a joint or the genitals',
  'run.cooling.call.large': 'it is larger than the burned person’s palm',
  'run.cooling.call.age': 'a child or an old person is burned',
  'run.cooling.call.deep': 'the skin is white, black or charred',
  'run.cooling.call.cause': 'electricity (turn it off first) or a chemical did it',
  'run.cooling.call.breath': 'breathing is hard, or smoke was breathed in',
  'run.cooling.go-on': 'Go on cooling while you call and wait.',
  'run.cooling.may-be-over':
    'The tablet did not see all of this time. If 20 minutes have passed under running water, say so.',
  'run.cooling.cooled': 'Cooled for 20 minutes, and covered',
  'run.cooling.early': 'End the clock early',
  'run.cooling.otherwise': 'It ended otherwise',
  'run.cooling.early.why': 'Why does the clock end? It goes into the record.',
  'run.cooling.taken-over': 'A doctor or an ambulance has taken over',
  'run.cooling.mistake': 'Started by mistake: nobody is burned',
  'run.cooling.keep': 'Keep cooling',
} satisfies Section;
