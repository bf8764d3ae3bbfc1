import { inEnglish } from '../../messages/temporary.ts';
import { standing } from '../attempt-history.ts';
import type {
  AttemptReport,
  FixtureReport,
  HoldReport,
  Report,
  StageReport,
  StepReport,
} from '../types.ts';
import {
  DESIGNATION_WORDS,
  DONE_WORDS,
  lengthText,
  METHOD_WORDS,
  oneLine,
  OUTCOME_WORDS,
  sentence,
} from '../words.ts';

export type FormatTime = (wallMs: number) => string;

/** Tolerance of the clocks that is not worth a line, s. */
const WORTH_TELLING_S = 1;

/** Everything about one fixture, so that it can be read by itself. */
export function fixtureLines(
  record: Report,
  fixture: FixtureReport,
  formatTime: FormatTime,
): readonly string[] {
  const own = <T extends { readonly fixture: string | null }>(all: readonly T[]): readonly T[] =>
    all.filter((one) => one.fixture === fixture.id);
  return [
    `${oneLine(fixture.name)} (${DESIGNATION_WORDS[fixture.designation]})`,
    ...indent([
      ...methodLines(fixture),
      ...own(record.overrides).map((one) =>
        `Said by ${oneLine(one.saidBy)} on ${oneLine(one.saidOn)}: ${METHOD_WORDS[one.method]}${
          one.minutes === null ? '' : `, ${one.minutes} min`
        }${coverText(one.cover)}. ${sentence(one.text)}`.trim(),
      ),
      `Result: ${DONE_WORDS[fixture.done]}.`,
      ...fixture.rests.map((hold) => holdLine('Rest', hold, formatTime)),
      ...fixture.holds.map((hold) => holdLine(oneLine(hold.label), hold, formatTime)),
      ...kettleLines(fixture),
      ...own(record.doubts).map((one) => `Doubt, ${formatTime(one.wallMs)}: ${sentence(one.text)}`),
      ...own(record.overriddenGates).map(
        (one) =>
          `Confirmation overridden, ${formatTime(one.wallMs)}: “${oneLine(one.ask)}” Reason: ${sentence(one.reason)}`,
      ),
      ...own(record.faults).map((one) => faultLine(one, formatTime)),
      ...(fixture.steps.length === 0 ? [] : ['Steps:']),
      ...indent(fixture.steps.flatMap((step) => stepLines(step, formatTime))),
    ]),
  ];
}

function methodLines({ method }: FixtureReport): readonly string[] {
  if (!method) return ['Method: none in this plan.'];
  const minutes = method.minutes === null ? '' : `, ${method.minutes} min`;
  const cover = method.cover && method.method !== 'cover' ? ', then cover' : '';
  const term = method.term === null ? '' : ` (${oneLine(method.term)})`;
  const unchecked = method.checked ? '' : ' (cited from memory, not yet checked)';
  const ground =
    method.overriddenBy === null
      ? []
      : [`Replaces the row of the custom, by the word of: ${sentence(method.overriddenBy)}`];
  return [
    `Method: ${METHOD_WORDS[method.method]}${minutes}${cover}${term}. ${sentence(method.reason)}`,
    `Source: ${oneLine(method.source)}${unchecked}.`,
    ...ground,
    ...(method.question === null
      ? []
      : [
          `Open when planned: ${oneLine(inEnglish(method.question.ask))} Until then: ${sentence(inEnglish(method.question.untilThen))}`,
        ]),
  ];
}

function coverText(cover: boolean | null): string {
  if (cover === null) return '';
  return cover ? ', with a cover' : ', without a cover';
}

