import { expect, test } from "vitest";
import { solve } from "../../../src/electrical/solve/solve.ts";
import { writeSpice } from "../../../src/electrical/solve/spice-deck.ts";
import { circuitOf, closable, coil, contact, powerLoad, resistance, supply } from "./elements.ts";

test("a deck names nodes and elements by their numbers, and shows what is open", () => {
  const circuit = circuitOf(
    supply(1, 0, 12.6, 0.01),
    coil(1, 0),
    contact(1, 2, 1, "pulled"),
    contact(1, 3, 1, "released"),
    powerLoad(2, 0, 40),
    closable(3, 0, false),
    resistance(2, 3, 0),
  );
  const { pulled, volts } = solve(circuit);
  expect(
    writeSpice(circuit, pulled, { title: "van\nE1 1 0 5", guess_V: volts.map(Math.round) }),
  ).toBe(`* van?E1 1 0 5
.options reltol=1e-9 abstol=1e-18 vntol=1e-11 gmin=1e-9 itl1=1000 temp=27 tnom=27
V0 n1 inside0 12.6
R0 inside0 n0 0.01
R1 n1 n0 85
R2 n1 n2 0.004
* contact 3 is open
B4 n2 n0 I = v(n2,n0) >= 7 ? 40/max(v(n2,n0),7) : ${40 / 49}*v(n2,n0)
* switch 5 is open
V6 n2 n3 0
Rreference0 n0 0 1
.nodeset v(n0)=0
.nodeset v(n1)=13
.nodeset v(n2)=13
.nodeset v(n3)=13
.op
.end
`);
});
