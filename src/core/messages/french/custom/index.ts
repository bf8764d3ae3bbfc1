import { appliances } from './appliances.ts';
import { deadlines } from './deadlines.ts';
import { fire } from './fire.ts';
import { names } from './names.ts';
import { parts } from './parts.ts';
import { retired } from './retired.ts';
import { rules } from './rules.ts';
import { sinks } from './sinks.ts';
import { told } from './told.ts';
import { tops } from './tops.ts';

/** What the customs say, and how it is told. */
export const custom = {
  ...told,
  ...deadlines,
  ...sinks,
  ...tops,
  ...fire,
  ...appliances,
  ...rules,
  ...parts,
  ...names,
  ...retired,
};
