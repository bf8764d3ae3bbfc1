import type { Formatter, SizeFormatter } from '../model/message.ts';
import type { FormatWords } from '../model/traits.ts';
import { roundedTo } from './round.ts';

/** Sizes in the units in which sentences hold them. */
export function metricSizes(
  { number, shortNumber, range }: Pick<Formatter, 'number' | 'shortNumber' | 'range'>,
  { measure }: FormatWords,
): SizeFormatter {
  /** With a minus that is as wide as a figure. */
  const said: FormatWords['measure'] = (figure, unit) => measure(figure.replace('-', '−'), unit);
  return {
    measure: (value, unit, decimals = 0, toward) =>
      said(number(roundedTo(decimals, value, toward), decimals), unit),
    shortMeasure: (value, unit, mostDecimals = 1, toward) =>
      said(shortNumber(roundedTo(mostDecimals, value, toward), mostDecimals), unit),
    measureRange: (low, high, unit, decimals) => said(range(low, high, decimals), unit),
    first: (value, _unit, decimals = 0, toward) =>
      number(roundedTo(decimals, value, toward), decimals),
    tape(metres, { decimals = 2, isShort = false, isFirst = false } = {}) {
      const figure = (isShort ? shortNumber : number)(metres, decimals);
      return isFirst ? figure : said(figure, 'm');
    },
    fill: (litres) => said(shortNumber(roundedTo(1, litres, 'down')), 'L'),
    figure: (value) => value,
    unitName: (unit) => said('', unit),
  };
}
