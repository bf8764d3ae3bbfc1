import { message, type Message } from '../../messages/index.ts';
import type {
  FixtureReport,
  HoldReport,
  MethodReport,
  OverrideReport,
  Report,
} from '../model/report.ts';
import { deeper, line, type ReportLine, type ReportSection } from './line.ts';
import { faultLine, stepLines } from './steps.ts';

/** Tolerance of the clocks that is not worth a line, s. */
const WORTH_TELLING_S = 1;

/** Everything about one fixture, so that it can be read by itself. */
export function fixtureSection(
  report: Report,
  fixture: FixtureReport,
  zone: string,
): ReportSection {
  const own = <T extends { readonly fixture: string | null }>(all: readonly T[]): readonly T[] =>
    all.filter((row) => row.fixture === fixture.id);
  return {
    heading: message('report.fixture', {
      name: fixture.name,
      designation: message(`common.designation.${fixture.designation}`),
    }),
    lines: deeper([
      ...methodLines(fixture.method),
      ...own(report.overrides).map((row) => line(0, saidMessage(row))),
      line(0, message(`report.result.${fixture.done}`)),
      ...fixture.rests.map((hold) => holdLine(message('report.rest'), hold, zone)),
      ...fixture.holds.map((hold) => holdLine(hold.label, hold, zone)),
      ...kettleLines(fixture),
      ...own(report.rechecks).flatMap(({ wallMs, text, withdrawnWallMs }) => [
        line(0, message('report.recheck', { wallMs, zone, text })),
        ...(withdrawnWallMs === undefined
          ? []
          : [line(1, message('report.recheck.withdrawn', { wallMs: withdrawnWallMs, zone }))]),
      ]),
      ...own(report.overriddenGates).map(({ wallMs, ask, reason }) =>
        line(0, message('report.override', { wallMs, zone, ask, reason })),
      ),
      ...own(report.faults).map((fault) => faultLine(fault, zone)),
      ...(fixture.steps.length === 0 ? [] : [line(0, message('report.steps'))]),
      ...deeper(fixture.steps.flatMap((step) => stepLines(step, zone))),
    ]),
  };
}

function methodLines(method: MethodReport | null): readonly ReportLine[] {
  if (!method) return [line(0, message('report.method.none'))];
  const { minutes, cover, term, reason, source, sourceState, overriddenBy, question } = method;
  return [
    line(
      0,
      message('report.method', {
        method: message(`common.method.${method.method}`),
        minutes: minutes ?? 0,
        cover: cover && method.method !== 'cover',
        reason,
        ...(term && { term }),
      }),
    ),
    line(0, message('report.source', { source, state: message(`custom.state.${sourceState}`) })),
    ...(overriddenBy === null
      ? []
      : [line(0, message('report.replaces-row', { by: overriddenBy }))]),
    ...(question === null
      ? []
      : [
          line(
            0,
            message('report.open-when-planned', {
              ask: question.ask,
              untilThen: question.untilThen,
            }),
          ),
        ]),
  ];
}

/** Methods after which a cover is one more thing to do; of the others nothing is said of it. */
const COVERED_AFTER: readonly string[] = [
  'glow',
  'light-heat',
  'self-clean',
  'pour',
  'immerse',
  'steam',
  'boil-over',
  'clean',
];

function coverWord({ method, cover }: OverrideReport): 'with' | 'without' | 'unsaid' {
  if (cover === null || !COVERED_AFTER.includes(method)) return 'unsaid';
  return cover ? 'with' : 'without';
}

/** Who answered what about a fixture. */
export function saidMessage(override: OverrideReport): Message {
  const { saidBy, saidOn, method, minutes, text } = override;
  return message('report.said', {
    saidBy,
    saidOn,
    method: message(`common.method.${method}`),
    minutes: minutes ?? 0,
    cover: coverWord(override),
    text,
  });
}

function holdLine(name: Message, hold: HoldReport, zone: string): ReportLine {
  const { fromWallMs, toWallMs, provedS, neededS, addedS, onWordS, unproved, corrections } = hold;
  const short = toWallMs !== null && provedS + WORTH_TELLING_S < neededS;
  return line(
    0,
    message('report.hold', {
      name,
      fromWallMs,
      toWallMs: toWallMs ?? 0,
      zone,
      provedS,
      neededS,
      addedS,
      onWordS: onWordS > WORTH_TELLING_S ? onWordS : 0,
    }),
    ...(short ? [message('report.hold.short')] : []),
    ...(unproved ? [message('report.hold.unproved')] : []),
    ...corrections.map((text) => message('report.hold.dated', { text })),
  );
}

function kettleLines({ kettles }: FixtureReport): readonly ReportLine[] {
  return kettles.planned === 0 ? [] : [line(0, message('report.kettles', { ...kettles }))];
}
