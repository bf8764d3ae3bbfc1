/**
 * Finds, by parsing, the strings of a source file that a person would read.
 * What counts is where a string stands: the text of a page and of the
 * attributes and properties that are shown always count, class names and
 * messages of thrown errors never; elsewhere it must look like prose.
 */
import { parseSync, visitorKeys } from 'oxc-parser';
import { FILLED, holdsLetters, looksLikeProse } from './prose.ts';

type ShownString = { readonly line: number; readonly text: string };
type Findings = {
  readonly shown: readonly ShownString[];
  /** Lines of `not shown` comments that excuse nothing, or give no reason. */
  readonly needless: readonly number[];
};

type Node = { readonly type: string; readonly start: number; readonly [key: string]: unknown };

/** Whether a string at this place is shown for sure, if it looks so, or never. */
type Place = 'shown' | 'prose' | 'quiet';

/** Attributes of elements and components, and properties of objects, that are shown. */
const SHOWN_NAMES = new Set([
  'title',
  'label',
  'placeholder',
  'alt',
  'heading',
  'hint',
  'caption',
  'summary',
  'message',
  'text',
  'aria-label',
  'aria-description',
  'aria-roledescription',
  'aria-valuetext',
  'aria-placeholder',
]);
const QUIET_ATTRIBUTES = new Set(['class', 'classList', 'style', 'd', 'transform', 'viewBox']);
/** Functions that give their strings to the browser or to developers. */
const QUIET_CALLS = new Set([
  'addEventListener',
  'closest',
  'createElement',
  'createElementNS',
  'matches',
  'matchMedia',
  'querySelector',
  'querySelectorAll',
  'removeEventListener',
  'reject',
]);
const COMPARISONS = new Set(['===', '!==', '==', '!=', '<', '>', '<=', '>=', 'in', 'instanceof']);
/** Nodes whose value is one of their parts: the part stands where they stand. */
const PASSED_ON: Readonly<Record<string, readonly string[]>> = {
  ConditionalExpression: ['consequent', 'alternate'],
  LogicalExpression: ['left', 'right'],
  BinaryExpression: ['left', 'right'],
  ParenthesizedExpression: ['expression'],
  ArrayExpression: ['elements'],
  ArrowFunctionExpression: ['body'],
  JSXExpressionContainer: ['expression'],
};
const WRAPPERS = new Set(['TSAsExpression', 'TSSatisfiesExpression', 'TSNonNullExpression']);

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';

/** Parts of a node under one key. */
function partsOf(node: Node, key: string): Node[] {
  const part = node[key];
  return (Array.isArray(part) ? part : [part]).filter(isNode);
}

/** Name of an identifier, of a called method, or of an attribute. */
function nameOf(node: unknown): string {
  if (!isNode(node)) return '';
  if (node.type === 'MemberExpression') return nameOf(node.property);
  if (node.type === 'JSXNamespacedName') return `${nameOf(node.namespace)}:${nameOf(node.name)}`;
  return String(node.name ?? node.value ?? '');
}

class Finder {
  readonly found: { readonly at: number; readonly text: string }[] = [];

