import { resolve } from 'node:path';
import ts from 'typescript';
import { message, type Param, type Params } from '../../../src/core/messages/index.ts';

const CATALOGUE = resolve('src/core/messages/english/index.ts');
/** A spring morning; later moments of one sentence follow hours apart. ms since 1970-01-01 UTC. */
const MOMENT_MS = Date.UTC(2026, 2, 29, 9, 5);
const HOURS_APART_MS = 31 * 3_600_000;

/** Numbers and texts for one round of sentences, none of them twice. */
type Round = {
  readonly text: () => string;
  readonly number: () => number;
  readonly moment: () => number;
  readonly yes: boolean;
  /** Optional parameters are given. */
  readonly whole: boolean;
};

/**
 * The parameters a sentence takes, told by the types of the English catalogue,
 * and samples of them: what a translation must be able to fill in.
 */
export type SampleMaker = {
  /** Keys of sentences that take parameters. */
  readonly keys: readonly string[];
  /** @param variant another set of numbers and choices for each; whole numbers from 0 */
  readonly sample: (key: string, variant: number) => Params;
};

function roundOf(variant: number, text: (index: number) => string): Round {
  const smallest = [0, 1, 2, 12, 3][variant % 5] ?? 0;
  let texts = 0;
  let numbers = 0;
  let moments = 0;
  return {
    text: () => text(texts++),
    number: () => smallest + 7 * numbers++,
    moment: () => MOMENT_MS + HOURS_APART_MS * moments++,
    yes: variant % 2 === 0,
    whole: variant % 3 !== 1,
  };
}

function literalOf(type: ts.Type): Param | undefined {
  if (type.isStringLiteral() || type.isNumberLiteral()) return type.value;
  return undefined;
}

class Sampler {
  readonly #checker: ts.TypeChecker;
  readonly #at: ts.Node;

  constructor(checker: ts.TypeChecker, at: ts.Node) {
    this.#checker = checker;
    this.#at = at;
  }

  params(type: ts.Type, round: Round, variant: number): Params {
    const given = this.#checker.getPropertiesOfType(type).flatMap((property) => {
      const isOptional = (property.flags & ts.SymbolFlags.Optional) !== 0;
      if (isOptional && !round.whole) return [];
      const of = this.#checker.getTypeOfSymbolAtLocation(property, this.#at);
      return [[property.name, this.#value(property.name, of, round, variant)] as const];
    });
    return Object.fromEntries(given);
  }

  #value(name: string, type: ts.Type, round: Round, variant: number): Param {
    const literal = literalOf(type);
    if (literal !== undefined) return literal;
    if (type.flags & ts.TypeFlags.BooleanLike) return round.yes;
    if (type.isUnion()) {
      const choices = type.types.filter((one) => !(one.flags & ts.TypeFlags.Undefined));
      if (choices.every((one) => one.flags & ts.TypeFlags.BooleanLike)) return round.yes;
      const choice = choices[variant % choices.length];
      if (choice) return this.#value(name, choice, round, variant);
    }
    if (type.flags & ts.TypeFlags.String) return /zone$/iu.test(name) ? 'UTC' : round.text();
    if (type.flags & ts.TypeFlags.Number)
      return name.endsWith('WallMs') || name === 'wallMs' ? round.moment() : round.number();
    const element = this.#checker.getIndexTypeOfType(type, ts.IndexKind.Number);
    if (element)
      return [0, 1].map(() => this.#value(name, element, round, variant)) as unknown as Param;
    const fields = this.#checker.getPropertiesOfType(type).map(({ name: field }) => field);
    if (fields.includes('key')) return message('common.as-written', { text: round.text() });
    return this.params(type, round, variant) as unknown as Param;
  }
}

/** @param text what stands for the names and sentences that are filled in, each another one */
export function sampleMaker(text: (index: number) => string): SampleMaker {
  const program = ts.createProgram([CATALOGUE], {
    strict: true,
    noEmit: true,
    skipLibCheck: true,
    allowImportingTsExtensions: true,
    target: ts.ScriptTarget.ES2023,
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    lib: ['lib.es2023.d.ts'],
    types: [],
  });
  const file = program.getSourceFile(CATALOGUE);
  const checker = program.getTypeChecker();
  const english = file && checker.getSymbolAtLocation(file)?.exports?.get('english' as ts.__String);
  if (!file || !english) throw new Error(`${CATALOGUE} exports no catalogue.`);
  const sampler = new Sampler(checker, file);
  const entries = checker
    .getPropertiesOfType(checker.getTypeOfSymbolAtLocation(english, file))
    .flatMap((property) => {
      const signature = checker.getTypeOfSymbolAtLocation(property, file).getCallSignatures().at(0);
      const first = signature?.parameters[0];
      return first
        ? [[property.name, checker.getTypeOfSymbolAtLocation(first, file)] as const]
        : [];
    });
  const typeOf = new Map(entries);
  return {
    keys: [...typeOf.keys()],
    sample(key, variant) {
      const type = typeOf.get(key);
      if (!type) throw new Error(`“${key}” takes no parameters. Say it as it is.`);
      return sampler.params(type, roundOf(variant, text), variant);
    },
  };
}
