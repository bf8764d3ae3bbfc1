/** Handouts of paper that printers take: ISO 216 and ANSI/ASME Y14.1. */
export const PAPERS = {
  a4: { widthMm: 210, heightMm: 297 },
  letter: { widthMm: 215.9, heightMm: 279.4 },
} as const;
export type Paper = keyof typeof PAPERS;

/** Where Letter is the usual paper: Unicode CLDR, supplemental data, `paperSize`. */
const LETTER_COUNTRIES: ReadonlySet<string> = new Set([
  'BZ',
  'CA',
  'CL',
  'CO',
  'CR',
  'GT',
  'MX',
  'NI',
  'PA',
  'PH',
  'PR',
  'SV',
  'US',
  'VE',
]);

/** @param country ISO 3166-1 alpha-2 */
export function usualPaper(country: string): Paper {
  return LETTER_COUNTRIES.has(country) ? 'letter' : 'a4';
}

/** No usual printer prints nearer to the edge than this, mm; common practice, no published source. */
export const PAPER_MARGIN_MM = 10;
/** The line over the labels of a page, mm. */
export const PAGE_HEAD_MM = 12;
/** One label as it is cut out: two beside each other lie on either paper. */
export const LABEL = { widthMm: 90, heightMm: 48 } as const;

type LabelGrid = { readonly columns: number; readonly rows: number };

/** How many labels lie on a page of a paper, beside and under each other. */
export function labelGrid(paper: Paper): LabelGrid {
  const { widthMm, heightMm } = PAPERS[paper];
  const insideMm = heightMm - 2 * PAPER_MARGIN_MM - PAGE_HEAD_MM;
  return {
    columns: Math.floor((widthMm - 2 * PAPER_MARGIN_MM) / LABEL.widthMm),
    rows: Math.floor(insideMm / LABEL.heightMm),
  };
}

/** Labels page by page, none of them empty. */
export function labelPages<T>(labels: readonly T[], paper: Paper): readonly (readonly T[])[] {
  const { columns, rows } = labelGrid(paper);
  const size = columns * rows;
  return Array.from({ length: Math.ceil(labels.length / size) }, (_, page) =>
    labels.slice(page * size, (page + 1) * size),
  );
}
