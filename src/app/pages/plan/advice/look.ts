import { createEffect, createSignal, on, onCleanup } from 'solid-js';
import {
  changesToTry,
  ranked,
  tried,
  triageSteps,
  type Advice,
  type AdviceList,
  type Planned,
  type Triage,
} from '../../../../core/advice/index.ts';
import { t } from '../../../context/language.ts';

export type Found = AdviceList & { readonly triage: Triage | undefined };
export type Progress = { readonly done: number; readonly of: number };

/** Lets the page draw and answer between two plans. */
const breathe = (): Promise<void> => new Promise((go) => setTimeout(go));

function namesOf() {
  return {
    kettle: t('advice.vessel.kettle'),
    'stove-kettle': t('advice.vessel.stove-kettle'),
    urn: t('advice.vessel.urn'),
  };
}

/** What would help a plan, tried one plan at a time; another plan ends the search, and its answer is gone. */
export function createLook(before: () => Planned) {
  const [found, setFound] = createSignal<Found>();
  const [progress, setProgress] = createSignal<Progress>();
  let turn = 0;
  const forget = () => {
    turn += 1;
    setFound(undefined);
    setProgress(undefined);
  };
  createEffect(on(() => before().plan, forget));
  onCleanup(() => (turn += 1));

  const look = async (): Promise<void> => {
    forget();
    const mine = turn;
    const now = before();
    const changes = changesToTry(now, { names: namesOf(), earliestWallMs: Date.now() });
    const all: Advice[] = [];
    for (const [done, change] of changes.entries()) {
      setProgress({ done: done + 1, of: changes.length });
      await breathe();
      if (turn !== mine) return;
      const one = tried(now, change);
      if (one) all.push(one);
    }
    const steps = triageSteps(now);
    let last = steps.next();
    while (!last.done) {
      await breathe();
      if (turn !== mine) return;
      last = steps.next();
    }
    setProgress(undefined);
    setFound({ ...ranked(all), triage: last.value });
  };
  return { found, progress, look };
}
