import type { Section } from '../../model/message.ts';
import { ask } from './ask.ts';
import { choices } from './choices.ts';
import { countries } from './countries.ts';
import { done } from './done.ts';
import { fixture } from './fixture.ts';
import { offers } from './offers.ts';
import { pages } from './pages.ts';
import { quantities } from './quantities.ts';
import { walls } from './walls.ts';

/** Describing a kitchen: what can be added, what is asked, what was done. */
export const survey = {
  ...offers,
  ...choices,
  ...countries,
  ...quantities,
  ...ask,
  ...done,
  ...pages,
  ...fixture,
  ...walls,
} satisfies Section;
