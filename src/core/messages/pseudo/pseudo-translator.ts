import type { Formatter, Message, Param, Params } from '../model/message.ts';
import { message } from '../translate/keys.ts';
import type { Translator } from '../translate/translator.ts';
import { accented, marked, unmarked } from './accents.ts';

/** Where a string stands in the parameters of a message, as keys from the outside in. */
type Path = string;

function isMessage(param: Param): param is Message {
  return typeof param === 'object' && 'key' in param && 'params' in param;
}

/** The parameters with `change` done to every string in them, those of messages inside too. */
function mapStrings(
  params: Params,
  change: (text: string, path: Path) => string,
  under: Path = '',
): Params {
  const mapped = (param: Param, path: Path): Param => {
    if (typeof param === 'string') return change(param, path);
    if (Array.isArray(param))
      return (param as readonly Param[]).map((one, i) => mapped(one, `${path}.${i}`)) as Param;
    if (typeof param === 'object' && isMessage(param))
      return { key: param.key, params: mapStrings(param.params, change, path) };
    return param;
  };
  return Object.fromEntries(
    Object.entries(params).map(([name, param]) => [name, mapped(param, `${under}.${name}`)]),
  );
}

function pathsOf({ params }: Message): readonly Path[] {
  const paths: Path[] = [];
  mapStrings(params, (text, path) => {
    paths.push(path);
    return text;
  });
  return paths;
}

/** The sentence with marks round the strings at some paths; undefined where marks would make another sentence. */
function markedAt(base: Translator, said: Message, paths: ReadonlySet<Path>): string | undefined {
  const params = mapStrings(said.params, (text, path) => (paths.has(path) ? marked(text) : text));
  try {
    const text = base.say({ key: said.key, params });
    return unmarked(text) === base.say(said) ? text : undefined;
  } catch {
    // A marked string that is an id, such as a time zone: it is no text of a person.
    return undefined;
  }
}

/**
 * A sentence in accents, with what people wrote left as they wrote it. A
 * string that is an id (of a method, of a time zone) cannot be marked: the
 * sentence would be another one; so each is tried.
 */
function pseudoSay(base: Translator, said: Message): string {
  const paths = pathsOf(said);
  const whole = markedAt(base, said, new Set(paths));
  if (whole !== undefined) return accented(whole);
  const kept = new Set<Path>();
  for (const path of paths)
    if (markedAt(base, said, new Set([...kept, path])) !== undefined) kept.add(path);
  return accented(markedAt(base, said, kept) ?? base.say(said));
}

function pseudoFormat(format: Formatter, say: Translator['say']): Formatter {
  const texts = Object.entries(format).map(([name, make]) => [
    name,
    typeof make === 'function'
      ? (...args: readonly unknown[]) =>
          accented((make as (...all: readonly unknown[]) => string)(...args))
      : make,
  ]);
  // Parts of a list, and the text that gets a capital, are the caller's own.
  return {
    ...(Object.fromEntries(texts) as Formatter),
    say,
    list: (parts) => accented(format.list(parts.map(marked))),
    capital: format.capital,
    plural: format.plural,
    // A number, to be drawn.
    figure: format.figure,
  };
}

/**
 * The standard pseudo-locale: a language made of another one, to see which
 * texts do not come from the catalogue (they have no accents) and which parts
 * of a screen have no room for longer words.
 */
export function pseudoTranslator(base: Translator): Translator {
  const say = (said: Message): string => pseudoSay(base, said);
  return {
    ...base,
    language: 'en-XA',
    say,
    t: (key, ...params) => say(message(key, ...params)),
    format: pseudoFormat(base.format, say),
  };
}
