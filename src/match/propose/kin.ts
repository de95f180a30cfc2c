import { functionOf, isGround, partnerOf } from "../../catalogue/functions.ts";

/**
 * Functions that may be one circuit under two names, and how likely (common practice, no source). From 0.8 on they
 * are joined where nothing else competes; below that a person is asked.
 */
const KIN: readonly (readonly [string, string, number])[] = [
  ["ground", "amplifier-ground", 0.9],
  ["ground", "camera-ground", 0.9],
  ["ground", "ground-lamps", 0.85],
  ["ground", "ground-constant", 0.6],
  ["ground", "ground-switched", 0.6],
  ["ground", "antenna-ground", 0.6],
  ["ground", "second-battery-ground", 0.5],
  ["ground", "sense-ground", 0.45],
  ["ground", "audio-ground", 0.35],
  ["ground", "shield-drain", 0.35],
  ["ground", "usb-ground", 0.3],
  ["ground", "aux-ground", 0.3],
  ["ground", "steering-key-ground", 0.5],
  ["ground", "network-common", 0.5],
  ["ground", "relay-coil-return", 0.5],
  ["ground", "dimmer-return", 0.2],
  ["sense-ground", "audio-ground", 0.6],
  ["sense-ground", "steering-key-ground", 0.6],
  ["audio-ground", "aux-ground", 0.6],
  ["camera-ground", "video-shield", 0.4],
  ["microphone-minus", "microphone-shield", 0.5],
  ["constant-feed", "amplifier-feed", 0.8],
  ["constant-feed", "trailer-charge", 0.6],
  ["constant-feed", "second-battery-feed", 0.4],
  ["constant-feed", "alternator-output", 0.3],
  ["constant-feed", "winch-feed", 0.6],
  ["constant-feed", "anti-lock-feed", 0.4],
  ["second-battery-feed", "trailer-charge", 0.5],
  ["switched-feed", "ignition-feed", 0.6],
  ["switched-feed", "run-feed", 0.5],
  ["switched-feed", "delayed-feed", 0.7],
  ["switched-feed", "power-socket-feed", 0.6],
  ["ignition-feed", "run-feed", 0.6],
  ["ignition-feed", "refrigerator-feed", 0.6],
  ["ignition-feed", "charge-enable", 0.4],
  ["switched-feed", "refrigerator-feed", 0.5],
  ["constant-feed", "power-socket-feed", 0.4],
  ["alternator-lamp", "charge-enable", 0.5],
  ["alternator-phase", "tachometer", 0.6],
  ["amplifier-turn-on", "antenna-power", 0.45],
  ["amplifier-turn-on", "enable", 0.6],
  ["amplifier-turn-on", "wake-up", 0.4],
  ["amplifier-turn-on", "relay-control", 0.4],
  ["enable", "wake-up", 0.5],
  ["remote-control", "steering-key-1", 0.35],
  ["reverse", "camera-trigger", 0.85],
  ["reverse", "camera-power", 0.5],
  ["camera-trigger", "camera-power", 0.3],
  ["camera-trigger", "relay-control", 0.3],
  ["illumination", "tail-lamps", 0.6],
  ["illumination", "tail-left", 0.35],
  ["illumination", "tail-right", 0.35],
  ["illumination", "dimmer-return", 0.2],
  ["tail-lamps", "tail-left", 0.6],
  ["tail-lamps", "tail-right", 0.6],
  ["tail-lamps", "marker-lamps", 0.7],
  ["tail-lamps", "plate-lamp", 0.6],
  ["tail-left", "plate-lamp", 0.3],
  ["tail-left", "marker-lamps", 0.4],
  ["tail-right", "marker-lamps", 0.4],
  ["stop-turn-left", "indicator-left", 0.6],
  ["stop-turn-right", "indicator-right", 0.6],
  ["stop-turn-left", "stop-lamp", 0.4],
  ["stop-turn-right", "stop-lamp", 0.4],
  ["stop-lamp", "brake-switch", 0.7],
  ["stop-lamp", "stop-lamp-high", 0.6],
  ["headlamp-feed", "low-beam", 0.5],
  ["fog-rear", "fog-front", 0.2],
  ["navigation-lights", "port-light", 0.6],
  ["navigation-lights", "starboard-light", 0.6],
  ["navigation-lights", "stern-light", 0.5],
  ["work-lamp", "spot-lamp", 0.3],
  ["work-lamp", "deck-light", 0.5],
  ["data-receive", "data-transmit", 0.6],
  ["data", "data-receive", 0.4],
  ["data", "data-transmit", 0.4],
  ["data", "lin", 0.3],
  ["data", "diagnostics", 0.4],
  ["k-line", "diagnostics", 0.6],
  ["can-high", "second-can-high", 0.7],
  ["can-low", "second-can-low", 0.7],
  ["mute", "phone-plus", 0.2],
  ["coolant-temperature", "oil-temperature", 0.1],
  ["water-pump", "wash-down-pump", 0.3],
  ["bilge-pump", "bilge-float", 0.25],
  ["horn", "horn-switch", 0.3],
  ["trailer-auxiliary", "reverse", 0.3],
  ["trailer-auxiliary", "constant-feed", 0.3],
  ["trailer-charge", "trailer-auxiliary", 0.4],
  ["blower", "cooling-fan", 0.2],
  ["wiper-low", "wiper-interval", 0.3],
  ["washer", "washer-rear", 0.2],
];

