import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const wheel = () =>
  build().vehicle("X1", { "1": "airbag YE", "2": "horn BN" }).unit("X2", { "1": "horn BN" });

export default defineExample({
  page: [
    "Airbags and belt tensioners are fired by a very small current. A splice, a meter's ohms range or a test lamp can be enough, and a damaged lead can keep a bag from firing.",
    "Their covers are often yellow, but the colour is a hint and no proof. The maker's instructions, local codes and licensed practice decide who may work there and how.",
    "This program draws no help for such a circuit: it only says that it should be left alone.",
  ],
  trips: () => wheel().wire("X1.1", "XC1", "YE").wire("X1.2", "X2.1", "BN"),
  quiet: () => wheel().wire("X1.2", "X2.1", "BN"),
  quietBecause: "The airbag's cavity is left as the vehicle has it.",
});
