import { around } from './around.ts';
import { crewSheets } from './crew.ts';
import { door } from './door.ts';
import { labels } from './labels.ts';
import { page } from './page.ts';
import { rabbi } from './rabbi.ts';
import { shopping } from './shopping.ts';
import { utensilForm } from './utensil-form.ts';

/** Handouts around the fixtures: labels, questions, covers, utensils, shopping, the door. */
export const handouts = {
  ...page,
  ...around,
  ...labels,
  ...rabbi,
  ...shopping,
  ...door,
  ...crewSheets,
  ...utensilForm,
};
