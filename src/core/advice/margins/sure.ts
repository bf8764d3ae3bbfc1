/** Whatever is less sure than this is warned of, 0 to 1. */
export const SURE = 0.9;
