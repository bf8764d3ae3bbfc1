import { createContext, type JSX } from 'solid-js';

/**
 * What stays in reach while a sheet lies over the page. A modal sheet makes
 * all beneath it dead, so each sheet carries this itself.
 */
export const SheetCorner = createContext<() => JSX.Element>();