function holdLine(name: string, hold: HoldReport, formatTime: FormatTime): string {
  const to = hold.toWallMs === null ? 'not over' : `to ${formatTime(hold.toWallMs)}`;
  const asked =
    hold.addedS > 0
      ? `asked ${lengthText(hold.neededS)}, ${lengthText(hold.addedS)} of it added by hand`
      : `asked ${lengthText(hold.neededS)}`;
  const word =
    hold.onWordS > WORTH_TELLING_S
      ? `; ${lengthText(hold.onWordS)} of it rest on a person’s word`
      : '';
  const short =
    hold.toWallMs !== null && hold.provedS + WORTH_TELLING_S < hold.neededS
      ? ' Shorter than asked.'
      : '';
  const doubt = hold.unproved ? ' Doubtful: nobody saw what happened in a gap.' : '';
  const said = hold.corrections.map((one) => ` Dated by hand: ${sentence(one)}`).join('');
  return `${name}: ${formatTime(hold.fromWallMs)} ${to}, ${lengthText(hold.provedS)} proved (${asked}${word}).${short}${doubt}${said}`;
}

function kettleLines({ kettles }: FixtureReport): readonly string[] {
  if (kettles.planned === 0) return [];
  const cold =
    kettles.poured === 0
      ? ''
      : kettles.cold === kettles.poured
        ? ', cold water after each'
        : `, cold water after ${kettles.cold}`;
  const voided =
    kettles.voided === 0
      ? ''
      : ` ${kettles.voided} poured before ${kettles.voided === 1 ? 'does' : 'do'} not count.`;
  return [`Kettles poured: ${kettles.poured} of ${kettles.planned}${cold}.${voided}`];
}

export function faultLine(fault: Report['faults'][number], formatTime: FormatTime): string {
  const about = fault.stepTitle === null ? '' : ` at “${oneLine(fault.stepTitle)}”`;
  const cleared =
    fault.clearedWallMs === null
      ? 'Not reported as put right.'
      : `Put right ${formatTime(fault.clearedWallMs)}.`;
  const text = fault.text === '' ? '' : `: ${oneLine(fault.text)}`;
  return `Fault, ${formatTime(fault.wallMs)}: ${oneLine(fault.name)}${about}${text}. ${cleared}`;
}

/** The standing attempt in one line; under it what was broken off or done before. */
export function stepLines(step: StepReport, formatTime: FormatTime): readonly string[] {
  const last = standing(step);
  if (!last) return [];
  const before = step.attempts.slice(0, -1);
  return [
    `${oneLine(step.title).replace(/\.$/, '')}: ${attemptText(last, formatTime)}`,
    ...indent([
      ...before.map(
        (one) =>
          `Does not count: ${attemptText(one, formatTime)} Done again because: ${sentence(one.replacedBecause ?? '')}`,
      ),
      ...last.stages
        .filter((stage) => stage.brokeOff !== null)
        .map((stage) => brokenLine(stage, formatTime)),
    ]),
  ];
}

/** With the time that was proved until then: a rest of 23 hours is not a rest of none. */
function brokenLine(stage: StageReport, formatTime: FormatTime): string {
  const proved = stage.holds
    .map((hold) => ` ${lengthText(hold.provedS)} of ${lengthText(hold.neededS)} proved.`)
    .join('');
  return `Broke off, ${formatTime(stage.toWallMs ?? stage.fromWallMs)}: “${oneLine(stage.title)}” ${sentence(stage.brokeOff ?? '')}${proved}`;
}

function attemptText(attempt: AttemptReport, formatTime: FormatTime): string {
  const { startedWallMs, endedWallMs } = attempt;
  const times =
    startedWallMs === null
      ? ''
      : endedWallMs === null
        ? `, since ${formatTime(startedWallMs)}`
        : `, ${formatTime(startedWallMs)} to ${formatTime(endedWallMs)}`;
  const because =
    attempt.reason === '' || attempt.outcome === 'done' || attempt.outcome === 'void'
      ? ''
      : ` Reason: ${sentence(attempt.reason)}`;
  const safe = attempt.madeSafe && attempt.outcome !== 'done' ? ' It was made safe.' : '';
  return `${OUTCOME_WORDS[attempt.outcome]}${times}.${because}${safe}`;
}

export function indent(lines: readonly string[]): readonly string[] {
  return lines.map((line) => `  ${line}`);
}
