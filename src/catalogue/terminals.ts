import type { Confidence } from "./pinouts.ts";

/** A terminal of DIN 72552: it names a terminal of a device, not a wire; both ends of one wire may differ. */
export type Terminal = {
  readonly terminal: string;
  readonly meaning: string;
  /** The function of our vocabulary that it stands for, where there is one. */
  readonly function: string | null;
  readonly confidence: Confidence;
  readonly note: string;
};

function terminal(
  name: string,
  meaning: string,
  confidence: Confidence,
  known: { readonly function?: string; readonly note?: string } = {},
): Terminal {
  return { terminal: name, meaning, confidence, function: known.function ?? null, note: known.note ?? "" };
}

/**
 * Terminal designations of DIN 72552-2, old numbers left out.
 * @source Encyclopaedia article "DIN 72552"; excerpts from the standard in an automotive handbook, 3rd edition;
 * kfz-tech.de, "Klemmenbezeichnungen"; a vehicle-technology training site, "Terminal designations"; an owners'
 * club copy, "Electrical Terminal numbers". The standard itself was not read; each row says how many agree.
 */
export const DIN_72552_SOURCE =
  'Encyclopaedia article "DIN 72552"; "Terminal Designations (Excerpts from DIN Standard 72 552)" in an automotive handbook, 3rd edition; kfz-tech.de, "Klemmenbezeichnungen"';

