/** The groups that rules stand in, in the order in which a fitter looks a harness over. */
export const GROUPS = [
  { id: "spares", name: "Loose ends and spares" },
  { id: "feeds", name: "Feeds" },
  { id: "protection", name: "Fuses and wire sizes" },
  { id: "grounds", name: "Grounds" },
  { id: "speakers", name: "Speakers and amplifiers" },
  { id: "signals", name: "Signal and antenna leads" },
  { id: "control", name: "Control leads" },
  { id: "camera", name: "Cameras" },
  { id: "relays", name: "Relays, diodes and back-feed" },
  { id: "data", name: "Data bus, modules and steering-wheel buttons" },
  { id: "joints", name: "Joints and terminals" },
  { id: "routing", name: "Routing and protection of the loom" },
  { id: "trailer", name: "Trailer and exterior lamps" },
  { id: "people", name: "Safety of people" },
  { id: "drawing", name: "The drawing itself" },
  { id: "own", name: "The shop's own rules" },
] as const;

export type GroupId = (typeof GROUPS)[number]["id"];

/** The name of a group as a person reads it; the id itself for one that this version has not heard of. */
export function nameGroup(id: string): string {
  return GROUPS.find((group) => group.id === id)?.name ?? id;
}
