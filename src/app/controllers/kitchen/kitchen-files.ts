/** Reading and writing kitchen files: its own chunk, since an open run needs none of it. */
export { formatKitchen, parseKitchen, problemMessage } from '../../../core/kitchen/index.ts';
