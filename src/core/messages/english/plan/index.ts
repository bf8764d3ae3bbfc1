import { basis } from './basis.ts';
import { charts } from './charts.ts';
import { notices } from './notices.ts';
import { pours } from './pours.ts';
import { print } from './print.ts';
import { reasons } from './reasons.ts';
import { shopping } from './shopping.ts';

/** What the plan tells the household, and how it is printed. */
export const plan = {
  ...notices,
  ...shopping,
  ...print,
  ...pours,
  ...charts,
  ...basis,
  ...reasons,
};
