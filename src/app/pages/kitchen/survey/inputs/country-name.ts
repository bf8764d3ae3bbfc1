import { countryOf } from '../../../../../core/kitchen/index.ts';
import { asWritten, message, type Message } from '../../../../../core/messages/index.ts';

/** What a country is called; the code of one that is not in the table stands for itself. */
export function countryName(code: string): Message {
  return countryOf(code)
    ? message(`survey.country.${code}` as 'survey.country.US')
    : asWritten(code);
}