const kin = new Map<string, Map<string, number>>();
for (const [a, b, share] of KIN) {
  for (const [one, other] of [
    [a, b],
    [b, a],
  ] as const) {
    const list = kin.get(one) ?? new Map<string, number>();
    list.set(other, share);
    kin.set(one, list);
  }
}

/** Other functions that may be the same circuit. */
export function kinOf(name: string): ReadonlyMap<string, number> {
  return kin.get(name) ?? NONE;
}
const NONE: ReadonlyMap<string, number> = new Map();

/** How likely two functions name one circuit: 1 for the same, 0 where they never do. */
export function kinship(a: string, b: string): number {
  return a === b ? 1 : (kin.get(a)?.get(b) ?? 0);
}

/** Feeds that are live with the key out. */
const ALWAYS_LIVE = new Set([
  "constant-feed",
  "amplifier-feed",
  "second-battery-feed",
  "trailer-charge",
  "alternator-output",
  "winch-feed",
  "power-socket-feed",
]);
/** Feeds that the key switches. */
const KEYED = new Set(["switched-feed", "ignition-feed", "run-feed", "delayed-feed", "refrigerator-feed"]);

/**
 * Why two functions must not be joined, whatever else speaks for it; `null` where nothing forbids it.
 */
export function vetoOf(a: string, b: string): string | null {
  if (a === b) return null;
  if ((ALWAYS_LIVE.has(a) && KEYED.has(b)) || (KEYED.has(a) && ALWAYS_LIVE.has(b))) {
    if (kinship(a, b) === 0) return "a constant feed and a switched one";
  }
  if (partnerOf(a) === b) {
    return a.startsWith("can-") || a.startsWith("second-can-") ? "CAN high and CAN low" : "plus and minus";
  }
  const one = functionOf(a);
  const other = functionOf(b);
  if ((one.group === "feed" && isGround(b)) || (isGround(a) && other.group === "feed"))
    return "a feed and a ground";
  if (one.channel && other.channel && one.channel !== other.channel) return "two different channels";
  const feeds = [one, other].filter((item) => item.group === "feed").length;
  if (feeds === 1) {
    const rest = one.group === "feed" ? other : one;
    if (["speaker", "line-level", "video", "data"].includes(rest.group)) return "a supply and a signal";
  }
  return null;
}

/** True for what can burn a wire or a unit when it is joined wrongly. */
export function isPower(name: string): boolean {
  const { group } = functionOf(name);
  return group === "feed" || group === "ground" || group === "safety";
}
