import { hazards } from '../cautions/hazards.ts';
import { basis } from './basis.ts';
import { charts } from './charts.ts';
import { notices } from './notices.ts';
import { pours } from './pours.ts';
import { print } from './print.ts';
import { shopping } from './shopping.ts';
import { stepReasons } from './step-reasons.ts';

/** What the plan tells the household, and how it is printed. */
export const plan = {
  ...notices,
  ...hazards,
  ...stepReasons,
  ...shopping,
  ...print,
  ...pours,
  ...charts,
  ...basis,
};
