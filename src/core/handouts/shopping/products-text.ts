import type { Message, Translator } from '../../messages/index.ts';
import { message } from '../../messages/index.ts';
import { PRODUCT_GROUPS, type Product } from './products.ts';

/** Marks beside a product: lent, waiting for an answer. */
export function productMarks({ borrowed, when }: Product): readonly Message[] {
  return [
    ...(borrowed ? [message('handouts.shopping.borrow')] : []),
    ...(when === 'needed' ? [] : [message(`handouts.shopping.${when}`)]),
  ];
}

/** The list as plain text to be sent; what is ticked is left out. Lines end in `\n`. */
export function productsText(
  products: readonly Product[],
  isTicked: (id: string) => boolean,
  kitchen: string,
  { t, say }: Translator,
): string {
  const left = products.filter(({ id }) => !isTicked(id));
  return [
    t('handouts.shopping.title', { kitchen }),
    ...PRODUCT_GROUPS.flatMap((group) => {
      const own = left.filter((one) => one.group === group);
      if (own.length === 0) return [];
      return [
        '',
        t(`handouts.shopping.group.${group}`),
        ...own.map((product) => {
          const { name, amount, reasons } = product;
          const marks = productMarks(product).map((mark) => ` (${say(mark)})`);
          const told = amount ? t('handouts.shopping.item', { name, amount }) : say(name);
          return `[ ] ${told}${marks.join('')}. ${reasons.map(say).join(' ')}`;
        }),
      ];
    }),
    ...(left.length === 0 ? ['', t('handouts.shopping.all-there')] : []),
    '',
  ].join('\n');
}
