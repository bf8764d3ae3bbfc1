import { describe, expect, it } from 'vitest';
import { shownStrings } from '../../tools/strings/shown-strings.ts';

/** Texts found in a component, with “…” for each value that is filled in. */
const found = (text: string) =>
  shownStrings('x.tsx', text).shown.map((one) => one.text.replaceAll('\u0001', '…'));

describe('strings that a person reads', () => {
  it.each([
    ['the text of an element', '<p>Pour now</p>', ['Pour now']],
    ['one word in an element', '<b>now</b>', ['now']],
    ['a unit beside a value', '<b>{litres()} L</b>', ['L']],
    ['both sides of a choice in an element', `<b>{x() ? 'on' : 'off'}</b>`, ['on', 'off']],
    ['a text that shows on a condition', `<b>{x() && 'late'}</b>`, ['late']],
    ['what a child function gives', `<For each={l}>{(one) => 'late'}</For>`, ['late']],
    ['a label', '<button aria-label="close" />', ['close']],
    ['a title in braces', `<Sheet title={'close'} />`, ['close']],
    ['a title by choice', '<Sheet title={x ? `kettle ${n}` : y} />', ['kettle …']],
    ['an alternative text', '<img alt="kettle" />', ['kettle']],
    ['prose in any attribute', '<Note body="It is hot." />', ['It is hot.']],
    ['a text below an attribute', '<Show fallback={<p>none</p>}>{x}</Show>', ['none']],
  ])('are found: %s', (_, element, texts) => {
    expect(found(`export const X = () => ${element};`)).toEqual(texts);
  });

  it.each([
    ['words beside each other', `const a = 'it is hot';`, ['it is hot']],
    ['a capital before a full stop', `const a = 'Stopped.';`, ['Stopped.']],
    ['a word with a capital', `const a = { meat: 'Meat' };`, ['Meat']],
    ['a sentence with values', 'const a = `Pour kettle ${n} of ${m}.`;', ['Pour kettle … of ….']],
    ['a value with its unit', 'const a = `${n} m`;', ['… m']],
    ['degrees', 'const a = `${n}°C`;', ['…°C']],
    ['a number and a word', `const a = '1 set';`, ['1 set']],
    ['what joins words', `const a = list.join(', and ');`, [', and']],
    ['one word of a shown property', `const a = { title: 'hot' };`, ['hot']],
    ['a text within a template', 'const a = `${x ? "it is hot" : ""}`;', ['it is hot']],
    ['a text that is returned', `function a() { return 'It is hot'; }`, ['It is hot']],
    ['the default of an argument', `function a(b = 'not known yet') {}`, ['not known yet']],
    ['a text under a type', `const a = { b: 'it is hot' } as const satisfies C;`, ['it is hot']],
    ['a refusal', `refuse('gate-shut', 'The gate is shut.');`, ['The gate is shut.']],
    ['an error that is not thrown', `show(new Error('It is hot.'));`, ['It is hot.']],
    ['the text beside a thrown error', `if (a) throw b('It is hot.');`, ['It is hot.']],
    ['two lines apart', `// not shown: a key\n\nconst a = 'it is hot';`, ['it is hot']],
    ['an excuse without reason', `const a = 'it is hot'; // not shown:`, ['it is hot']],
  ])('are found: %s', (_, text, texts) => {
    expect(found(text)).toEqual(texts);
  });

  it.each([
    ['imports and exports', `import a from 'a b';\nexport * from 'a b';\nimport('a b');`],
    ['types', `type A = 'it is hot' | \`it is \${string}\`;\nlet a: 'It is hot.';`],
    ['type arguments', `const a = f<'it is hot'>();`],
    ['keys of objects', `const a = { 'it is hot': 1 };\na['it is hot'];`],
    ['directives', `'use strict mode';`],
    ['comments', `/** It is hot. */\n// It is hot.`],
    ['messages of thrown errors', 'throw new RangeError(`pour is ${x}; allowed: one or more.`);'],
    ['messages of rejections', `reject(new Error('It is hot.'));`],
    [
      'messages of own errors',
      `class HotError extends Error { constructor() { super('It is hot.'); } }`,
    ],
    ['what the console says', `console.error('It is hot.');`],
    ['comparisons', `if (a === 'It is hot.') b();\nswitch (a) { case 'It is hot.': b(); }`],
    ['codes', `const a = ['gate-shut', 'running', 'DANGER', 'AbortError', 'pour-sink-1'];`],
    ['ids with values', 'const a = `pour-${fixture}-${kettle}`;'],
    ['class names', '<p class="place plan-place" classList={{ "a b": x }} style="color: red" />'],
    ['class names by choice', 'const a = <p class={`step ${x ? "is on" : ""}`} />;'],
    ['class names elsewhere', `const a = 'button button--plain';`],
    ['drawings', '<path d="M8 2h8l6 6v8z" transform="rotate(45 1 2)" />'],
    ['drawings elsewhere', 'const a = `M${x} ${y}L ${z} 0Z`;\nconst b = `translate(${x} 0)`;'],
    ['lengths', 'const a = `${x}px ${y}px`;\nconst b = "1fr 2fr";'],
    [
      'questions to the browser',
      `a.closest('button, [role="slider"]');\nmatchMedia('(min-width: 4rem)');`,
    ],
    ['signs', '<p>– {x} × {y} %</p>'],
    ['attributes that are codes', '<input type="checkbox" name="pour" inputmode="decimal" />'],
    ['an excuse on the line', `const a = 'it is hot'; // not shown: the name of a file`],
    ['an excuse above', `// not shown: the name of a file\nconst a = 'it is hot';`],
    ['an excuse in an element', '<p>\n{/* not shown: a sign */}\nabc\n</p>'],
  ])('are not: %s', (_, text) => {
    expect(found(text)).toEqual([]);
  });

  it('come with their line, where the words begin', () => {
    expect(shownStrings('x.tsx', `const a = 1;\nconst b = <p>\n  Pour now\n</p>;`).shown).toEqual([
      { line: 3, text: 'Pour now' },
    ]);
  });

  it('names excuses that excuse nothing or give no reason', () => {
    const text = `// not shown: was once\nconst a = 1;\nconst b = 'it is hot'; // not shown`;
    expect(shownStrings('x.ts', text)).toEqual({
      shown: [{ line: 3, text: 'it is hot' }],
      needless: [1, 3],
    });
  });

  it('says which file cannot be parsed', () => {
    expect(() => shownStrings('x.ts', 'const = ;')).toThrow(/^x\.ts cannot be parsed/);
  });
});
