import type { Dice } from '../dice.ts';
import type { Findings } from '../oracle/findings.ts';
import type { World } from '../world.ts';
import { momentOf, type Trouble } from './moment.ts';
import {
  fallsBack,
  comesRight,
  anHourOff,
  runsAhead,
  sleeps,
  naps,
  dies,
  otherTablet,
  storageFails,
  goesAway,
  pauses,
} from './device.ts';
import { fault, faultNowhere } from './faults.ts';
import {
  doubts,
  doubtsKettle,
  cleansAgain,
  skips,
  stops,
  repeats,
  dates,
  wrongWord,
  runsOut,
} from './slips.ts';

/** Lets one trouble come, by what goes on. */
export function trouble(world: World, dice: Dice, found: Findings): void {
  const { view } = world;
  if (view.status === 'closed' || view.status === 'drafting') return;
  const moment = momentOf(view);
  const { cleaning, resting, holding, pouring } = moment;
  const off = Math.abs(world.offsetS) > 1;
  const happens = dice.weighed<Trouble>([
    [fallsBack, cleaning ? 4 : 1],
    [comesRight, off ? (resting ? 12 : 4) : 0],
    [anHourOff, 1],
    [runsAhead, 1],
    [sleeps, 2],
    [naps, 2],
    [dies, pouring || holding ? 5 : 2],
    [otherTablet, 0.6],
    [storageFails, 0.7],
    [goesAway, pouring ? 4 : 2],
    [pauses, pouring ? 4 : 1.5],
    [fault, holding ? 12 : 1],
    [faultNowhere, 0.7],
    [doubts, 1],
    [doubtsKettle, 0.5],
    [cleansAgain, resting ? 2 : 1],
    [skips, 1.2],
    [stops, 0.6],
    [repeats, 0.6],
    [dates, resting ? (off ? 6 : 1.5) : 1.5],
    [wrongWord, view.askClock ? 10 : 0],
    [runsOut, pouring ? 14 : 0],
  ]);
  happens?.(world, dice, found, moment);
}
