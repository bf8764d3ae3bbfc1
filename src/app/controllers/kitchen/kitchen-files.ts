/** Reading and writing kitchen files: its own chunk, since an open run needs none of it. */
export { formatKitchen, parseKitchen } from '../../../core/kitchen/index.ts';
