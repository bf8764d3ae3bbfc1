import { inEnglish } from '../../messages/temporary.ts';
import type { Gate, Plan, Stage, Step } from '../model/types.ts';
import { nameOf } from './sections.ts';
import { lengthText } from './times.ts';

const IN = '    ';

function stageLines({ title, detail, timers }: Stage, heading: string): readonly string[] {
  const clocks = timers.map(({ label, lengthS }) => `${inEnglish(label)}, ${lengthText(lengthS)}`);
  const told = clocks.length > 0 ? ` [${clocks.join('; ')}]` : '';
  const first = inEnglish(title) === heading ? [] : [`${IN}${inEnglish(title)}${told}`];
  return [
    ...first,
    ...detail.map((line) => `${IN}${inEnglish(title) === heading ? '' : IN}${inEnglish(line)}`),
  ];
}

/** Cautions in their words, where the hand is. Questions asked once a run are told once, apart. */
function cautionLines(plan: Plan, step: Step): readonly string[] {
  const asked = plan.gates.filter(({ id, scope }) => scope !== 'run' && step.gates.includes(id));
  const said = (ids: readonly string[]) => plan.cautions.filter(({ id }) => ids.includes(id));
  return [
    ...asked.map(
      ({ signal, ask, say }) =>
        `${IN}${signal}: ${inEnglish(say)} Confirm first: ${inEnglish(ask)}`,
    ),
    ...said(step.standing).map(({ signal, say }) => `${IN}${signal}: ${inEnglish(say)}`),
    ...said(step.after).map(({ signal, say }) => `${IN}${signal}, after it: ${inEnglish(say)}`),
  ];
}

/** What one kettle of a pour covers. */
function kettleLine({ picture, stages }: Step, number: number): string {
  if (picture?.kind === 'sink') {
    const own = picture.parts.filter(({ kettle }) => kettle === picture.kettle);
    return `${IN}${IN}Kettle ${number}: ${own.map(({ name }) => name).join('; ')}`;
  }
  if (picture?.kind === 'lanes') {
    const own = picture.stretches.filter(({ kettle }) => kettle === picture.kettle);
    const metres = own.reduce((sum, { lengthM }) => sum + lengthM, 0);
    return `${IN}${IN}Kettle ${number}: ${metres.toFixed(1)} m of lanes`;
  }
  return `${IN}${IN}Kettle ${number}: ${stages[0]?.detail.join(' ') ?? ''}`;
}

function pourLines(plan: Plan, fixture: string): readonly string[] {
  const own = plan.steps.filter((step) => step.fixture === fixture);
  const pours = own.filter(({ kind }) => kind === 'pour');
  const boil = own.find(({ kind }) => kind === 'boil');
  const [first] = pours;
  if (!boil || !first) return [];
  const within = first.needs.find(({ withinS }) => withinS !== undefined)?.withinS;
  return [
    `${nameOf(plan, fixture)}: ${pours.length} ${pours.length === 1 ? 'kettle' : 'kettles'} of boiling water, each followed by cold.`,
    ...boil.stages.flatMap((stage) => stageLines(stage, inEnglish(boil.title))),
    ...(within === undefined
      ? []
      : [`${IN}Pour within ${lengthText(within)} of boiling, else boil again.`]),
    ...first.stages.flatMap((stage) => (stage.id === 'cold' ? stageLines(stage, '') : [])),
    ...pours.map((pour, at) => kettleLine(pour, at + 1)),
    ...cautionLines(plan, boil).filter((line) => !cautionLines(plan, first).includes(line)),
    ...cautionLines(plan, first),
  ];
}

/** How each kind of work on each fixture goes, stage by stage: alike steps are told once. */
export function workLines(plan: Plan): readonly string[] {
  const seen = new Set<string>();
  const lines: string[] = [];
  for (const step of plan.steps) {
    const key = step.kind === 'boil' || step.kind === 'pour' ? 'pour' : step.kind;
    const about = `${key}/${step.fixture ?? step.id}`;
    if (step.kind === 'rest' || seen.has(about)) continue;
    seen.add(about);
    if (key === 'pour') {
      lines.push(...pourLines(plan, step.fixture ?? ''));
      continue;
    }
    lines.push(
      inEnglish(step.title),
      ...step.stages.flatMap((stage) => stageLines(stage, inEnglish(step.title))),
    );
    lines.push(...cautionLines(plan, step));
  }
  return lines;
}

/** Questions that are asked once a run, with what stands behind them. */
export function gateLines(plan: Plan): readonly string[] {
  const of = ({ signal, ask, say }: Gate): readonly string[] => [
    `${signal}: ${inEnglish(ask)}`,
    `${IN}${inEnglish(say)}`,
  ];
  return plan.gates.filter(({ scope }) => scope === 'run').flatMap(of);
}
