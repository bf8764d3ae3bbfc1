export { copyText } from './copy.ts';
export { downloadText, type TextFile } from './download.ts';
export { pickTextFile } from './pick-file.ts';
export { sha256 } from './sha256.ts';
export { shareText } from './share.ts';
