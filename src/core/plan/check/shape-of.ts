/** Says what is wrong with a value at a path, through `bad`. */
export type ShapeOf = (value: unknown, at: string, bad: (what: string) => void) => void;

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function shown(value: unknown): string {
  const text = typeof value === 'number' ? String(value) : (JSON.stringify(value) ?? 'nothing');
  return text.length > 40 ? `${text.slice(0, 40)}…` : text;
}

export const text: ShapeOf = (value, at, bad) => {
  if (typeof value !== 'string') bad(`${at} is ${shown(value)}; allowed: a text`);
};

export const flag: ShapeOf = (value, at, bad) => {
  if (typeof value !== 'boolean') bad(`${at} is ${shown(value)}; allowed: true or false`);
};

/** A finite number from `least` up to `most`; JSON carries neither NaN nor infinities, but 1e999 reads as one. */
export function number(least = 0, most = Infinity): ShapeOf {
  const from = least === -Infinity ? '' : ` from ${least}`;
  const to = most === Infinity ? '' : ` to ${most}`;
  return (value, at, bad) => {
    if (typeof value !== 'number' || !Number.isFinite(value) || value < least || value > most)
      bad(`${at} is ${shown(value)}; allowed: a finite number${from}${to}`);
  };
}

export function oneOf(...allowed: readonly (string | number)[]): ShapeOf {
  return (value, at, bad) => {
    if (!allowed.includes(value as string))
      bad(`${at} is ${shown(value)}; allowed: ${allowed.join(', ')}`);
  };
}

export function list(item: ShapeOf): ShapeOf {
  return (value, at, bad) => {
    if (Array.isArray(value)) value.forEach((one, i) => item(one, `${at}[${i}]`, bad));
    else bad(`${at} is ${shown(value)}; allowed: a list`);
  };
}

/** A sentence: a key of the catalogue and what is said in it. */
export const said: ShapeOf = (value, at, bad) =>
  fields({ key: text, params: byName(() => undefined) })(value, at, bad);

/** By name, each of the same shape. */
export function byName(item: ShapeOf): ShapeOf {
  return (value, at, bad) => {
    if (!isObject(value)) bad(`${at} is ${shown(value)}; allowed: named values`);
    else for (const [name, one] of Object.entries(value)) item(one, `${at}.${name}`, bad);
  };
}

export function fields(must: Record<string, ShapeOf>, may: Record<string, ShapeOf> = {}): ShapeOf {
  return (value, at, bad) => {
    if (!isObject(value)) {
      bad(`${at} is ${shown(value)}; allowed: an object`);
      return;
    }
    for (const [name, shape] of Object.entries(must)) shape(value[name], `${at}.${name}`, bad);
    for (const [name, shape] of Object.entries(may))
      if (value[name] !== undefined) shape(value[name], `${at}.${name}`, bad);
  };
}

/** An object whose field `tag` says which of these it is. */
export function tagged(tag: string, kinds: Readonly<Record<string, ShapeOf>>): ShapeOf {
  return (value, at, bad) => {
    const kind = isObject(value) ? value[tag] : undefined;
    const shape = typeof kind === 'string' && Object.hasOwn(kinds, kind) ? kinds[kind] : undefined;
    if (shape) shape(value, at, bad);
    else bad(`${at}.${tag} is ${shown(kind)}; allowed: ${Object.keys(kinds).join(', ')}`);
  };
}
