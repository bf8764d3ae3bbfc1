import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { message } from '../../../../src/core/messages/index.ts';
import { didYouMean, editDistance, nearest } from '../../../../src/core/kitchen/codec/nearest.ts';

describe('edit distance', () => {
  // Worked examples of the literature: Levenshtein's "kitten" to "sitting" is 3; with swaps of
  // neighbours (optimal string alignment) "ca" to "abc" is 3 and "ab" to "ba" is 1 (Damerau 1964
  // counts a swap as one error). Confidence: from memory.
  it.each([
    ['kitten', 'sitting', 3],
    ['ca', 'abc', 3],
    ['ab', 'ba', 1],
    ['', 'abc', 3],
    ['same', 'same', 0],
  ])('from %s to %s is %i', (a, b, edits) => {
    expect(editDistance(a, b)).toBe(edits);
  });

  it('is the same both ways and never more than the longer word', () => {
    const word = fc.string({ maxLength: 12 });
    fc.assert(
      fc.property(word, word, (a, b) => {
        expect(editDistance(a, b)).toBe(editDistance(b, a));
        expect(editDistance(a, b)).toBeLessThanOrEqual(Math.max(a.length, b.length));
        expect(editDistance(a, b) === 0).toBe(a === b);
      }),
    );
  });
});

describe('the name that was meant', () => {
  const NAMES = ['altitudeM', 'supplyV', 'tapColdC', 'backEdges', 'depthM', 'widthM'];

  it.each([
    ['altitude', 'altitudeM'],
    ['Altitude_m', 'altitudeM'],
    ['tapCold', 'tapColdC'],
    ['suplyV', 'supplyV'],
    ['depthCm', 'depthM'],
    ['back_edges', 'backEdges'],
    ['wdithM', 'widthM'],
  ])('%s is %s', (asked, meant) => {
    expect(nearest(asked, NAMES)).toBe(meant);
  });

  it('is nothing when nothing is near', () => {
    expect(nearest('colourOfDoor', NAMES)).toBeUndefined();
    expect(nearest('', NAMES)).toBeUndefined();
    const otherwise = message('problems.choice.advice');
    expect(didYouMean(7, NAMES, otherwise)).toBe(otherwise);
  });
});
