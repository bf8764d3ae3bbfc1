export { createKitchenStore, type KitchenStore, type SavedKitchen } from './kitchen-store.ts';
export { createSettingsStore, type SettingsStore } from './settings-store.ts';
