import type { Message, Section } from '../../model/message.ts';

/** What is bought to cover with, and how it is cut. */
export const covers = {
  'covers.title': ({ kitchen }: { kitchen: string }) => `Covers of ${kitchen}`,
  'covers.none': 'Nothing in this plan is covered or lined from a roll.',
  'covers.piece': ({ name, number, count }: { name: Message; number: number; count: number }, f) =>
    `${f.say(name)}, ${f.number(number)} of ${f.number(count)}`,
  'covers.buy.rolls': (
    {
      material,
      rolls,
      widthM,
      lengthM,
    }: {
      material: Message;
      rolls: number;
      widthM: number;
      lengthM: number;
    },
    f,
  ) =>
    `${f.capital(f.say(material))}: ${f.number(rolls)} ${f.plural(rolls, { one: 'roll', other: 'rolls' })} of ${f.tape(widthM, { decimals: 3, isShort: true, isBought: true, isFirst: true })} × ${f.tape(lengthM, { decimals: 3, isShort: true, isBought: true })}`,
  'covers.buy.metres': (
    { material, metres, widthM }: { material: Message; metres: number; widthM: number },
    f,
  ) =>
    `${f.capital(f.say(material))}: ${f.tape(metres, { isShort: true, isBought: true })} of a roll ${f.tape(widthM, { decimals: 3, isShort: true, isBought: true })} wide`,
  'covers.waste': ({ usedM, wasteShare }: { usedM: number; wasteShare: number }, f) =>
    `${f.tape(usedM)} are used, ${f.number(wasteShare * 100)} % of it is left over.`,
  'covers.roll': ({ number, usedM }: { number: number; usedM: number }, f) =>
    `Roll ${f.number(number)}: cut off ${f.tape(usedM)}, then`,
  'covers.cut.across': ({ number, atM }: { number: number; atM: number }, f) =>
    `Cut ${f.number(number)}: across, ${f.tape(atM)} from the beginning.`,
  'covers.cut.along': (
    { number, atM, fromM, toM }: { number: number; atM: number; fromM: number; toM: number },
    f,
  ) =>
    `Cut ${f.number(number)}: along, ${f.tape(atM)} from the left edge, from ${f.tape(fromM, { isFirst: true })} to ${f.tape(toM)}.`,
  'covers.comes-free': (
    {
      name,
      widthM,
      lengthM,
      xM,
      yM,
    }: {
      name: Message;
      widthM: number;
      lengthM: number;
      xM: number;
      yM: number;
    },
    f,
  ) =>
    `${f.say(name)}: ${f.tape(widthM, { isFirst: true })} × ${f.tape(lengthM)}, at ${f.tape(xM)} across and ${f.tape(yM)} along.`,
  'covers.part': ({ name, part }: { name: Message; part: number }, f) =>
    `${f.say(name)}, part ${f.number(part)}`,
  'covers.cut-out': ({ widthM, lengthM }: { widthM: number; lengthM: number }, f) =>
    `Cut out ${f.tape(widthM, { isFirst: true })} × ${f.tape(lengthM)} for what stands in it.`,
  'covers.trimmed': 'It is no rectangle: cut away what hangs over on the spot.',
  'covers.too-large': (
    { name, widthM, lengthM }: { name: Message; widthM: number; lengthM: number },
    f,
  ) =>
    `${f.say(name)}: ${f.tape(widthM, { isFirst: true })} × ${f.tape(lengthM)} lie on no usual roll.`,
  'covers.unmeasured': ({ name }: { name: string }) => `${name}: measure it; its size is not told.`,
} satisfies Section;
