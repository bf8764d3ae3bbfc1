import { describe, expect, it } from 'vitest';
import { questionList } from '../../../src/core/custom/index.ts';
import { rabbiHandout, rabbiHandoutText } from '../../../src/core/handouts/index.ts';
import { inEnglish } from '../../support/english.ts';
import { DEMO_TEXTS, demoKitchen } from '../kitchen/demos.ts';

const mountain = demoKitchen('mountain-gas.kitchen.json');

describe.each(DEMO_TEXTS.map(([file]) => file))('the questions of %s', (file) => {
  const kitchen = demoKitchen(file);

  it('stand once each, in the order of the list, with what is known of the thing', () => {
    const handout = rabbiHandout(kitchen);
    expect(handout.map(({ question }) => question.id)).toEqual(
      questionList(kitchen).toAsk.map(({ id }) => id),
    );
    for (const { fixture, facts } of handout) {
      const said = facts.map(inEnglish.say).join('; ');
      if (fixture && 'condition' in fixture && fixture.condition === 'scratched')
        expect(said).toContain('scratched');
      if (fixture?.kind === 'sink' || fixture?.kind === 'counter')
        expect(facts.length).toBeGreaterThanOrEqual(2);
    }
  });

  it('make a text of one line a fact, with a line for each answer', () => {
    const text = rabbiHandoutText(kitchen, {}, inEnglish);
    expect(text).not.toMatch(/undefined|\[object|handouts\./);
    for (const { name, question } of rabbiHandout(kitchen)) {
      expect(text).toContain(`${name}: ${inEnglish.say(question.ask)}`);
      for (const { text: answer } of question.answers ?? [])
        expect(text).toContain(`[ ] ${inEnglish.say(answer)}`);
    }
  });
});

it('an answer that was tried says what it changes, and nothing where it changes nothing', () => {
  const asked = rabbiHandout(mountain).find(({ question }) => (question.answers ?? []).length > 1)!;
  const [first, second] = asked.question.answers!;
  const changes = [
    { answer: first!, finishS: 0, kettles: 0, handsOnS: 0 },
    { answer: second!, finishS: -7200, kettles: -1, handsOnS: 0 },
  ];
  const text = rabbiHandoutText(mountain, { [asked.question.id]: changes }, inEnglish);
  expect(text).toContain(`[ ] ${inEnglish.say(first!.text)}\n`);
  expect(text).toContain(`[ ] ${inEnglish.say(second!.text)} The plan then ends 2 h earlier`);
});
