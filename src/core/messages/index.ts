export type * from './model/message.ts';
export type * from './model/traits.ts';
export {
  asWritten,
  message,
  aheadTold,
  untilTold,
  type MessageKey,
  type ParamArgs,
  type PlainKey,
} from './translate/keys.ts';
export { isolated, sayFenced, unfenced } from './translate/isolate.ts';
export { createTranslator, entriesOf, type Translator } from './translate/translator.ts';
