import { define, SUPPLY, type WireFunction } from "./define.ts";

const driven = (id: string, name: string, meanings: string, synonyms: readonly string[] = []): WireFunction =>
  define(id, name, "control", meanings, { ...SUPPLY, synonyms });

/** Trailers, boats, and equipment of working vehicles. */
export const EQUIPMENT: readonly WireFunction[] = [
  driven(
    "trailer-brake",
    "electric trailer brake",
    "electric brake trailer? output? feed? | trailer brake electric? output? feed? signal? | brake control output? | brake output@0.6 | brake@0.15 | brake electric",
    ["electric brake", "brake controller"],
  ),
  driven(
    "trailer-present",
    "trailer detection",
    "trailer present signal? | trailer sense signal? | trailer coding | trailer sense",
  ),
  driven("breakaway", "breakaway switch", "breakaway switch? brake? signal?"),
  driven(
    "anti-lock-feed",
    "anti-lock brake feed",
    "abs feed plus? constant? switched? trailer? | abs trailer@0.7 | ebs feed plus?",
  ),
  driven(
    "anti-lock-warning",
    "anti-lock brake warning",
    "abs warning lamp? trailer? | abs lamp | ebs warning lamp?",
  ),
  driven("lift-axle", "lift axle", "axle lift signal? valve? | axle control"),
  driven(
    "trailer-auxiliary",
    "trailer auxiliary",
    "trailer auxiliary feed? | auxiliary@0.5 feed? circuit? | auxiliary 1@0.5",
  ),
  driven("electric-jack", "electric jack", "jack electric? feed? motor?"),
  driven(
    "winch-in",
    "winch in",
    "winch input cable? trigger? signal? control? | winch pull | pull cable | winch wind",
    [],
  ),
  driven(
    "winch-out",
    "winch out",
    "winch output cable? trigger? signal? control? | winch unwind | unwind cable | release cable | winch release",
    [],
  ),
  driven("winch-feed", "winch feed", "winch feed plus? battery? | winch motor plus? | winch plus"),
  driven(
    "air-compressor",
    "air compressor",
    "compressor air feed? motor? plus? | compressor@0.6 feed? motor? relay?",
  ),
  driven(
    "water-pump",
    "water pump",
    "water pump feed? motor? plus? fresh? | pump@0.5 feed? plus? motor? | pump fresh",
  ),
  driven("waste-valve", "waste valve", "waste valve feed? | waste tank valve"),
  driven("hydraulic-pump", "hydraulic pump", "hydraulic pump feed? motor? | hydraulic feed?"),
  driven("tail-lift-up", "tail lift up", "taillift up signal? | lift up@0.6 | platform up"),
  driven("tail-lift-down", "tail lift down", "taillift down signal? | lift down@0.6 | platform down"),
  driven("step-out", "step out", "step output motor? | step down | step open"),
  driven("step-in", "step in", "step input motor? | step up | step close"),
  driven("tipper-up", "tipper up", "tip up"),
  driven("tipper-down", "tipper down", "tip down"),
  driven(
    "heater-control",
    "auxiliary heater",
    "heater auxiliary control? feed? signal? | heater turnon signal? | heater switch signal? | heater@0.6 feed? | heater timer",
  ),
  driven("inverter-control", "inverter control", "inverter control? switch? remote? turnon? signal?"),
  driven("solar-input", "solar panel +", "solar plus? feed? panel? input?", ["solar"]),
  driven(
    "bilge-pump",
    "bilge pump",
    "pump@0.4 plus? | bilge pump? feed? plus? motor? manual? | bilge manual",
    ["bilge"],
  ),
  driven(
    "bilge-float",
    "bilge float switch",
    "bilge float switch? automatic? | float switch | bilge automatic | bilge switch | bilge pump automatic",
  ),
  driven(
    "bilge-alarm",
    "bilge alarm",
    "bilge alarm signal? | water high alarm level? | bilge high water? alarm? level?",
  ),
  driven("bilge-blower", "bilge blower", "bilge blower feed? | blower engine room? | bilge fan"),
  driven("trim-up", "trim up", "trim up signal? motor? | tilt up motor?"),
  driven("trim-down", "trim down", "trim down signal? motor? | tilt down motor?"),
  driven("trim-sender", "trim sender", "trim sender signal? gauge? | trim position | trim gauge"),
  driven("livewell-pump", "livewell pump", "livewell pump? feed?"),
  driven("windlass-up", "windlass up", "windlass up signal?"),
  driven("windlass-down", "windlass down", "windlass down signal?"),
  driven("wash-down-pump", "wash-down pump", "washdown pump? feed? | deck washer pump?"),
  driven("seat-switch", "seat switch", "seat switch operator? signal? | operator present switch?"),
  driven("hour-meter", "hour meter", "hour meter signal? feed?"),
  driven(
    "implement-signal",
    "implement signal",
    "implement signal? lamp? position? | hitch up signal? | hitch work? signal? | implement work signal? | hitch position signal?",
  ),
];
