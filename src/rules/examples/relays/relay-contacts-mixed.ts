import { defineExample } from "../example.ts";
import { lampByRelay } from "./bench.ts";

export default defineExample({
  page: [
    "Relays are drawn at rest. Then 30 is joined to 87a; once the coil pulls, 30 is joined to 87. A lamp on 87a burns until somebody switches it on.",
    "The feed comes to 30 and to nothing else: brought to 87a, it cannot be switched off.",
  ],
  trips: () => lampByRelay("changeover").wire("K1.87a", "E1.+"),
  quiet: () => lampByRelay("changeover").wire("K1.87", "E1.+"),
  quietBecause: "The lamp hangs on 87 and is dark while the relay rests.",
});