  /** Where the strings in one part of a node stand. */
  #placeOf(node: Node, key: string, place: Place): Place {
    if (place === 'quiet') return 'quiet';
    switch (node.type) {
      case 'JSXElement':
      case 'JSXFragment':
        return key === 'children' ? 'shown' : 'prose';
      case 'JSXAttribute': {
        const name = nameOf(node.name);
        if (key === 'name' || QUIET_ATTRIBUTES.has(name)) return 'quiet';
        return SHOWN_NAMES.has(name) ? 'shown' : 'prose';
      }
      case 'Property':
        if (key === 'key') return node.computed ? 'prose' : 'quiet';
        return SHOWN_NAMES.has(nameOf(node.key)) ? 'shown' : 'prose';
      case 'MemberExpression':
        return key === 'property' ? 'quiet' : 'prose';
      case 'SwitchCase':
        return key === 'test' ? 'quiet' : 'prose';
      case 'BinaryExpression':
        if (COMPARISONS.has(String(node.operator)))
          return partsOf(node, key)[0]?.type === 'Literal' ? 'quiet' : 'prose';
        return place;
      case 'CallExpression': {
        const callee = node.callee as Node;
        const quiet = QUIET_CALLS.has(nameOf(callee)) || nameOf(callee.object) === 'console';
        return key === 'arguments' && quiet ? 'quiet' : 'prose';
      }
      default:
        return PASSED_ON[node.type]?.includes(key) ? place : 'prose';
    }
  }

  #string(node: Node, text: string, place: Place): void {
    if (place === 'quiet') return;
    if (place === 'shown' ? holdsLetters(text) : looksLikeProse(text))
      this.found.push({ at: node.start, text: text.trim() });
  }

  /** Whether a node holds the message of an error that is thrown. */
  #isThrown(node: Node, inError: boolean): boolean {
    if (node.type === 'ThrowStatement') {
      const thrown = node.argument as Node;
      return thrown.type === 'NewExpression' && nameOf(thrown.callee).endsWith('Error');
    }
    return node.type === 'CallExpression' && inError && (node.callee as Node).type === 'Super';
  }

  visit(node: Node, place: Place, inError = false): void {
    if (WRAPPERS.has(node.type)) return this.visit(node.expression as Node, place, inError);
    if (node.type.startsWith('TS')) return undefined;
    if (node.type === 'Literal' || node.type === 'JSXText')
      return typeof node.value === 'string' ? this.#string(node, node.value, place) : undefined;
    if (node.type === 'TemplateLiteral') {
      const texts = partsOf(node, 'quasis').map((quasi) => {
        const { cooked, raw } = quasi.value as { cooked: string | null; raw: string };
        return cooked ?? raw;
      });
      this.#string(node, texts.join(FILLED), place);
      for (const part of partsOf(node, 'expressions')) this.visit(part, place, inError);
      return undefined;
    }
    if (typeof node.directive === 'string') return undefined;
    const inside =
      inError || (node.type.startsWith('Class') && nameOf(node.superClass).endsWith('Error'));
    const quiet = this.#isThrown(node, inside) ? 'quiet' : place;
    for (const key of visitorKeys[node.type] ?? []) {
      // The specifier of an import or export, and the options of an import.
      if (key === 'source' || key === 'attributes') {
        if (/^(?:Import|Export)/.test(node.type)) continue;
      }
      for (const part of partsOf(node, key))
        this.visit(part, this.#placeOf(node, key, quiet), inside);
    }
    return undefined;
  }
}

/** Offsets at which lines begin. */
function lineStarts(text: string): number[] {
  return [0, ...[...text.matchAll(/\n/g)].map(({ index }) => index + 1)];
}

/**
 * Strings of a source file that a person would read, in the order of the file.
 * A comment `not shown: reason` excuses its line and the next one.
 *
 * @throws SyntaxError when the file cannot be parsed.
 */
export function shownStrings(file: string, text: string): Findings {
  const { program, comments, errors } = parseSync(file, text);
  if (errors[0]) throw new SyntaxError(`${file} cannot be parsed: ${errors[0].message}`);
  const starts = lineStarts(text);
  const lineOf = (offset: number) => starts.findLastIndex((start) => start <= offset) + 1;
  const finder = new Finder();
  finder.visit(program as unknown as Node, 'prose');
  const excuses = comments
    .filter(({ value }) => /^\s*not shown\b/.test(value))
    .map(({ value, start, end }) => ({
      line: lineOf(start),
      last: lineOf(end),
      hasReason: /^\s*not shown:\s*\S/.test(value),
    }));
  const used = new Set<number>();
  const shown = finder.found
    .map(({ at, text: found }) => ({
      line: lineOf(at + (text.slice(at).match(/^\s*/)?.[0].length ?? 0)),
      text: found,
    }))
    .filter(({ line }) => {
      const excuse = excuses.find(
        (one) => one.hasReason && (one.line === line || one.last + 1 === line),
      );
      if (excuse) used.add(excuse.line);
      return !excuse;
    })
    .toSorted((a, b) => a.line - b.line);
  return { shown, needless: excuses.map(({ line }) => line).filter((line) => !used.has(line)) };
}
