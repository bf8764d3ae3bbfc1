import type { MethodId } from '../../kitchen/index.ts';
import { message, type Message } from '../../messages/index.ts';

/** Terms of the trade for methods that a household sets itself. */
export const TERMS: Readonly<Partial<Record<MethodId, Message>>> = {
  glow: message('custom.term.libun-gamur'),
  'light-heat': message('custom.term.libun-kal'),
  'self-clean': message('custom.term.libun-gamur'),
  pour: message('custom.term.irui'),
  immerse: message('custom.term.hagalah'),
  'boil-over': message('custom.term.hagalah'),
};
