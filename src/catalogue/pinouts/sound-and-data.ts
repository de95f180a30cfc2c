import type { ColourCode } from "../../graph/harness.ts";
import { type Pinout, row } from "./pinout.ts";

function rca(
  id: string,
  title: string,
  functions: readonly [string, string],
  colour: ColourCode,
  caution: string,
): Pinout {
  return {
    id,
    group: "sound-and-data",
    title,
    side: "equipment",
    form: "line-plug",
    shell: "RCA",
    voltage_V: null,
    face: null,
    source:
      'A video-connector tutorial and an AV-connector wiki page; for video also encyclopaedia article "Composite video".',
    edition: "",
    caution: `${caution} The plug does not tell an output from an input: say which it is. The colour is that of the plug, not of the lead.`,
    rows: [
      row("centre", functions[0], "unknown", null, { note: `Plug marked ${colour}.` }),
      row("shell", functions[1], "unknown", null, { note: "Return and screen: no chassis ground." }),
    ],
  };
}

const PAIR = "Front and rear pairs wear the same colours: the row says front.";

export const RCA_LEFT = rca(
  "rca-left",
  "RCA, line level, left (white)",
  ["line-front-left-signal", "line-front-left-shield"],
  "WH",
  `${PAIR} Left is white or black.`,
);
export const RCA_RIGHT = rca(
  "rca-right",
  "RCA, line level, right (red)",
  ["line-front-right-signal", "line-front-right-shield"],
  "RD",
  PAIR,
);
export const RCA_VIDEO = rca(
  "rca-video",
  "RCA, composite video (yellow)",
  ["video-signal", "video-shield"],
  "YE",
  "About 1 V peak to peak (one source); 75 ohm cable (from memory).",
);

/** Type A; directions as seen from the host, which gives the 5 V. */
export const USB_2: Pinout = {
  id: "usb-2",
  group: "sound-and-data",
  title: "USB 2.0, 4 contacts, host end",
  side: "equipment",
  form: "line-plug",
  shell: "USB A",
  voltage_V: null,
  face: null,
  source:
    'Hardware Book, page on USB, which cites the specification; encyclopaedia article "Universal Serial Bus", section on physical appearance. The specification itself was not read.',
  edition: "USB 2.0",
  caution:
    "5 V, not 12 V. Rarely seen lead colours: orange for plus, gold for D−, blue for ground. The screen goes to ground at the host end only. D+ and D− are one twisted pair, 28 AWG; the power pair's length is limited by its size: 0.81 m at 28 AWG, 2.08 m at 24 AWG, 5 m at 20 AWG (one source).",
  rows: [
    row("1", "usb-power", "gives", ["RD"], { note: "+5 V." }),
    row("2", "usb-data-minus", "both", ["WH"]),
    row("3", "usb-data-plus", "both", ["GN"]),
    row("4", "usb-ground", "gives", ["BK"]),
  ],
};
