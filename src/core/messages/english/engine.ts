import type { Message, Section } from '../model/message.ts';

type Step = { step: Message };

/** What the run engine says: why something cannot be, and what to do instead. */
export const engine = {
  'engine.halted.drafting': 'The run has not started.',
  'engine.halted.held': 'The run is paused.',
  'engine.halted.suspended': 'The run is suspended.',
  'engine.halted.reviewing': 'First say what happened while the app was away.',
  'engine.halted.closing': 'The run is being stopped.',
  'engine.halted.closed': 'The run is closed.',

  'engine.step.ends-by-itself': 'This part ends by its clock.',
  'engine.step.not-due': 'The time is not over yet.',
  'engine.step.cold-first': 'Boiling water was poured here. Confirm the cold water first.',
  'engine.step.hot': 'It is hot. Stop the step and make it safe.',
  'engine.step.went-on': ({ step }: Step, f) => `Did “${f.say(step)}” go on without a break?`,
  'engine.step.make-safe': ({ step }: Step, f) => `Make “${f.say(step)}” safe.`,
  'engine.step.make-safe-cold': ({ makeSafe, cold }: { makeSafe: Message; cold: Message }, f) =>
    `${f.say(makeSafe)} ${f.say(cold)}`,
  'engine.step.pour-now': 'Pour now: when this time is over the water is too cool',
  'engine.step.use-within': ({ step }: Step, f) => `Use within this time after “${f.say(step)}”`,

  'engine.because.nothing-heated': 'Nothing was heated.',
  'engine.because.heated-again': 'It is heated again.',
  'engine.because.all-settled': 'All steps are settled.',
  'engine.because.stopped': 'Stopped.',
  'engine.because.paused': 'Paused.',
  'engine.because.interrupted': 'It was interrupted and cannot be repeated.',
  'engine.because.broke-off': 'It broke off.',
  'engine.because.nobody-saw': 'Nobody saw whether it broke off.',
  'engine.because.doubt': 'It was used or touched.',
  'engine.because.answer-withdrawn': 'An answer about the clock was taken back.',

  'engine.need.open': ({ step }: Step, f) => `First: “${f.say(step).replace(/\.$/, '')}”.`,
  'engine.need.undone': ({ step }: Step, f) =>
    `“${f.say(step)}” was not finished. Repeat it, or skip it with a reason.`,
  'engine.need.left-out': ({ step }: Step, f) =>
    `“${f.say(step)}” was left out. Repeat it, or leave this out too.`,
  'engine.need.late': ({ step }: Step, f) => `Too long since “${f.say(step)}”. Repeat it first.`,

  'engine.rest-day.inside': ({ day }: { day: Message }, f) =>
    `It is ${f.say(day)}. No work begins until it is over.`,
  'engine.rest-day.reaches': ({ day }: { day: Message }, f) =>
    `It would not be over before ${f.say(day)} begins. Begin it when ${f.say(day)} is over.`,

  'engine.deadline.inside': ({ deadline }: { deadline: Message }, f) =>
    `It is past ${f.say(deadline)}. Nothing is purged any more.`,
  'engine.deadline.reaches': ({ deadline }: { deadline: Message }, f) =>
    `It would not be over before ${f.say(deadline)}.`,

  'engine.gate.settling': ({ say, leftMin }: { say: Message; leftMin: number }, f) =>
    `Wait ${f.number(leftMin)} min until it has settled: ${f.say(say)}`,
  'engine.gate.answered-no': ({ ask }: { ask: Message }, f) => `Answered no: ${f.say(ask)}`,
  'engine.gate.confirm-first': ({ ask }: { ask: Message }, f) => `Confirm first: ${f.say(ask)}`,
  'engine.gate.danger': 'This guards against death or grave injury. It cannot be overridden.',
  'engine.gate.undescribed': ({ id }: { id: string }) =>
    `The plan does not describe its safety question “${id}”.`,

  'engine.resource.too-few': (
    {
      name,
      unit,
      wanted,
      capacity,
    }: { name: Message; unit: Message; wanted: number; capacity: number },
    f,
  ) =>
    `This needs ${f.shortNumber(wanted)} ${f.say(unit)} of ${f.say(name)}; there is ${f.shortNumber(capacity)}.`,
  'engine.resource.hands': ({ steps }: { steps: readonly Message[] }, f) =>
    `All hands are busy with ${f.list(steps.map((step) => `“${f.say(step)}”`))}.`,
  'engine.resource.burners': ({ lit }: { lit: number }, f) =>
    `Burner limit reached: ${f.number(lit)} ${f.plural(lit, { one: 'is', other: 'are' })} lit.`,
  'engine.resource.place': ({ name, steps }: { name: Message; steps: readonly Message[] }, f) =>
    `Nothing is hot beside a pour, and nothing runs on it. At ${f.say(name)} there is still ${f.list(steps.map((step) => `“${f.say(step)}”`))}.`,
  'engine.resource.watch': ({ steps }: { steps: readonly Message[] }, f) =>
    `Nobody pours and watches a burner at once. Wait for ${f.list(steps.map((step) => `“${f.say(step)}”`))}, or have somebody watch who does nothing else.`,
  'engine.resource.in-use': ({ name, steps }: { name: Message; steps: readonly Message[] }, f) =>
    `${f.say(name)} is in use by ${f.list(steps.map((step) => `“${f.say(step)}”`))}.`,
  'engine.resource.taken': (
    {
      name,
      unit,
      used,
      capacity,
      steps,
    }: {
      name: Message;
      unit: Message;
      used: number;
      capacity: number;
      steps: readonly Message[];
    },
    f,
  ) =>
    `${f.say(name)}: ${f.shortNumber(used)} of ${f.shortNumber(capacity)} ${f.say(unit)} taken by ${f.list(steps.map((step) => `“${f.say(step)}”`))}.`,

  'engine.fault.undefined': 'Something went wrong',
  'engine.fault.undefined.off': 'Turn off what is hot.',
  'engine.fault.undefined.write': 'Write down what happened.',
  'engine.fault.undefined.go-on': 'Go on when it is put right.',
  'engine.storage.down': 'Nothing can be written down now.',
  'engine.storage.no-progress':
    'Nothing can be written down now, so nothing goes on. Free some room or export the journal.',
} satisfies Section;
