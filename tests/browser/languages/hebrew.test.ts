import { speaksOnly } from '../support/pseudo/speaks-only.ts';

await speaksOnly('he', 'rtl');
