import type {
  Cavity,
  Colour,
  ColourCode,
  End,
  Harness,
  Part,
  PartId,
  PartKind,
  Place,
  Run,
  RunId,
  Wire,
  WireId,
} from "./harness.ts";
import { FORMAT_VERSION } from "./schema/harness.ts";

const ID_PREFIX = {
  parts: "p",
  wires: "w",
  cables: "c",
  runs: "r",
  waivers: "v",
  testRecord: "t",
  photos: "f",
} as const;

/**
 * Letter classes of IEC 81346-2 (from memory): the first letter is the class; a second letter of ours tells
 * apart what the standard puts into one class, so that a splice is not taken for a plug.
 */
const DESIGNATION_LETTERS: Record<PartKind, string> = {
  connector: "X",
  splice: "XJ",
  cap: "XC",
  ground: "XE",
  supply: "G",
  fuse: "F",
  relay: "K",
  switch: "S",
  diode: "R",
  resistor: "R",
  capacitor: "C",
  load: "E",
  speaker: "P",
  module: "A",
};

/** A harness with nothing in it: 12 V, 20 °C, metric, A4 landscape. */
export function emptyHarness(): Harness {
  return {
    format: "pigtail-harness",
    formatVersion: FORMAT_VERSION,
    settings: {
      systemVoltage_V: 12,
      ambient_degC: 20,
      sizes: "metric",
      dropCritical_percent: 3,
      dropOther_percent: 10,
      sheet: { size: "A4", orientation: "landscape", fit: "one-page" },
      electrical: {
        rest_V: "unknown",
        running_V: "unknown",
        cranking_V: "unknown",
        engineBay_degC: "unknown",
        ampacityBook: "unknown",
        fuseRule: "unknown",
        standbyLimit_mA: "unknown",
        chargeFloor_percent: "unknown",
        slack_percent: "unknown",
        terminations_mm: "unknown",
        currency: "",
        prices: [],
      },
      rules: {
        profile: "road-vehicle",
        shop: "",
        negativeFuse: "by-profile",
        taps: "by-profile",
        joints: "by-profile",
        limits: [],
        own: [],
      },
      vehicle: { highVoltage: "unknown", lamps: "unknown" },
    },
    titleBlock: {
      owner: "",
      documentNumber: "",
      revision: "A",
      dateOfIssue: "",
      title: "",
      supplementaryTitle: "",
      creator: "",
      approver: "",
      documentType: "wiring diagram",
      status: "draft",
      language: "en",
      vehicle: "",
    },
    parts: {},
    wires: {},
    cables: {},
    runs: {},
    waivers: {},
    testRecord: {},
    photos: {},
    layout: { places: {}, paths: {} },
  };
}

/**
 * Hands out ids and designations that are not yet taken in a harness, nor handed out before by this maker.
 * Numbers run on from the highest in use, so that a deleted part's number is not given to a stranger.
 */
export class Names {
  private readonly nextId = new Map<string, number>();
  private readonly nextNumber = new Map<string, number>();

  constructor(private readonly harness: Harness) {}

  part(): PartId {
    return this.id("parts") as PartId;
  }

  wire(): WireId {
    return this.id("wires") as WireId;
  }

  id(section: keyof typeof ID_PREFIX): string {
    const prefix = ID_PREFIX[section];
    let next = this.nextId.get(section);
    if (next === undefined) {
      next = 1;
      for (const id of Object.keys(this.harness[section])) {
        const number = Number(id.slice(2));
        if (Number.isSafeInteger(number) && number >= next) next = number + 1;
      }
    }
    this.nextId.set(section, next + 1);
    return `${prefix}:${next}`;
  }

  designation(kind: PartKind): string {
    const letters = DESIGNATION_LETTERS[kind];
    return this.numbered(letters, () => Object.values(this.harness.parts).map((part) => part.designation));
  }

  wireDesignation(): string {
    return this.numbered("W", () => Object.values(this.harness.wires).map((wire) => wire.designation));
  }

  private numbered(letters: string, taken: () => string[]): string {
    let next = this.nextNumber.get(letters);
    if (next === undefined) {
      next = 1;
      for (const name of taken()) {
        if (!name.startsWith(letters)) continue;
        const number = Number(name.slice(letters.length));
        if (Number.isSafeInteger(number) && number >= next) next = number + 1;
      }
    }
    this.nextNumber.set(letters, next + 1);
    return `${letters}${next}`;
  }
}

