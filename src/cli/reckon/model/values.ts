import { nearest } from '../../../core/kitchen/index.ts';
import { Refusal, type Model, type ModelInput, type Value, type Values } from './model.ts';

function allowedText(input: ModelInput): string {
  if (input.choices) return input.choices.join(', ');
  if (input.range) return `${input.range[0]} to ${input.range[1]} ${input.unit}`;
  return input.kind === 'flag' ? 'true or false' : input.unit;
}

function numberOf(input: ModelInput, text: string): number {
  const value = text.trim() === '' ? Number.NaN : Number(text);
  const [min, max] = input.range ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  if (Number.isFinite(value) && value >= min && value <= max) return value;
  const found = Number.isFinite(value) ? value : text;
  throw new Refusal(input.name, found, allowedText(input), 'Give a number in that range.');
}

function valueOf(input: ModelInput, text: string): Value {
  switch (input.kind) {
    case 'number':
      return numberOf(input, text);
    case 'numbers':
      return text.split(',').map((part) => numberOf(input, part));
    case 'flag':
      if (text === 'true' || text === 'false') return text === 'true';
      throw new Refusal(input.name, text, 'true or false', 'Give one of these.');
    case 'text':
      if (!input.choices || input.choices.includes(text)) return text;
      throw new Refusal(input.name, text, allowedText(input), 'Choose one of these.');
  }
}

function unknown(name: string, model: Model): Refusal {
  const names = model.inputs.map((input) => input.name);
  const near = nearest(name, names);
  const advice = near ? `Did you mean ${near}?` : `Inputs of ${model.name} are listed here.`;
  return new Refusal(name, 'not an input', names.join(', '), advice);
}

/**
 * The inputs of a model out of `name=value` words, with its usual values.
 * @throws Refusal
 */
export function valuesOf(model: Model, words: readonly string[]): Values {
  const given = new Map<string, string>();
  for (const word of words) {
    const at = word.indexOf('=');
    if (at < 1) throw new Refusal('word', word, 'name=value', 'Put = between name and value.');
    const name = word.slice(0, at);
    if (!model.inputs.some((input) => input.name === name)) throw unknown(name, model);
    if (given.has(name)) throw new Refusal(name, 'given twice', 'once', 'Remove one.');
    given.set(name, word.slice(at + 1));
  }
  const values: Record<string, Value> = {};
  for (const input of model.inputs) {
    const text = given.get(input.name);
    if (text !== undefined) values[input.name] = valueOf(input, text);
    else if (input.usual !== undefined) values[input.name] = input.usual;
    else if (!input.optional) {
      throw new Refusal(input.name, 'not given', allowedText(input), `Add ${input.name}=…`);
    }
  }
  return values;
}
