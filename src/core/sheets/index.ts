export { doorSheet, doorSheetText, type DoorCase } from './door/door-sheet.ts';
export { markClashes } from './labels/clashes.ts';
export { labelsOf, type Label, type MarkLabel, type RestingLabel } from './labels/labels.ts';
export { labelPages, usualPaper, type Paper } from './labels/paper.ts';
export {
  answerMessages,
  rabbiSheet,
  rabbiSheetText,
  type ChangesByQuestion,
  type SheetQuestion,
} from './rabbi/rabbi-sheet.ts';
export { PRODUCT_GROUPS, productsOf, type Product } from './shopping/products.ts';
export { productMarks, productsText } from './shopping/products-text.ts';
