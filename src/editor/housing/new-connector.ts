import { type Ready, readyCavities } from "../../catalogue/ready.ts";
import type { Edit } from "../../graph/edits/edit.ts";
import { group } from "../../graph/edits/edit.ts";
import { type CavityRow, mirrored } from "../../graph/edits/housing.ts";
import type { Cavity, Connector, Harness, JobSide, PartId } from "../../graph/harness.ts";
import { faceRows, makeCavity, makePart, makePlace, Names } from "../../graph/make.ts";
import type { Scene } from "../../layout/scene.ts";
import { freeSpot, freshShape } from "../canvas/room-model.ts";

type Spot = { readonly x: number; readonly y: number };

/** What a person has filled in so far. Nothing that matters is filled in for them. */
export type ConnectorDraft = {
  readonly side: JobSide | null;
  readonly designation: string;
  readonly name: string;
  readonly view: Connector["view"] | null;
  readonly count: string;
  readonly rows: string;
  /** Rows that were pasted or taken from a pinout; with none the cavities are counted. */
  readonly cavities: readonly CavityRow[];
  /** A pinout's own face, as contact numbers; `null` numbers the rows left to right. */
  readonly face: Connector["rows"] | null;
  readonly chart: Connector["chart"];
  readonly shell: string | null;
  readonly keying: string | null;
  readonly form: Connector["form"];
  readonly gender: Connector["gender"];
  readonly note: string;
};

export type DraftProblems = Partial<Record<"side" | "designation" | "view" | "count" | "rows", string>>;

export function emptyDraft(harness: Harness, side: JobSide | null): ConnectorDraft {
  return {
    side,
    designation: new Names(harness).designation("connector"),
    name: "",
    view: null,
    count: "",
    rows: "1",
    cavities: [],
    face: null,
    chart: null,
    shell: null,
    keying: null,
    form: "housing",
    gender: "unknown",
    note: "",
  };
}

type FromReady = Pick<
  ConnectorDraft,
  "cavities" | "face" | "chart" | "shell" | "keying" | "form" | "gender" | "note"
>;

/** What a ready connector fills in, as it stands on the chosen side and is seen from the chosen view. */
export function fromReady(ready: Ready, side: JobSide, view: Connector["view"]): FromReady {
  const { face, chart, shell, keying, form, gender, note } = ready;
  return {
    cavities: readyCavities(ready, side),
    face: face && (face.view === view ? face.rows : mirrored(face.rows)),
    chart,
    shell,
    keying,
    form,
    gender,
    note,
  };
}

/** The edit that adds the connector, or what is still missing, field by field. */
export function addConnector(
  harness: Harness,
  scene: Scene,
  draft: ConnectorDraft,
  at: Spot | null,
):
  | { readonly ok: true; readonly edit: Edit; readonly part: PartId }
  | { readonly ok: false; readonly problems: DraftProblems } {
  const problems: { -readonly [Key in keyof DraftProblems]: string } = {};
  const designation = draft.designation.trim();
  const count = draft.cavities.length || Number(draft.count.trim() || Number.NaN);
  const rowCount = Number(draft.rows.trim());
  if (!draft.side) problems.side = "Say which side it belongs to.";
  if (designation === "") problems.designation = "It needs a designation, like X1.";
  else if (Object.values(harness.parts).some((part) => part.designation === designation)) {
    problems.designation = `Another one is called ${designation}.`;
  }
  if (!draft.view) {
    problems.view = "Say from which side you see the cavities: the other way round is a mirror image.";
  }
  if (!Number.isInteger(count) || count < 1 || count > 2000) {
    problems.count = "Write how many cavities it has, 1 to 2000.";
  }
  if (!draft.face && (!Number.isInteger(rowCount) || rowCount < 1 || rowCount > 60)) {
    problems.rows = "Write a whole number of rows, 1 to 60.";
  }
  const { side, view } = draft;
  if (!side || !view || Object.keys(problems).length > 0) return { ok: false, problems };
  const cavities = draftCavities(draft, count);
  const names = new Names(harness);
  const part = makePart("connector", names.part(), designation, {
    name: draft.name.trim(),
    belongsTo: { side, module: null },
    view,
    cavities,
    rows: draft.face ?? faceRows(cavities.length, Math.min(rowCount, cavities.length)),
    chart: draft.chart,
    shell: draft.shell,
    keying: draft.keying,
    form: draft.form,
    gender: draft.gender,
    note: draft.note,
  });
  const spot = at ?? connectorSpot(scene, part);
  const place = makePlace(spot.x, spot.y, at !== null);
  return {
    ok: true,
    part: part.id,
    edit: group(`add ${designation}`, [{ kind: "add-part", part, place }]),
  };
}

function draftCavities(draft: ConnectorDraft, count: number): readonly Cavity[] {
  if (draft.cavities.length === 0) {
    return Array.from({ length: count }, (_, index) => makeCavity(String(index + 1)));
  }
  const labels = new Set(draft.cavities.map((row) => row.label));
  let next = 1;
  return draft.cavities.map((row) => {
    let { label } = row;
    if (label === undefined) {
      while (labels.has(String(next))) next++;
      label = String(next++);
    }
    return makeCavity(label, { ...row, label });
  });
}

/** Room kept between the two sides for joints and protection. */
const BETWEEN = 480;

/** The vehicle's connectors stand under one another on the left, the equipment's on the right. */
function connectorSpot(scene: Scene, part: Connector): Spot {
  const shape = freshShape(part, false);
  const { side } = part.belongsTo;
  let lowest: { x: number; bottom: number } | null = null;
  for (const placed of scene.parts.values()) {
    if (placed.part.kind !== "connector" || placed.part.belongsTo.side !== side) continue;
    const bottom = placed.y + placed.shape.height;
    if (!lowest || bottom > lowest.bottom) lowest = { x: placed.x, bottom };
  }
  if (lowest) return freeSpot(scene, shape, lowest.x, lowest.bottom + 32);
  if (scene.parts.size === 0) return side === "vehicle" ? { x: 0, y: 0 } : { x: BETWEEN, y: 0 };
  const { x, y, width } = scene.bounds;
  return side === "vehicle"
    ? freeSpot(scene, shape, x - BETWEEN - shape.width, y)
    : freeSpot(scene, shape, x + width + BETWEEN, y);
}
