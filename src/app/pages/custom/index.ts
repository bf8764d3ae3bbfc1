export { OwnCustomSheet } from './own-custom-sheet.tsx';
