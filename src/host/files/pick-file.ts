/** `none`: the person chose nothing. */
type Picked =
  | { readonly kind: 'picked'; readonly name: string; readonly text: string }
  | { readonly kind: 'none' }
  | { readonly kind: 'too-large'; readonly name: string; readonly bytes: number }
  /** `why`: the platform's own words. */
  | { readonly kind: 'unreadable'; readonly name: string; readonly why: string };

async function read(file: File, maxBytes: number): Promise<Picked> {
  if (file.size > maxBytes) return { kind: 'too-large', name: file.name, bytes: file.size };
  try {
    return { kind: 'picked', name: file.name, text: await file.text() };
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return { kind: 'unreadable', name: file.name, why };
  }
}

/**
 * Lets a person choose one text file. From a touch. No time limit: a person
 * may look for a file as long as they like.
 * `accept`: as of the HTML attribute, ".json,application/json".
 */
export function pickTextFile(accept: string, maxBytes: number): Promise<Picked> {
  return new Promise((resolve) => {
    const input = document.createElement('input');
    input.type = 'file';
    input.accept = accept;
    input.hidden = true;
    const done = (picked: Picked): void => {
      input.remove();
      resolve(picked);
    };
    input.addEventListener('cancel', () => done({ kind: 'none' }));
    input.addEventListener('change', () => {
      const file = input.files?.[0];
      if (file) void read(file, maxBytes).then(done);
      else done({ kind: 'none' });
    });
    // Some engines open no dialogue for an element that is not in the page.
    document.body.append(input);
    input.click();
  });
}
