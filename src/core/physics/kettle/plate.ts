/**
 * What the power of a heating appliance may differ from its plate: −10 % to +5 %.
 * IEC 60335-1, clause 10 (from memory).
 */
export const PLATE_LOW = 0.9;
export const PLATE_HIGH = 1.05;
