import type { Screen } from './screen.ts';

/** What is wrong with the words on a screen: one over another, or cut off. */
export type WordTrouble = {
  /** "this over that". */
  readonly over: readonly string[];
  /** Cut off at the side of the screen, or by a box that cannot be scrolled. */
  readonly cut: readonly string[];
  /** Lines of words that were looked at. */
  readonly looked: number;
};

/**
 * Lines of text as they are seen: each text node's boxes, less what a box that
 * scrolls hides, what lies under a sheet, a bar or a band, and what is only for
 * screen readers. Two of different elements may touch, but not lie over each
 * other by more than a third of the lower one's height. A bar hides what it lies
 * over, also where it hides a part of a line.
 */
const LOOK = `(() => {
  const BARS = '.main-bar, .sheet-head, .run-strip > .refusal, .working-line, .sheet-body > .button-row, .stop-corner--over, .cooling-bar, .onward, .survey-plan, .banner, .arm-screen, dialog[open]';
  const barOf = (one) => {
    const bar = one.closest(BARS);
    return bar && getComputedStyle(bar).position !== 'static' ? bar : null;
  };
  const MEET_PX = 2;
  const top = [...document.querySelectorAll('dialog[open]')].at(-1);
  const root = top ?? document.body;
  const lines = [];
  const cut = [];
  const scrollsX = (one) => /auto|scroll/.test(getComputedStyle(one).overflowX);
  const scrollsY = (one) => /auto|scroll/.test(getComputedStyle(one).overflowY);
  const walk = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
  for (let node = walk.nextNode(); node; node = walk.nextNode()) {
    const text = node.textContent.trim();
    const parent = node.parentElement;
    if (text === '' || !parent || parent.closest('script, style, option, .visually-hidden')) continue;
    if (!parent.checkVisibility({ opacityProperty: true, visibilityProperty: true })) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    for (const rect of range.getClientRects()) {
      if (rect.width < 2 || rect.height < 2) continue;
      // Ink is lower than its line.
      const box = {
        left: rect.left + 1,
        right: rect.right - 1,
        top: rect.top + rect.height * 0.18,
        bottom: rect.bottom - rect.height * 0.2,
      };
      const said = text.slice(0, 40);
      let isGone = false;
      for (let up = parent; up && up !== document.documentElement; up = up.parentElement) {
        const style = getComputedStyle(up);
        if (style.clipPath === 'inset(50%)') isGone = true;
        if (style.overflowX === 'visible' && style.overflowY === 'visible') continue;
        if (style.overflow === 'visible' || up.tagName === 'svg' || up.tagName === 'BODY') continue;
        const frame = up.getBoundingClientRect();
        if (box.right > frame.right + MEET_PX && !scrollsX(up)) cut.push(said + ' | in ' + up.className);
        if (box.bottom > frame.bottom + MEET_PX && box.top < frame.bottom && !scrollsY(up))
          cut.push(said + ' | in ' + up.className);
        if (box.top >= frame.bottom || box.bottom <= frame.top || box.left >= frame.right) isGone = true;
        box.top = Math.max(box.top, frame.top);
        box.bottom = Math.min(box.bottom, frame.bottom);
        box.left = Math.max(box.left, frame.left);
        box.right = Math.min(box.right, frame.right);
      }
      if (isGone || box.bottom - box.top < 2 || box.right - box.left < 2) continue;
      if (box.top >= innerHeight || box.bottom <= 0) continue;
      if (box.right > innerWidth + MEET_PX || box.left < -MEET_PX) cut.push(said + ' | at the side');
      const x = Math.min(innerWidth - 1, Math.max(0, (box.left + box.right) / 2));
      const y = Math.min(innerHeight - 1, Math.max(0, (box.top + box.bottom) / 2));
      const seen = document.elementFromPoint(x, y);
      const isCovered = seen && !seen.contains(parent) && !parent.contains(seen) &&
        [...document.querySelectorAll(BARS)].some((bar) => bar.contains(seen) && !bar.contains(parent));
      if (isCovered) continue;
      lines.push({ said, parent, box, bar: barOf(parent) });
    }
  }
  const over = new Set();
  for (const [i, a] of lines.entries())
    for (const b of lines.slice(i + 1)) {
      if (a.parent === b.parent) continue;
      // What is told in a bar for a moment hides the part of a line that it lies over.
      if ((a.bar === null) !== (b.bar === null)) continue;
      const wide = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
      const high = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
      const least = Math.min(a.box.bottom - a.box.top, b.box.bottom - b.box.top) / 3;
      if (wide > MEET_PX && high > Math.max(MEET_PX, least)) over.add(a.said + ' over ' + b.said);
    }
  return { over: [...over], cut: [...new Set(cut)], looked: lines.length };
})()`;

/** Looks at every line of text that is seen now. */
export function wordTrouble(screen: Screen): Promise<WordTrouble> {
  return screen.see<WordTrouble>(LOOK);
}

/**
 * All of what is looked at, screen by screen down the page, or down the sheet
 * that lies over it: each line of text is looked at where it is seen.
 */
export async function wordTroubleDown(screen: Screen): Promise<WordTrouble> {
  const found = { over: new Set<string>(), cut: new Set<string>(), looked: 0 };
  await screen.see(`(${SCROLLED})(0)`);
  for (let atPx = 0; ;) {
    // The layout has settled when the next frame is drawn.
    await screen.see('new Promise((r) => requestAnimationFrame(() => requestAnimationFrame(r)))');
    const { over, cut, looked } = await wordTrouble(screen);
    for (const one of over) found.over.add(one);
    for (const one of cut) found.cut.add(one);
    found.looked += looked;
    const nextPx = await screen.see<number>(`(${SCROLLED})(${atPx} + innerHeight * 0.6)`);
    if (nextPx <= atPx) break;
    atPx = nextPx;
  }
  await screen.see(`(${SCROLLED})(0)`);
  return { over: [...found.over], cut: [...found.cut], looked: found.looked };
}

/** Moves what scrolls to here, CSS px; tells how far it went. */
const SCROLLED = `(topPx) => {
  const top = [...document.querySelectorAll('dialog[open]')].at(-1);
  const within = top && [top, ...top.querySelectorAll('*')].find((one) =>
    one.scrollHeight > one.clientHeight + 1 && /auto|scroll/.test(getComputedStyle(one).overflowY));
  const moved = top ? within : document.scrollingElement;
  if (!moved) return 0;
  moved.scrollTo({ top: topPx, behavior: 'instant' });
  return moved.scrollTop;
}`;
