import { createContext, type JSX } from 'solid-js';

/**
 * What stays in reach while a sheet lies over the page. A modal sheet makes
 * all beneath it dead, so each sheet carries this itself.
 */
export const SheetCorner = createContext<() => JSX.Element>();

/** What stays in sight over every sheet, also over the one that the corner opens. */
export const SheetTop = createContext<() => JSX.Element>();
