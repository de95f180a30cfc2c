const KEY = "pigtail.last";

/** The harness that was open last in this browser; `null` where there is none or storage is forbidden. */
export function lastOpen(): string | null {
  try {
    return localStorage.getItem(KEY);
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
  put(null);
  showAddress("");
}

/** Until a sample is edited there is nothing to keep: a reload reads it afresh by its address. */
export function showSampleInAddress(sample: string): void {
  showAddress(`?sample=${encodeURIComponent(sample)}`);
}

function put(id: string | null): void {
  try {
    if (id === null) localStorage.removeItem(KEY);
    else localStorage.setItem(KEY, id);
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
