import { readFileSync } from "node:fs";
import { createRequire } from "node:module";

const resolve = createRequire(import.meta.url).resolve;
const FILES = {
  regular: "@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf",
  bold: "@expo-google-fonts/source-sans-3/700Bold/SourceSans3_700Bold.ttf",
};

/**
 * Where the typeface's file lies on this disk.
 * @param {"regular" | "bold"} weight
 */
export function typefaceFile(weight) {
  return resolve(FILES[weight]);
}

/**
 * The typeface as it ships in its package, for the command line, tests and pictures.
 * @param {"regular" | "bold"} weight
 * @returns {Uint8Array} a static TrueType file
 */
export function readTypeface(weight) {
  return new Uint8Array(readFileSync(typefaceFile(weight)));
}
