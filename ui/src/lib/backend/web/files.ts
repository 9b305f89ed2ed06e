/** Files that a browser lets a person pick, save and share. */
import type { WebFile } from './worker';

/** Lets the person pick a file; null if they cancel. */
export function pick(extensions: string[]): Promise<File | null> {
  const input = document.createElement('input');
  input.type = 'file';
  input.accept = extensions.map((one) => `.${one}`).join(',');
  input.hidden = true;
  // Some engines forget an element that is not on the page.
  document.body.append(input);
  return new Promise((picked) => {
    const end = (file: File | null) => {
      input.remove();
      picked(file);
    };
    input.addEventListener('change', () => end(input.files?.[0] ?? null));
    input.addEventListener('cancel', () => end(null));
    input.click();
  });
}

/** Puts a file among the downloads. The browser does not say whether it got there. */
export function download({ name, type, bytes }: WebFile): void {
  const link = document.createElement('a');
  const address = URL.createObjectURL(new Blob([bytes], { type }));
  link.href = address;
  link.download = name;
  link.click();
  // The download reads the address after this function.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** A type that share sheets take. Ours is unknown to them. */
const ANY = 'application/octet-stream';

function shareable(name: string, bytes: Uint8Array<ArrayBuffer>): ShareData {
  return { files: [new File([bytes], name, { type: ANY })] };
}

/** Whether the browser has a share sheet for hand-ins. */
export function shares(): boolean {
  const data = shareable('a.sfhandin', new Uint8Array(1));
  // Missing in some browsers.
  const { canShare } = navigator as Partial<Navigator>;
  return canShare?.call(navigator, data) ?? false;
}

/** Shares a file. */
export async function share({ name, bytes }: WebFile): Promise<'went' | 'cancelled' | 'cannot'> {
  try {
    await navigator.share(shareable(name, bytes));
    return 'went';
  } catch (error) {
    return error instanceof DOMException && error.name === 'AbortError' ? 'cancelled' : 'cannot';
  }
}
