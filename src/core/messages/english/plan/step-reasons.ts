import type { Message, Section } from '../../model/message.ts';

type Expected = { lengthS: number; reports: number };

function reportsText(reports: number): string {
  return reports === 1 ? 'one report' : `${reports} reports`;
}

/** Why each step is done, and what earlier runs showed about it: told with the plan, not at the work. */
export const stepReasons = {
  'steps.prepare.ask.reason': 'What is not answered is done the stricter way.',
  'steps.prepare.gather.reason': 'Nothing can be fetched with a boiling kettle in hand.',
  'steps.prepare.alarms.reason': 'They watch what no one can smell.',
  'steps.prepare.clear.reason': 'Cleaning and pouring need bare surfaces.',
  'steps.clean.reason': 'Cleaning is what this fixture needs.',
  'steps.clean.reason-before-rest':
    'What clings to it would shield it from the purge, and hot cleaning counts as use: it comes before the rest.',
  'steps.clean.reason-resting':
    'What clings to it would shield it from the purge. It rests already, and hot cleaning would begin its rest anew.',
  'steps.clean.reason-vessel': 'Scale and grease would shield its walls.',
  'steps.unplug.reason': 'Water and mains do not meet: its plug is out before it is washed.',
  'steps.thaw.reason': 'What is frozen in cannot be cleaned out.',
  'steps.switch-on.reason': 'Food keeps in a cool box for some hours only.',
  'steps.rest.reason': ({ restHours }: { restHours: number }, f) =>
    `It must not have been used hot within ${f.shortNumber(restHours)} hours of its purge (eino ben yomo).`,
  'steps.parts.reason': 'What is not purged is replaced or covered.',
  'steps.mark.reason': 'So that nobody undoes the work by mistake.',
  'steps.boil.reason':
    'It is poured from the vessel that was on the fire (kli rishon), at a rolling boil.',
  'steps.boil-over.reason':
    'What purges must itself be kosher: boiling water in it and over its rim purges it (hagalah).',
  'steps.glow.cool-reason': 'It burns the hand long after the glow is gone.',
  'steps.oven.cool-reason': 'It burns the hand long after it is off.',
  'steps.experience.boil': ({ lengthS, reports }: Expected, f) =>
    `From your last run: it boils in ${f.about(lengthS)} (${reportsText(reports)}).`,
  'steps.experience.glow': ({ lengthS, reports }: Expected, f) =>
    `From your last run: it glows after ${f.about(lengthS)} (${reportsText(reports)}).`,
  'steps.experience.heat-up': ({ lengthS, reports }: Expected, f) =>
    `From your last run: it is at its highest after ${f.about(lengthS)} (${reportsText(reports)}).`,
  'steps.experience.pour': ({ lengthS, reports }: Expected, f) =>
    `From your last run: this kettle is empty after ${f.about(lengthS)} (${reportsText(reports)}).`,
  'steps.reason-and-experience': (
    { reason, experience }: { reason: Message; experience: Message },
    f,
  ) => `${f.say(reason)} ${f.say(experience)}`,
} satisfies Section;
