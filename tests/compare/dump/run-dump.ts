import type { Played } from './build.ts';
import type { StepOne } from './layout.ts';
import { stepDump, stepKeys, type Json } from './plan-dump.ts';
import { renamed } from './renames.ts';

/** Fields of facts that hold sentences; the text of the record is compared for them. */
const SENTENCES = new Set(['text', 'reason']);
/** Fields that name something by an id which only has to be the same throughout a run. */
const COUNTED = new Set(['fault', 'question']);

/** Facts by what they are about, whatever the ids of steps, stages and timers are. */
class FactNames {
  readonly #keys: ReadonlyMap<string, string>;
  readonly #steps: ReadonlyMap<string, StepOne>;
  readonly #timers: Played['timers'];
  readonly #counted = new Map<string, string>();

  constructor({ plan, timers }: Played) {
    this.#keys = stepKeys(plan.steps);
    this.#steps = new Map(plan.steps.map((step) => [step.id, step]));
    this.#timers = timers;
  }

  #stage(step: string, stage: string): string {
    const at = this.#steps.get(step)?.stages.findIndex(({ id }) => id === stage) ?? -1;
    return at < 0 ? `no stage ${stage}` : `stage ${at}`;
  }

  /** The attempt that an id like `boil#2` ends with stays. */
  #scope(value: string): string {
    const [, step = '', attempt = ''] = /^(.+)(#\d+)$/.exec(value) ?? [];
    const key = this.#keys.get(step);
    return key === undefined ? value : `${key}${attempt}`;
  }

  #timer(id: string): string {
    const timer = this.#timers.find((one) => one.id === id);
    if (!timer) return `no timer ${id}`;
    const stage = timer.stage === '' ? 'between steps' : this.#stage(timer.step, timer.stage);
    const key = this.#keys.get(timer.step) ?? timer.step;
    return `${renamed('role', timer.role)} of ${key}, ${stage}`;
  }

  #count(field: string, id: string): string {
    const known = this.#counted.get(`${field} ${id}`);
    if (known !== undefined) return known;
    const already = [...this.#counted.values()].filter((one) => one.startsWith(field)).length;
    const name = `${field} ${already + 1}`;
    this.#counted.set(`${field} ${id}`, name);
    return name;
  }

  /** @param body of the fact whose field it is */
  value(field: string, value: unknown, body: Readonly<Record<string, unknown>>): Json {
    if (SENTENCES.has(field)) return value === '' ? 'nothing' : 'something';
    if (field === 'plan') return undefined;
    if (field === 'steps') return this.#amended(value as readonly StepOne[]);
    if (field === 'startS') return this.#starts(value as Readonly<Record<string, number>>);
    if (typeof value !== 'string') return value as Json;
    if (field === 'kind') return renamed('fact', value);
    if (field === 'gate') return renamed('gate', value);
    if (field === 'step') return this.#keys.get(value) ?? value;
    if (field === 'stage') return this.#stage(String(body['step']), value);
    if (field === 'timer') return this.#timer(value);
    if (COUNTED.has(field)) return this.#count(field, value);
    return this.#scope(value);
  }

  #amended(steps: readonly StepOne[]): Json {
    return Object.fromEntries(
      steps.map((step) => [
        this.#keys.get(step.id) ?? step.id,
        stepDump(step, this.#keys, undefined),
      ]),
    );
  }

  #starts(startS: Readonly<Record<string, number>>): Json {
    return Object.fromEntries(
      Object.entries(startS).map(([id, s]) => [this.#keys.get(id) ?? id, s]),
    );
  }
}

/** The facts of a simulated run in their order, each with its time since the first. */
export function factDumps(played: Played): readonly Json[] {
  const names = new FactNames(played);
  const begunMs = played.facts[0]?.at.wallMs ?? 0;
  return played.facts.map(({ at, body }) => ({
    atS: (at.wallMs - begunMs) / 1000,
    ...Object.fromEntries(
      Object.entries(body).map(([field, value]) => [
        renamed('field', field),
        names.value(field, value, body as Readonly<Record<string, unknown>>),
      ]),
    ),
  }));
}
