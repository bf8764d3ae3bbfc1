import { NO_REASON } from '../../run/index.ts';
import { message, type Message } from '../../messages/index.ts';
import { standing } from '../gather/attempt-history.ts';
import type { AttemptReport, FaultReport, StageReport, StepReport } from '../model/report.ts';
import { deeper, line, type ReportLine } from './line.ts';

/** The standing attempt in one line; under it what was broken off or done before. */
export function stepLines(step: StepReport, zone: string): readonly ReportLine[] {
  const last = standing(step);
  if (!last) return [];
  const before = step.attempts.slice(0, -1);
  return [
    line(
      0,
      message('report.step', { step: step.title, attempt: attemptText(last, zone), by: last.by }),
    ),
    ...deeper([
      ...before.map((attempt) =>
        line(
          0,
          message('report.step.void', {
            attempt: attemptText(attempt, zone),
            because: attempt.replacedBecause ?? NO_REASON,
          }),
        ),
      ),
      ...(step.kind === 'cool' ? last.stages.flatMap((stage) => testLine(stage, zone)) : []),
      ...last.stages
        .filter((stage) => stage.brokeOff !== null)
        .map((stage) => brokenLine(stage, zone)),
    ]),
  ];
}

/** How it was tried before a hand touched it, in the words of whoever tried. */
function testLine({ said, toWallMs }: StageReport, zone: string): readonly ReportLine[] {
  if (said === null || toWallMs === null) return [];
  return [line(0, message('report.step.tried', { wallMs: toWallMs, zone, said }))];
}

/** With the time that was proved until then: a rest of 23 hours is not a rest of none. */
function brokenLine(stage: StageReport, zone: string): ReportLine {
  return line(
    0,
    message('report.step.broke-off', {
      wallMs: stage.toWallMs ?? stage.fromWallMs,
      zone,
      stage: stage.title,
      because: stage.brokeOff ?? NO_REASON,
    }),
    ...stage.holds.map(({ provedS, neededS }) =>
      message('report.step.proved', { provedS, neededS }),
    ),
  );
}

function attemptText(attempt: AttemptReport, zone: string): Message {
  const { startedWallMs, endedWallMs, madeSafe } = attempt;
  const outcome = message(`report.outcome.${attempt.outcome}`);
  const silent = attempt.outcome === 'done' || attempt.outcome === 'void';
  const said = {
    outcome,
    reason: silent ? NO_REASON : attempt.reason,
    safe: madeSafe && attempt.outcome !== 'done',
  };
  if (startedWallMs === null) return message('report.attempt', said);
  return endedWallMs === null
    ? message('report.attempt.since', { ...said, wallMs: startedWallMs, zone })
    : message('report.attempt.from-to', {
        ...said,
        fromWallMs: startedWallMs,
        toWallMs: endedWallMs,
        zone,
      });
}

export function faultLine(fault: FaultReport, zone: string): ReportLine {
  const { name, stepTitle, text, wallMs } = fault;
  return line(
    0,
    stepTitle === null
      ? message('report.fault', { wallMs, zone, name, text })
      : message('report.fault-at', { wallMs, zone, name, step: stepTitle, text }),
    faultEnd(fault, zone),
  );
}

/** How a fault ended, or that it did not. */
export function faultEnd({ kind, cooled, clearedWallMs }: FaultReport, zone: string): Message {
  if (cooled && clearedWallMs !== null)
    return message(`report.cooling.${cooled.as}`, {
      wallMs: clearedWallMs,
      zone,
      cooledS: cooled.cooledS,
    });
  if (kind === 'burned') return message('report.cooling.open');
  return clearedWallMs === null
    ? message('report.fault.not-cleared')
    : message('report.fault.cleared', { wallMs: clearedWallMs, zone });
}
