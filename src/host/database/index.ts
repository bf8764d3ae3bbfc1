export { openDatabase, type Database, type Tables } from './database.ts';
export { keyValues } from './key-values.ts';
export { StorageError, type StorageCode } from './storage-error.ts';
export type { TableName } from './tables.ts';
