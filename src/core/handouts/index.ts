export { doorHandout, doorHandoutText, type DoorCase } from './door/door-handout.ts';
export { markClashes } from './labels/clashes.ts';
export { labelsOf, type Label, type MarkLabel, type RestingLabel } from './labels/labels.ts';
export { labelPages, usualPaper, type Paper } from './labels/paper.ts';
export {
  answerMessages,
  rabbiHandout,
  rabbiHandoutText,
  type ChangesByQuestion,
  type HandoutQuestion,
} from './rabbi/rabbi-handout.ts';
export { PRODUCT_GROUPS, productsOf, type Product } from './shopping/products.ts';
export { productMarks, productsText } from './shopping/products-text.ts';