export const DIN_72552: readonly Terminal[] = [
  // Ignition, preheat, supply.
  terminal("1", "ignition coil or distributor, low-voltage side", "several", { function: "ignition-coil" }),
  terminal("1a", "ignition distributor with two circuits: to breaker I", "several"),
  terminal("1b", "ignition distributor with two circuits: to breaker II", "several"),
  terminal("2", "short-circuit terminal of a magneto", "several", { function: "ignition-cut" }),
  terminal("4", "ignition coil or distributor, high voltage", "several"),
  terminal("4a", "high voltage from coil I", "several"),
  terminal("4b", "high voltage from coil II", "several"),
  terminal("7", "ballast resistor, to or from the distributor", "several"),
  terminal("15", "switched plus after the ignition switch", "several", {
    function: "ignition-feed",
  }),
  terminal("15a", "output of the ballast resistor to coil and starter", "several", {
    note: "One maker uses it for a fused 15.",
  }),
  terminal("15e", "switched plus that stays on while cranking", "one"),
  terminal("15R", "switched plus in the accessory position", "memory", {
    function: "switched-feed",
    note: "A maker's addition, not of the standard's list.",
  }),
  terminal("16", "old number of what is now 15 or 15a", "several"),
  terminal("17", "glow-start switch: start", "several"),
  terminal("19", "glow-start switch: preheat", "several", { function: "glow-plug" }),
  terminal("29", "rear battery plus with crash cut-off", "one"),
  terminal("30", "plus direct from the battery", "several", {
    function: "constant-feed",
    note: "On a relay: common of the contact.",
  }),
  terminal("30a", "plus from battery II, at a changeover between 12 and 24 V", "several", {
    function: "second-battery-feed",
    note: "One maker uses it for a fused 30.",
  }),
  terminal("30b", "30 by way of the hazard switch", "one"),
  terminal("30g", "switched plus from the battery, not the same as 15", "one"),
  terminal("31", "return direct to the battery's minus, or ground", "several", {
    function: "ground",
  }),
  terminal("31a", "return to the minus of battery II", "several", { function: "second-battery-ground" }),
  terminal("31b", "return to minus through a switch or relay", "several"),
  terminal("31c", "return to the minus of battery I, at a changeover", "several"),
  // Motors, starter.
  terminal("32", "motor, return", "several", { note: "32 and 33 may be exchanged to reverse." }),
  terminal("33", "motor, main terminal", "several"),
  terminal("33a", "motor, end-position switch-off", "several"),
  terminal("33b", "motor, shunt field", "several"),
  terminal("33f", "motor, second lower speed", "several"),
  terminal("33g", "motor, third lower speed", "several"),
  terminal("33h", "motor, fourth lower speed", "several"),
  terminal("33L", "motor, rotation to the left", "several"),
  terminal("33R", "motor, rotation to the right", "several"),
  terminal("45", "separate starter relay: output; starter: main current", "several"),
  terminal("45a", "two starters in parallel: output to starter I", "several"),
  terminal("45b", "two starters in parallel: output to starter II", "several"),
  terminal("50", "starter control", "several", { function: "starter-signal" }),
  terminal("50a", "battery changeover relay: output for starter control", "one"),
  // Flasher and direction indicators.
  terminal("49", "flasher unit, input", "several", { function: "flasher-input" }),
  terminal("49a", "flasher unit, output", "several", { function: "flasher-feed" }),
  terminal("49b", "flasher unit, second output", "several"),
  terminal("49c", "flasher unit, third output", "several"),
  terminal("C", "first indicator tell-tale", "several"),
  terminal("C2", "second indicator tell-tale", "several"),
  terminal("C3", "third indicator tell-tale", "several"),
  terminal("L", "indicators, left", "several", { function: "indicator-left" }),
  terminal("R", "indicators, right", "several", { function: "indicator-right" }),
  terminal("L54", "combined indicator and stop lamp, left", "several"),
  terminal("R54", "combined indicator and stop lamp, right", "several"),
  // Generator and regulator.
  terminal("51", "direct current at the rectifier", "several"),
  terminal("59", "alternating current, output; rectifier, input", "one"),
  terminal("61", "charge tell-tale", "several", { function: "alternator-lamp" }),
  terminal("64", "generator control", "one"),
  terminal("B+", "battery plus at the generator", "several", { function: "alternator-output" }),
  terminal("B-", "battery minus at the generator", "several", { function: "ground" }),
  terminal("D+", "dynamo, regulated plus", "several", { function: "alternator-lamp" }),
  terminal("D-", "dynamo, minus", "several", { function: "ground" }),
  terminal("DF", "dynamo field", "several", { function: "alternator-field" }),
  terminal("U", "three-phase terminal", "one"),
  terminal("V", "three-phase terminal", "one"),
  terminal("W", "three-phase terminal; speed pick-off", "one", { function: "alternator-phase" }),
  // Wipers, lighting.
  terminal("53", "wiper motor, plus", "several", { function: "wiper-low" }),
  terminal("53a", "wiper, park switch plus", "several", { function: "wiper-park" }),
  terminal("53b", "wiper, shunt winding", "several", { function: "wiper-high" }),
  terminal("53c", "screen-washer pump", "several", { function: "washer" }),
  terminal("53e", "wiper, brake winding", "several"),
  terminal("53i", "wiper with permanent magnet, third brush", "several"),
  terminal("54", "stop lamps", "several", { function: "stop-lamp" }),
  terminal("54g", "additional systems of a trailer", "disputed", {
    note: "Brake valve, rear fog lamp, constant feed or interior lamp, by source.",
  }),
  terminal("55", "front fog lamps", "several", { function: "fog-front" }),
  terminal("56", "headlamp feed", "several", { function: "headlamp-feed" }),
  terminal("56a", "main beam and its tell-tale", "several", { function: "main-beam" }),
  terminal("56b", "dipped beam", "several", { function: "low-beam" }),
  terminal("56d", "headlamp flasher", "several", { function: "headlamp-flash" }),
  terminal("57", "parking or position lamp", "several", { function: "tail-lamps" }),
  terminal("57a", "parking lamp", "several", { function: "tail-lamps" }),
  terminal("57L", "parking lamp, left", "several", { function: "tail-left" }),
  terminal("57R", "parking lamp, right", "several", { function: "tail-right" }),
  terminal("58", "side, tail, number-plate and instrument lamps", "several", {
    function: "illumination",
  }),
  terminal("58K", "number-plate lamp", "memory", { function: "plate-lamp" }),
  terminal("58d", "dimmed instrument lighting", "one", {
    function: "illumination",
  }),
  terminal("58L", "side and tail lamps, left", "several", { function: "tail-left" }),
  terminal("58R", "side and tail lamps, right", "several", {
    function: "tail-right",
  }),
  // Warning, accessories, switches, relays.
  terminal("71", "horn or tone-sequence unit, input", "several"),
  terminal("72", "alarm switch, rotating beacon", "memory"),
  terminal("75", "radio, lighter socket", "one"),
  terminal("76", "loudspeaker", "memory"),
  terminal("77", "door-valve control", "memory"),
  terminal("81", "switch, input of a break or changeover contact", "several"),
  terminal("81a", "switch, first output on the break side", "several"),
  terminal("81b", "switch, second output on the break side", "several"),
  terminal("82", "switch, input of a make contact", "several"),
  terminal("82a", "switch, first output on the make side", "several"),
  terminal("82b", "switch, second output on the make side", "one"),
  terminal("83", "multi-position switch, input", "one"),
  terminal("83a", "multi-position switch, output in position 1", "one"),
  terminal("83b", "multi-position switch, output in position 2", "one"),
  terminal("84", "current relay, input of coil and contact", "memory"),
  terminal("85", "relay coil, output (minus end)", "several", { function: "relay-coil-return" }),
  terminal("86", "relay coil, input (plus end)", "several", {
    function: "relay-control",
  }),
  terminal("87", "relay, output of the make contact", "disputed", {
    function: "relay-output",
    note: "The standard's list: input of break and changeover contacts. On every common relay: the make output.",
  }),
  terminal("87a", "relay, output of the break contact", "one", {
    function: "relay-output-at-rest",
    note: "The standard's list: first output on the break side.",
  }),
  terminal("87b", "relay, second make output", "one", { note: "The standard's list: second output." }),
  terminal("88", "relay, input of a make contact", "memory"),
  terminal("88a", "relay, first make output", "memory"),
];

const byTerminal = new Map(DIN_72552.map((item) => [item.terminal, item]));

/** What a terminal means: "58d", "kl. 30", "KL30". `null` where the list does not have it. */
export function terminalOf(text: string): Terminal | null {
  const plain = text
    .trim()
    .replace(/^(?:kl|klemme|terminal)\.?\s*/i, "")
    .replace("−", "-");
  return byTerminal.get(plain) ?? null;
}
