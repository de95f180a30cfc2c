/**
 * The text of a file: UTF-8 or UTF-16 where it says so or holds together as such, else Windows-1252, which older
 * spreadsheets write.
 */
export function decodeText(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder("utf-16le").decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder("utf-16be").decode(bytes);
  const sample = bytes.subarray(0, 512);
  const zeros = [0, 0];
  for (const [index, byte] of sample.entries()) if (byte === 0) zeros[index % 2]!++;
  if (sample.length >= 8 && zeros[1]! > sample.length * 0.4 && zeros[0] === 0)
    return new TextDecoder("utf-16le").decode(bytes);
  if (sample.length >= 8 && zeros[0]! > sample.length * 0.4 && zeros[1] === 0)
    return new TextDecoder("utf-16be").decode(bytes);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}
