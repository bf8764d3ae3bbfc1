export { openDatabase, type Database, type Tables } from './database.ts';
export { keyValues } from './key-values.ts';
export { StorageError } from './storage-error.ts';
