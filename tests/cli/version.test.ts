import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { planAnswer } from '../../src/cli/plan/plan-answer.ts';
import { answer } from '../../src/cli/reckon/answer.ts';

const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };

it('is told by both programs of the terminal, as the manifest has it', () => {
  expect(planAnswer(['--version'])).toEqual({ out: `${version}\n`, err: [], code: 0 });
  expect(answer(['--version'])).toEqual({ print: { version }, code: 0 });
});

it('stands first in the list of changes', () => {
  const [, first] = /^## (\S+)/m.exec(readFileSync('CHANGELOG.md', 'utf8')) ?? [];
  expect(first === version || first === 'Unreleased').toBe(true);
});