/** A cavity with nothing known about it but its label. */
export function makeCavity(label: string, known: Partial<Cavity> = {}): Cavity {
  return {
    label,
    function: "unknown",
    text: "",
    direction: "unknown",
    lead: null,
    use: "expected",
    current_A: "unknown",
    fuse_A: "unknown",
    gives: "unknown",
    actsOn: "unknown",
    ...known,
  };
}

export function makeColour(base: ColourCode, tracer: ColourCode | null = null): Colour {
  return { base, tracer };
}

export function makeWire(
  id: WireId,
  designation: string,
  ends: readonly [End, End],
  known: Partial<Wire> = {},
): Wire {
  return {
    id,
    designation,
    ends,
    colour: null,
    area_mm2: "unknown",
    length_m: "unknown",
    material: "unknown",
    insulation: "unknown",
    strands: "unknown",
    label: "",
    runs: [],
    note: "",
    ...known,
  };
}

/** A stretch of the loom of which nothing is known but its designation. */
export function makeRun(id: RunId, designation: string, known: Partial<Omit<Run, "id">> = {}): Run {
  return {
    id,
    designation,
    from: "",
    to: "",
    length_m: "unknown",
    zone: "unknown",
    covering: "unknown",
    passes: [],
    near: [],
    hinge: "unknown",
    support_m: "unknown",
    bend_mm: "unknown",
    dripLoop: "unknown",
    drilled: "unknown",
    note: "",
    ...known,
  };
}

type PartOf<K extends PartKind> = Extract<Part, { kind: K }>;

/** What a new part of each kind starts as: what is not known says so. */
const FRESH: { readonly [K in PartKind]: Omit<PartOf<K>, "id" | "designation" | "name" | "note" | "kind"> } =
  {
    connector: {
      belongsTo: { side: "vehicle", module: null },
      gender: "unknown",
      form: "housing",
      shell: null,
      keying: null,
      view: "wire-side",
      rows: [],
      cavities: [],
      chart: null,
      matedWith: null,
      cover: "none",
    },
    splice: { method: "unknown", cover: "unknown", zone: "unknown", liveHalf: "unknown", barrel: "unknown" },
    cap: { method: "end-cap" },
    ground: { where: "", surface: "unknown", serves: "unknown" },
    supply: {
      voltage_V: 12,
      capacity_Ah: "unknown",
      resistance_ohm: "unknown",
      cover: "unknown",
      sensor: "unknown",
    },
    fuse: { rating_A: "unknown", form: "unknown", holder: "unknown" },
    relay: { poles: "changeover", suppression: "unknown", coil_ohm: "unknown", rating_A: "unknown" },
    switch: { operatedBy: "hand", rating_A: "unknown" },
    diode: { rating_A: "unknown" },
    resistor: { resistance_ohm: "unknown", power_W: "unknown" },
    capacitor: { capacitance_uF: "unknown" },
    load: {
      type: "lamp",
      function: "unknown",
      current_A: "unknown",
      behaviour: "unknown",
      standby_A: "unknown",
      polarised: false,
      voltage_V: "unknown",
      video: "unknown",
    },
    speaker: { position: "other", type: "full-range", impedance_ohm: "unknown", power_W: "unknown" },
    module: {
      role: "other",
      side: "equipment",
      cavities: [],
      outputs: "unknown",
      leastLoad_ohm: "unknown",
      channelPower_W: "unknown",
      standby_A: "unknown",
      feedsCrossed: false,
      wakes: "unknown",
      sleeps: "unknown",
      voltage_V: "unknown",
      video: "unknown",
      signalGround: "unknown",
      near: [],
      switches: [],
    },
  };

/** A new part of a kind, with what is known of it filled in. */
export function makePart<K extends PartKind>(
  kind: K,
  id: PartId,
  designation: string,
  known: Partial<Omit<PartOf<K>, "kind" | "id" | "designation">> = {},
): PartOf<K> {
  return { id, designation, name: "", note: "", kind, ...FRESH[kind], ...known } as unknown as PartOf<K>;
}

/** Rows of a face with the given count of columns, numbered left to right, top to bottom. */
export function faceRows(count: number, rowCount: number): number[][] {
  const columns = Math.ceil(count / Math.max(1, rowCount));
  return Array.from({ length: rowCount }, (_, row) =>
    Array.from({ length: columns }, (_, column) => {
      const number = row * columns + column + 1;
      return number <= count ? number : 0;
    }),
  );
}

export function makePlace(x: number, y: number, pinned = false, turned = false): Place {
  return { x, y, pinned, turned };
}
