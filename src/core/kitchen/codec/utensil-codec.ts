import { message } from '../../messages/index.ts';
import { LIMITS } from '../model/limits.ts';
import type { Utensil, UtensilAnswer, UtensilSize, UtensilUse } from '../model/utensil.ts';
import {
  conditionCodec,
  designationCodec,
  utensilKindCodec,
  utensilMaterialCodec,
  utensilMethodCodec,
  utensilUseCodec,
} from './choices.ts';
import { named } from './codec.ts';
import { dateCodec, idCodec, nameCodec, wordsCodec } from './common-codecs.ts';
import { may, must, object, orElse } from './object.ts';
import { number, whole, yesNo } from './primitives.ts';

const unknownUse: UtensilUse = 'unknown';

const size = object<UtensilSize>({
  lengthM: must(number(LIMITS.utensilM)),
  widthM: must(number(LIMITS.utensilM)),
  heightM: must(number(LIMITS.utensilM)),
});

const answer = object<UtensilAnswer>({
  method: must(utensilMethodCodec),
  saidBy: must(nameCodec),
  saidOn: must(dateCodec),
  text: may(wordsCodec),
});

/** One line of utensils; the published schema names it. */
export const utensilCodec = named(
  'utensil',
  object<Utensil>({
    id: must(idCodec),
    name: may(nameCodec),
    kind: must(utensilKindCodec),
    count: orElse(whole(LIMITS.utensilCount), 1, message('problems.filled.utensil-count')),
    material: orElse(utensilMaterialCodec, 'unknown', message('problems.filled.plan-asks')),
    use: orElse(utensilUseCodec, unknownUse, message('problems.filled.plan-asks')),
    condition: orElse(conditionCodec, 'unknown', message('problems.filled.plan-asks')),
    designation: orElse(designationCodec, 'undecided', message('problems.filled.designation')),
    was: may(designationCodec),
    closedJoints: may(yesNo),
    size: may(size),
    massKg: may(number(LIMITS.utensilKg)),
    forMikveh: may(yesNo),
    answer: may(answer),
    comment: may(wordsCodec),
  }),
);
