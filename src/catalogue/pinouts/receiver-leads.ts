import { writeColour } from "../colours.ts";
import { type Pinout, type PinoutRow, row } from "./pinout.ts";

/**
 * Leads of an aftermarket receiver, by what they usually are. Adapter leads follow them too; a vehicle's own do not.
 */
export const RECEIVER_LEADS: {
  readonly source: string;
  readonly rows: readonly Pick<PinoutRow, "function" | "direction" | "colour" | "confidence" | "note">[];
} = {
  source:
    'A mobile-video retailer\'s "Car Stereo Radio Power Wiring Guide"; a car-audio retailer\'s "Wiring Harness Color Standards"; a UK installer\'s "How to identify Aftermarket Car Stereo Wire Colours"; encyclopaedia article "Connectors for car audio". No standard was found.',
  rows: [
    row("", "constant-feed", "takes", ["YE"]),
    row("", "switched-feed", "takes", ["RD"]),
    row("", "ground", "takes", ["BK"]),
    row("", "antenna-power", "gives", ["BU"]),
    row("", "amplifier-turn-on", "gives", ["BU", "WH"], {
      note: "Some receivers have one blue lead for both.",
    }),
    row("", "illumination", "takes", ["OG", "WH"], {
      confidence: "disputed",
      note: "One source tells orange (on or off) from orange with white (variable); the others know only the latter.",
    }),
    row("", "speaker-front-left-plus", "gives", ["WH"]),
    row("", "speaker-front-left-minus", "gives", ["WH", "BK"]),
    row("", "speaker-front-right-plus", "gives", ["GY"]),
    row("", "speaker-front-right-minus", "gives", ["GY", "BK"]),
    row("", "speaker-rear-left-plus", "gives", ["GN"]),
    row("", "speaker-rear-left-minus", "gives", ["GN", "BK"]),
    row("", "speaker-rear-right-plus", "gives", ["VT"]),
    row("", "speaker-rear-right-minus", "gives", ["VT", "BK"]),
    row("", "parking-brake", "takes", ["GN"], {
      confidence: "one",
      note: "Light green; IEC 60757 has one green.",
    }),
    row("", "reverse", "takes", ["VT", "WH"], { confidence: "one", note: "The source says light violet." }),
    row("", "mute", "takes", ["BN"], {
      confidence: "one",
      note: "Brown is ground in vehicles wired to DIN colours.",
    }),
    row("", "speed", "takes", ["PK"], { confidence: "one" }),
  ],
};

/** Each lead is called by its colour, as on the label of such a harness; a colour that stands twice is told apart. */
function called(item: (typeof RECEIVER_LEADS.rows)[number]): PinoutRow {
  const letters = writeColour(item.colour);
  const cavity = item.function === "parking-brake" ? `${letters} light` : letters;
  return {
    ...row(cavity, item.function, item.direction, null, { confidence: item.confidence, note: item.note }),
    colour: item.colour,
  };
}

/** The same leads as a connector without a housing. */
export const RECEIVER_FLYING_LEADS: Pinout = {
  id: "receiver-leads",
  group: "radio",
  title: "Flying leads of a receiver, customary colours",
  side: "equipment",
  form: "flying-leads",
  shell: "",
  voltage_V: 12,
  face: null,
  source: RECEIVER_LEADS.source,
  edition: "",
  caution:
    "Common practice, no standard. A vehicle's own leads do not follow these colours: join by function, never by colour. The parking-brake lead goes to the parking-brake switch. Compare with the receiver's own chart.",
  rows: RECEIVER_LEADS.rows.map(called),
};
