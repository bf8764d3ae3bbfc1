export { formatBackup, type Backup } from './format-backup.ts';
export { readBackup } from './read-backup.ts';
