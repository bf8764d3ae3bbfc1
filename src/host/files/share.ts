import type { TextFile } from './download.ts';

/** `not-supported`: offer the download instead. */
type Shared = 'shared' | 'dismissed' | 'not-supported' | 'failed';

/** Hands a file to another app of the device, from a touch and by the person's choice. Never rejects. */
export async function shareText(file: TextFile, title: string): Promise<Shared> {
  const data: ShareData = { title, files: [new File([file.text], file.name, { type: file.type })] };
  if (typeof navigator.canShare !== 'function' || !navigator.canShare(data)) return 'not-supported';
  try {
    await navigator.share(data);
    return 'shared';
  } catch (error) {
    return error instanceof DOMException && error.name === 'AbortError' ? 'dismissed' : 'failed';
  }
}
