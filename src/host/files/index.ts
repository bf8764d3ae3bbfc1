export { downloadText, type TextFile } from './download.ts';
export { pickTextFile, type Picked } from './pick-file.ts';
export { shareText, type Shared } from './share.ts';
