import type { Formatter, SizeFormatter } from '../model/message.ts';
import type { FormatWords } from '../model/traits.ts';

/** Sizes in the units in which sentences hold them. */
export function metricSizes(
  { number, shortNumber, range }: Pick<Formatter, 'number' | 'shortNumber' | 'range'>,
  { measure }: FormatWords,
): SizeFormatter {
  /** With a minus that is as wide as a figure. */
  const said: FormatWords['measure'] = (figure, unit) => measure(figure.replace('-', '−'), unit);
  return {
    measure: (value, unit, ...how) => said(number(value, ...how), unit),
    shortMeasure: (value, unit, ...how) => said(shortNumber(value, ...how), unit),
    measureRange: (low, high, unit, decimals) => said(range(low, high, decimals), unit),
    first: (value, _unit, ...how) => number(value, ...how),
    tape(metres, { decimals = 2, isShort, isFirst } = {}) {
      const figure = (isShort ? shortNumber : number)(metres, decimals);
      return isFirst ? figure : said(figure, 'm');
    },
    fill: (litres) => said(shortNumber(litres, 1, 'down'), 'L'),
    figure: (value) => value,
    unitName: (unit) => said('', unit),
  };
}
