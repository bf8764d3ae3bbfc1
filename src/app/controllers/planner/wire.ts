import { LanesRefusal, type LanesRefusalCode } from '../../../core/pouring/index.ts';
import { ScheduleRefusal, type RefusalCode } from '../../../core/schedule/index.ts';
import { OutOfRangeError } from '../../../core/units/index.ts';
import type { JobName, Progress } from './jobs.ts';
import { JobStopped } from './job-stopped.ts';

/** From the page to the worker. */
export type Asked =
  | { readonly id: number; readonly name: JobName; readonly input: unknown }
  | { readonly id: number; readonly stop: true };

/** From the worker to the page. */
export type Answered =
  | { readonly ready: true }
  | { readonly id: number; readonly progress: Progress }
  | { readonly id: number; readonly output: unknown }
  | { readonly id: number; readonly error: ErrorData };

/** An error as it is copied between threads, where a class and its fields would be lost. */
export type ErrorData = {
  readonly name: string;
  readonly message: string;
  readonly code: string;
  readonly input: string;
  readonly found: unknown;
  readonly allowed: string;
};

function text(value: unknown): string {
  return typeof value === 'string' ? value : '';
}

/** What can be copied as it is stays what it is; the rest is told in words. */
function copied(found: unknown): unknown {
  return typeof found === 'object' || typeof found === 'function' || typeof found === 'symbol'
    ? String(found)
    : found;
}

/** An error as data: its words and, for a refusal, field, value found and what is allowed. */
export function errorData(error: unknown): ErrorData {
  if (!(error instanceof Error))
    return { name: '', message: String(error), code: '', input: '', found: undefined, allowed: '' };
  const { name, message } = error;
  const fields: Partial<Record<keyof ErrorData, unknown>> = error;
  return {
    name,
    message,
    code: text(fields.code),
    input: text(fields.input),
    found: copied(fields.found),
    allowed: text(fields.allowed),
  };
}

function bare({ name, code, input, found, allowed }: ErrorData): Error {
  switch (name) {
    case 'OutOfRangeError':
      return new OutOfRangeError(input, found, allowed);
    case 'ScheduleRefusal':
      return new ScheduleRefusal(code as RefusalCode, input, found, allowed, '');
    case 'LanesRefusal':
      return new LanesRefusal(code as LanesRefusalCode, input, found, allowed, '');
    case 'JobStopped':
      return new JobStopped();
    default:
      return new Error();
  }
}

/** The error made anew, of the class it was, with the words it had. */
export function errorOf(data: ErrorData): Error {
  return Object.assign(bare(data), { message: data.message });
}
