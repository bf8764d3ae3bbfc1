/**
 * JSON with the keys of every object in code-unit order and nothing between
 * tokens (the idea of RFC 8785), so that one value has one text whatever way
 * a store keeps it. Fields that are undefined are left out, as JSON does.
 * @throws TypeError on what JSON cannot carry: functions, symbols, numbers that are not finite
 */
export function canonical(value: unknown): string {
  if (value === null || typeof value === 'boolean' || typeof value === 'string') {
    return JSON.stringify(value);
  }
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) {
      throw new TypeError(`value is ${value}; allowed: finite numbers. It cannot be written down.`);
    }
    return JSON.stringify(value);
  }
  if (Array.isArray(value)) return `[${value.map((one) => canonical(one)).join(',')}]`;
  if (typeof value === 'object') {
    const fields = Object.entries(value)
      .filter(([, one]) => one !== undefined)
      .toSorted(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, one]) => `${JSON.stringify(key)}:${canonical(one)}`);
    return `{${fields.join(',')}}`;
  }
  throw new TypeError(`value is a ${typeof value}; allowed: JSON. It cannot be written down.`);
}
