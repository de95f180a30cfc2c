import { define, type WireFunction } from "./define.ts";

const PLUS = { polarity: "plus" } as const;
const MINUS = { polarity: "minus" } as const;

/** Data lines, picture, antenna, and what must be left alone. */
export const DATA: readonly WireFunction[] = [
  define(
    "can-high",
    "CAN high",
    "data",
    "can high data? bus? | canhigh bus? data? | can plus | can@0.5 bus? data?",
    {
      ...PLUS,
      synonyms: ["can-h", "can h", "can hi"],
    },
  ),
  define(
    "can-low",
    "CAN low",
    "data",
    "can low data? bus? | canlow bus? data? | can minus | can@0.5 bus? data?",
    {
      ...MINUS,
      synonyms: ["can-l", "can l", "can lo"],
    },
  ),
  define(
    "second-can-high",
    "second CAN high",
    "data",
    "can high second | canhigh second | can high 2 | canhigh 2 | can high comfort | canhigh comfort | can high infotainment | canhigh infotainment | can2 high | can high body | canhigh body",
    { ...PLUS, synonyms: ["can 2 high"] },
  ),
  define(
    "second-can-low",
    "second CAN low",
    "data",
    "can low second | canlow second | can low 2 | canlow 2 | can low comfort | canlow comfort | can low infotainment | canlow infotainment | can2 low | can low body | canlow body",
    { ...MINUS, synonyms: ["can 2 low"] },
  ),
  define("lin", "LIN data", "data", "lin bus? data? signal? line? steering? key?", {
    synonyms: ["lin bus"],
  }),
  define("k-line", "K line", "data", "kline data? signal? | kline diagnostics", {
    synonyms: ["k-line", "iso 9141"],
  }),
  define("l-line", "L line", "data", "lline data?", { synonyms: ["l-line"] }),
  define("j1850-plus", "J1850 bus +", "data", "j1850 plus bus? | j1850@0.6 bus?", { ...PLUS, synonyms: [] }),
  define("j1850-minus", "J1850 bus −", "data", "j1850 minus bus?", { ...MINUS, synonyms: [] }),
  define("data", "data line", "data", "data signal? bus? line? | bus@0.6 data? | serial data?", {
    synonyms: ["data", "bus"],
  }),
  define("data-receive", "data in", "data", "data input | receive data? serial? | serial receive", {
    synonyms: ["rx"],
  }),
  define("data-transmit", "data out", "data", "data output | transmit data? serial? | serial transmit", {
    synonyms: ["tx"],
  }),
  define("diagnostics", "diagnostics", "data", "diagnostics signal? data? line?", {
    synonyms: ["diagnosis"],
  }),
  define(
    "usb-data-plus",
    "USB data +",
    "data",
    "usb data plus | usb dplus | dplus@0.3 data? | data plus@0.6",
    { ...PLUS, givenBy: "either", synonyms: ["usb d+"] },
  ),
  define(
    "usb-data-minus",
    "USB data −",
    "data",
    "usb data minus | usb dminus | dminus data? | data minus@0.6",
    { ...MINUS, givenBy: "either", synonyms: ["usb d-"] },
  ),
  define(
    "video-signal",
    "video signal",
    "video",
    "video signal? plus? input? output? composite? | camera video signal? plus? reverse? input? | composite video? signal? | camera signal plus? | camera picture signal? | picture signal? | camera@0.6 reverse? | video front camera | video rear camera? | camera input@0.5",
    {
      ...PLUS,
      synonyms: ["video", "cvbs", "composite video"],
    },
  ),
  define(
    "video-shield",
    "video shield",
    "video",
    "video shield | video ground signal? | video minus | camera shield | camera video ground | camera video shield | camera video minus | camera signal ground | camera signal minus | composite video? ground | picture ground",
    {
      ...MINUS,
      synonyms: ["video ground"],
    },
  ),
  define(
    "antenna-signal",
    "antenna signal",
    "antenna",
    "antenna signal coax? radio? | antenna radio coax? | antenna@0.25 coax? | antenna coax | antenna input | radio frequency antenna? | dab antenna | antenna core",
    {
      givenBy: "vehicle",
      synonyms: ["rf", "aerial signal"],
    },
  ),
  define("gps-antenna", "satellite-navigation antenna", "antenna", "gps antenna? signal?", {
    givenBy: "either",
    synonyms: ["gps"],
  }),
  define(
    "network-supply",
    "data-network supply",
    "data",
    "nets network? | network feed data? | network feed",
    { active: "supply", synonyms: ["net-s"] },
  ),
  define("network-common", "data-network common", "data", "netc network? | network ground | network common", {
    active: "ground",
    synonyms: ["net-c"],
  }),
  define(
    "airbag",
    "airbag",
    "safety",
    "airbag signal? plus? minus? left? right? driver? passenger? | squib plus? minus? | pretensioner | srs",
    { synonyms: ["srs", "squib", "pretensioner"] },
  ),
  define(
    "high-voltage",
    "high voltage",
    "safety",
    "highvoltage plus? minus? feed? battery? interlock? | traction battery plus? minus?",
    { synonyms: ["hv", "traction battery"] },
  ),
];
