const KEY = "pigtail.last";

/**
 * The harness to start with: what this tab had open before a reload, else what any tab had open last. `null`
 * where there is none, where this tab had an empty sheet, or where storage is forbidden.
 */
export function lastOpen(): string | null {
  try {
    return (sessionStorage.getItem(KEY) ?? localStorage.getItem(KEY)) || null;
  } catch {
    return null;
  }
}

/** The next start opens this harness. What the address asked for has been answered and goes. */
export function rememberLast(id: string): void {
  put(id);
  showAddress("");
}

/** The next start is an empty sheet. */
export function forgetLast(): void {
  put("");
  showAddress("");
}

/** Until a sample is edited there is nothing to keep: a reload reads it afresh by its address. */
export function showSampleInAddress(sample: string): void {
  showAddress(`?sample=${encodeURIComponent(sample)}`);
}

function put(id: string): void {
  try {
    sessionStorage.setItem(KEY, id);
    localStorage.setItem(KEY, id);
  } catch {
    // Without storage there is no last harness; the page says so when it cannot keep one.
  }
}

function showAddress(search: string): void {
  if (location.search !== search) history.replaceState(null, "", location.pathname + search);
}

/** An id that no other tab makes. `crypto.randomUUID` is missing where the page comes over plain http. */
export function freshId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
}
