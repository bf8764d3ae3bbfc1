/** Prints one part of the page alone: what carries `data-print` with this name. */
export function printOnly(part: string): void {
  const { dataset } = document.documentElement;
  dataset['printOnly'] = part;
  window.addEventListener('afterprint', () => delete dataset['printOnly'], { once: true });
  window.print();
}
