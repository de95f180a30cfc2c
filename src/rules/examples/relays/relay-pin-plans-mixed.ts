import { defineExample } from "../example.ts";
import { lampByRelay } from "./bench.ts";

const two = (poles: "changeover" | "double-make") =>
  lampByRelay(poles)
    .part("load", "E2", { type: "lamp", function: "work-lamp", current_A: 4 })
    .wire("K1.87", "E1.+")
    .wire("E2.−", "XJ2");

export default defineExample({
  page: [
    "The middle blade of a five-blade relay is 87a in one kind and a second 87 in the other, and both kinds enter one socket. With the wrong one, the second lamp burns while the first is off.",
    "Print the pin plan beside the socket, for whoever changes the relay in five years.",
  ],
  trips: () => two("changeover").wire("K1.87a", "E2.+"),
  quiet: () => two("double-make").wire("K1.87b", "E2.+"),
  quietBecause: "This relay has two contacts 87, and lights both lamps together.",
});
