import regularUrl from "@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf?url";
import boldUrl from "@expo-google-fonts/source-sans-3/700Bold/SourceSans3_700Bold.ttf?url";
import type { Typeface } from "../sheets/writers/typeface.ts";

/**
 * Fetches the typeface's files, the same that the page shows, for papers to embed.
 * @throws Error if they cannot be had
 */
export async function loadTypeface(): Promise<Typeface> {
  const [regular, bold] = (await Promise.all([regularUrl, boldUrl].map(fetchBytes))) as [
    Uint8Array,
    Uint8Array,
  ];
  return { regular, bold };
}

async function fetchBytes(url: string): Promise<Uint8Array> {
  const answer = await fetch(url);
  if (!answer.ok) throw new Error("The typeface could not be loaded. Reload the page and print again.");
  return new Uint8Array(await answer.arrayBuffer());
}
