export { downloadText, type TextFile } from './download.ts';
export { pickTextFile } from './pick-file.ts';
export { shareText } from './share.ts';
