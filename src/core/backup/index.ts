export {
  BACKUP_FORMAT,
  formatBackup,
  type Backup,
  type KitchenInBackup,
  type RunInBackup,
} from './format-backup.ts';
export { readBackup, type ReadBackup } from './read-backup.ts';
