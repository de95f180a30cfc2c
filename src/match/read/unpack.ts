import { Inflate } from "fflate";

/** One file in a ZIP archive, still packed. */
export type Packed = { readonly name: string; readonly method: number; readonly data: Uint8Array };

const MOST_ENTRIES = 5000;

/**
 * Lists what an archive holds, by its directory at the end (PKWARE APPNOTE 4.3).
 * @returns `null` where it is none, or where it is spread over several or is encrypted
 */
export function listArchive(bytes: Uint8Array): readonly Packed[] | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = findEnd(view);
  if (end === null) return null;
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  const entries: Packed[] = [];
  for (let index = 0; index < Math.min(count, MOST_ENTRIES); index++) {
    if (at + 46 > bytes.length || view.getUint32(at, true) !== 0x02014b50) return null;
    const isEncrypted = (view.getUint16(at + 8, true) & 1) === 1;
    const method = view.getUint16(at + 10, true);
    const size = view.getUint32(at + 20, true);
    const nameLength = view.getUint16(at + 28, true);
    const skip = nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    const local = view.getUint32(at + 42, true);
    if (isEncrypted || local + 30 > bytes.length || view.getUint32(local, true) !== 0x04034b50) return null;
    const name = new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + nameLength));
    const start = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
    if (start + size > bytes.length) return null;
    entries.push({ name, method, data: bytes.subarray(start, start + size) });
    at += 46 + skip;
  }
  return entries;
}

function findEnd(view: DataView): number | null {
  const least = Math.max(0, view.byteLength - 22 - 0xffff);
  for (let at = view.byteLength - 22; at >= least; at--) {
    if (view.getUint32(at, true) === 0x06054b50) return at;
  }
  return null;
}

/** A packed kilobyte becomes a megabyte at most, so a step never costs more than a few. */
const STEP_BYTES = 4096;

/**
 * Unpacks a file as UTF-8 text, and stops as soon as enough is seen: what a few kilobytes unpack to may be without
 * end.
 * @param isEnough looks at the text so far, each time some 100 kB have come
 * @returns the text and whether all of it is there; `null` where it is damaged
 */
export function unpackText(
  { method, data }: Packed,
  mostCharacters: number,
  isEnough: (text: string) => boolean = () => false,
): { readonly text: string; readonly isWhole: boolean } | null {
  const decoder = new TextDecoder();
  if (method === 0) {
    const text = decoder.decode(data.subarray(0, mostCharacters));
    return { text, isWhole: data.length <= mostCharacters };
  }
  if (method !== 8) return null;
  let text = "";
  let looked = 0;
  const inflate = new Inflate((chunk) => {
    if (text.length <= mostCharacters) text += decoder.decode(chunk, { stream: true });
  });
  try {
    for (let at = 0; at < data.length; at += STEP_BYTES) {
      const isLast = at + STEP_BYTES >= data.length;
      inflate.push(data.subarray(at, at + STEP_BYTES), isLast);
      if (isLast) break;
      if (text.length > mostCharacters) return { text: text.slice(0, mostCharacters), isWhole: false };
      if (text.length - looked < 100_000) continue;
      looked = text.length;
      if (isEnough(text)) return { text, isWhole: false };
    }
  } catch {
    return null;
  }
  if (text.length > mostCharacters) return { text: text.slice(0, mostCharacters), isWhole: false };
  return { text, isWhole: true };
}
