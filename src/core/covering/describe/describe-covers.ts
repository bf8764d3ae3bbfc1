import type { CutLine } from '../../cutting/index.ts';
import { message, type Message, type Translator } from '../../messages/index.ts';
import type { CoverGroup, CoverPlan } from '../model/types.ts';
import { rollDrawings, type RollDrawing } from './drawing.ts';

type Line = { readonly depth: 0 | 1 | 2; readonly text: Message };

const INDENT = '  ';

/** What to buy for a group: rolls, sheets or metres. */
export function purchaseMessage({ coverWith, purchase }: CoverGroup): Message {
  const { stock, amount } = purchase;
  const material = message(`custom.cover.${coverWith}`);
  const { widthM, lengthM } = stock;
  return stock.soldBy === 'roll'
    ? message('covers.buy.rolls', { material, rolls: amount, widthM, lengthM })
    : message('covers.buy.metres', { material, metres: amount, widthM });
}

/** One cut of a roll, where and how far; `at`: which of them, from 0. */
export function cutMessage({ direction, atM, sheet }: CutLine, at: number): Message {
  const number = at + 1;
  const fromM = sheet.yM;
  return direction === 'across'
    ? message('covers.cut.across', { number, atM })
    : message('covers.cut.along', { number, atM, fromM, toM: fromM + sheet.lengthM });
}

/** Which piece this is, and where it lies on its roll. */
export function pieceMessage({ name, part, at }: RollDrawing['pieces'][number]): Message {
  const told = part === undefined ? name : message('covers.part', { name, part });
  return message('covers.comes-free', { name: told, ...at });
}

function pieceLines(
  piece: RollDrawing['pieces'][number],
  trimmed: ReadonlySet<string>,
): readonly Line[] {
  const { id, cutOuts } = piece;
  return [
    { depth: 1, text: pieceMessage(piece) },
    ...cutOuts.map(({ widthM, lengthM }): Line => ({
      depth: 2,
      text: message('covers.cut-out', { widthM, lengthM }),
    })),
    ...(trimmed.has(id) ? [{ depth: 2 as const, text: message('covers.trimmed') }] : []),
  ];
}

function groupLines(group: CoverGroup): readonly Line[] {
  const { purchase, pieces } = group;
  const { usedLengthM, wasteShare, rolls } = purchase;
  const trimmed = new Set(pieces.filter((piece) => piece.trimmed).map(({ id }) => id));
  return [
    { depth: 0, text: message('covers.waste', { usedM: usedLengthM, wasteShare }) },
    ...rollDrawings(group).flatMap((drawing, at): readonly Line[] => [
      { depth: 0, text: message('covers.roll', { number: at + 1, usedM: drawing.lengthM }) },
      ...drawing.pieces.flatMap((piece) => pieceLines(piece, trimmed)),
      ...(rolls[at]?.lines ?? []).map((line, n): Line => ({ depth: 2, text: cutMessage(line, n) })),
    ]),
  ];
}

/** What to buy to cover with, and every cut in its order, as plain text. */
export function describeCovers(plan: CoverPlan, kitchen: string, translator: Translator): string {
  const { say, t } = translator;
  const print = ({ depth, text }: Line) => `${INDENT.repeat(depth)}${say(text)}`;
  const left: readonly Line[] = [
    ...plan.tooLarge.map(({ name, widthM, lengthM }): Line => ({
      depth: 0,
      text: message('covers.too-large', { name, widthM, lengthM }),
    })),
    ...plan.unmeasured.map(({ name }): Line => ({
      depth: 0,
      text: message('covers.unmeasured', { name }),
    })),
  ];
  return [
    t('covers.title', { kitchen }),
    ...(plan.groups.length === 0 ? ['', t('covers.none')] : []),
    ...plan.groups.flatMap((group) => {
      const title = say(purchaseMessage(group));
      return ['', title, '-'.repeat(title.length), ...groupLines(group).map(print)];
    }),
    ...(left.length > 0 ? ['', ...left.map(print)] : []),
    '',
  ].join('\n');
}
