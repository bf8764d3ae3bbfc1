import { describe, expect, it } from 'vitest';
import { waysToMarkup } from '../../tools/check-markup.ts';

describe('the check for markup out of texts', () => {
  it.each([
    'element.innerHTML = name;',
    '<p innerHTML={props.name} />',
    'element.insertAdjacentHTML("beforeend", name)',
    'document.write(name)',
    '<iframe srcdoc={name} />',
    '<a href={`javascript:${name}`}>',
    'new Function(name)()',
    'eval(name)',
    'setTimeout("go()", 10)',
    'new DOMParser().parseFromString(name)',
  ])('finds %s', (source) => {
    expect(waysToMarkup(`// a line before\n${source}`).map(({ line }) => line)).toEqual([2]);
  });

  it.each([
    'element.textContent = name;',
    'screen.evaluate(name)',
    'retrieval(name)',
    'setTimeout(() => go(), 10)',
    '<text>{props.name}</text>',
  ])('leaves %s', (source) => {
    expect(waysToMarkup(source)).toEqual([]);
  });
});
