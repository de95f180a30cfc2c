import { defineExample } from "../example.ts";
import { turnOnByRelay } from "./bench.ts";

export default defineExample({
  page: [
    "A relay with a diode inside has a plus and a minus: 86 is plus. The other way round the diode conducts, and the lead that should pull the coil is shorted to ground.",
    "Relays with a resistor inside, or with nothing, may be wired either way. The picture on the relay's side shows which it is.",
  ],
  trips: () => turnOnByRelay("diode").wire("X2.5", "K1.85").wire("K1.86", "XJ2"),
  quiet: () => turnOnByRelay("resistor").wire("X2.5", "K1.85").wire("K1.86", "XJ2"),
  quietBecause: "A relay with a resistor inside does not mind which end is plus.",
});
