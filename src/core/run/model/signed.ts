/** Who did it, by their number in the household, from 0; absent: they work alone, or nobody told. */
export type Signed = { readonly person?: number };
