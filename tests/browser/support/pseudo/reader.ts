/**
 * Runs inside the page: everything on it that is read, by eye or by ear, and
 * what of it is cut off at the side. Kept free of imports: it is handed to the
 * browser as text.
 */
export type ReadText = {
  /** Where it stands: "text", "aria-label", "placeholder"… */
  readonly as: string;
  readonly text: string;
  /** The element that holds it, for whoever looks for it. */
  readonly in: string;
};

type Reader = {
  texts(): ReadText[];
  cutOff(): string[];
  /** What the page gave to be saved as a file, in order. */
  readonly saved: readonly string[];
};

export function installReader(): void {
  const SPOKEN = [
    'aria-label',
    'aria-description',
    'aria-valuetext',
    'title',
    'placeholder',
    'alt',
  ];
  const shown = (element: Element): boolean =>
    element.checkVisibility({ visibilityProperty: true, contentVisibilityAuto: true });
  const nameOf = (element: Element): string => {
    const { className } = element;
    const classes = typeof className === 'string' ? className.trim().split(/\s+/).join('.') : '';
    return `${element.tagName.toLowerCase()}${classes === '' ? '' : `.${classes}`}`;
  };
  /** Choices of a list are read when it is opened. */
  const isRead = (element: Element): boolean =>
    shown(element.closest('select') ?? element) &&
    // Languages are called as their own readers call them.
    !element.closest('script, style, template, option[lang]');
  /** What stands in a text node; of a drawing's text in lines all of them, at the first. */
  const standsIn = (node: Node): string => {
    const lines = [...(node.parentElement?.closest('text')?.querySelectorAll('tspan') ?? [])];
    if (lines.length < 2) return node.nodeValue?.trim() ?? '';
    return lines[0]?.contains(node) ? lines.map((one) => one.textContent).join(' ') : '';
  };
  const written = (): ReadText[] => {
    const texts: ReadText[] = [];
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walk.nextNode(); node; node = walk.nextNode()) {
      const text = standsIn(node);
      const parent = node.parentElement;
      if (text !== '' && parent && isRead(parent))
        texts.push({ as: 'text', text, in: nameOf(parent) });
    }
    return texts;
  };
  const attributes = (): ReadText[] =>
    [...document.body.querySelectorAll('*')].filter(isRead).flatMap((element) => {
      const spoken = SPOKEN.map((name) => [name, element.getAttribute(name) ?? ''] as const);
      const value = element instanceof HTMLInputElement && element.type === 'text';
      return [...spoken, ['value', value ? element.value : ''] as const]
        .filter(([, text]) => text !== '')
        .map(([as, text]) => ({ as, text, in: nameOf(element) }));
    });
  /** Texts that the style sheets write. */
  const drawn = (): ReadText[] =>
    [...document.body.querySelectorAll('*')].filter(isRead).flatMap((element) =>
      ['::before', '::after']
        .map((part) => getComputedStyle(element, part).content)
        .filter((content) => content.startsWith('"'))
        .map((text) => ({ as: 'style', text, in: nameOf(element) })),
    );
  const texts = (): ReadText[] => [
    { as: 'document title', text: document.title, in: 'title' },
    ...written(),
    ...attributes(),
    ...drawn(),
  ];
  /** In a field a long text can be scrolled; in a drawing the app shortens it itself. */
  const cutOff = (): string[] => {
    const found: string[] = [];
    const page = document.documentElement;
    if (page.scrollWidth > page.clientWidth)
      found.push(`the page is ${page.scrollWidth} px wide on ${page.clientWidth} px`);
    for (const element of document.body.querySelectorAll<HTMLElement>('*')) {
      if (!isRead(element) || element.closest('svg, .visually-hidden, option, input')) continue;
      const { overflowX, display } = getComputedStyle(element);
      if (display === 'inline' || !['hidden', 'clip'].includes(overflowX)) continue;
      if (element.scrollWidth > element.clientWidth + 1)
        found.push(
          `${nameOf(element)}: ${element.scrollWidth} px in ${element.clientWidth} px: ${element.innerText.slice(0, 60)}`,
        );
    }
    // Words that stand out of the box that holds them: a button, a cell, a row.
    for (const element of document.body.querySelectorAll<HTMLElement>('button, a, label, th, td')) {
      if (!isRead(element) || element.closest('svg')) continue;
      const box = element.getBoundingClientRect();
      const range = document.createRange();
      range.selectNodeContents(element);
      const words = range.getBoundingClientRect();
      // A cell to write in has none, and so no place of its own.
      if (words.width === 0) continue;
      const outPx = Math.max(words.right - box.right, box.left - words.left);
      if (box.width > 2 && outPx > 1 && !element.querySelector('.visually-hidden'))
        found.push(
          `${nameOf(element)}: words stand out by ${Math.round(outPx)} px: ${element.innerText.slice(0, 60)}`,
        );
    }
    return found;
  };
  const saved: string[] = [];
  const make = URL.createObjectURL.bind(URL);
  URL.createObjectURL = (what) => {
    if (what instanceof Blob) void what.text().then((text) => saved.push(text));
    return make(what);
  };
  const reader: Reader = { texts, cutOff, saved };
  Object.assign(globalThis, { reader });
}
