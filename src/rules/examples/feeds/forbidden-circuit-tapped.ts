import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const bay = () =>
  build()
    .vehicle("X1", { "1": "wheel-speed WH", "2": "speed VT", "3": "ground BN" })
    .module("A1", { role: "other", name: "route recorder" })
    .receptacle("X2", "A1", { "1": "speed VT", "2": "ground BK" })
    .path("X1.3", "X2.2");

export default defineExample({
  page: [
    "Leads of the brakes, of the engine's control and of the fuel are left as their maker made them. A new lead on them changes what the control unit measures, and a bad joint takes out what somebody's life may hang on.",
    "Signals such as speed or reverse can be had elsewhere: at the radio's plug, at the instruments, or from an interface module. Follow the maker's instructions for fitting equipment and the local code.",
  ],
  trips: () => bay().path("X1.1", "X2.1").path("X1.2", "XC1"),
  quiet: () => bay().path("X1.2", "X2.1").path("X1.1", "XC1"),
  quietBecause: "The speed comes from the lead that the maker provides for it.",
});
