import { type Planter, planter } from "./planter.ts";
import { boardJob, lampJob } from "./power.ts";
import { receiverJob } from "./sound.ts";
import type { Yard } from "./yard.ts";

const BOTH = { volts: [12, 24] } as const;

/** A fused lead from the vehicle by one joint to a lamp, in one run. */
function jointed(
  way: "solder" | "crimp" | "bullet" | "block",
  zone: "cabin" | "outside" | "engine-bay" = "cabin",
) {
  return (yard: Yard) => {
    const run = yard.run({ zone, length_m: 1.8, covering: zone === "cabin" ? "split-loom" : "conduit" });
    const vehicle = yard.vehicle({ "1": "switched-feed 1.5 fuse:7.5", "2": "ground 1.5" });
    const load = yard.part("load", "E", {
      type: "lamp",
      function: "work-lamp",
      current_A: 3,
      behaviour: "filament",
      voltage_V: yard.range(),
    });
    const joint = yard.joint(way, 1.5, zone);
    const plan = { area_mm2: 1.5, length_m: 1, runs: [run], ways: ["direct"] } as const;
    const one = yard.lead(`${vehicle}.1`, `${joint}.1`, { ...plan, tag: "in" });
    const two = yard.lead(`${joint}.2`, `${load}.+`, { ...plan, tag: "out" });
    yard.lead(`${load}.−`, `${vehicle}.2`, { ...plan, length_m: 2, tag: "ground", colour: "BK" });
    return { run, vehicle, load, joint, wires: [...one.wires, ...two.wires] };
  };
}

type Jointed = ReturnType<ReturnType<typeof jointed>>;
const changed =
  (changes: object) =>
  (yard: Yard, { joint, wires }: Jointed) => {
    yard.build.change(joint, changes);
    return [joint, ...wires];
  };

/** Section K of the reference: joints, terminals, caps. */
export const JOINTS: readonly Planter[] = [
  planter(
    "K01",
    "tap in the cabin",
    ["tap-joint"],
    jointed("crimp"),
    changed({ method: "tap", barrel: "unknown", cover: "housing" }),
    BOTH,
  ),
  planter(
    "K01",
    "tap outside",
    ["tap-joint", "joint-unsealed-in-wet-place"],
    jointed("crimp", "outside"),
    changed({ method: "tap", barrel: "unknown", cover: "housing" }),
  ),
  planter(
    "K02",
    "twisted and taped",
    ["twisted-joint"],
    jointed("solder"),
    changed({ method: "twisted", cover: "tape" }),
    { volts: [12, 24] },
  ),
  planter("K03", "taped", ["taped-joint"], jointed("solder"), changed({ cover: "tape" }), BOTH),
  planter(
    "K04",
    "plain sleeve outside",
    ["joint-unsealed-in-wet-place"],
    jointed("solder", "outside"),
    changed({ cover: "sleeve" }),
    BOTH,
  ),
  planter(
    "K04",
    "bare crimp in the engine bay",
    ["joint-unsealed-in-wet-place", "joint-bare"],
    jointed("crimp", "engine-bay"),
    changed({ cover: "none" }),
  ),
  planter(
    "K04",
    "wet place told by the run alone",
    ["joint-unsealed-in-wet-place"],
    jointed("solder", "outside"),
    changed({ cover: "sleeve", zone: "unknown" }),
  ),
  planter(
    "K05",
    "four wires in a crimp",
    ["too-many-wires-in-joint"],
    jointed("block"),
    (yard, { joint, wires, load }) => {
      yard.build.change(joint, { method: "crimped-butt", cover: "adhesive-sleeve", barrel: "yellow" });
      const extra = [0, 1].map(() =>
        yard.part("load", "E", {
          type: "lamp",
          function: "work-lamp",
          current_A: 0.5,
          behaviour: "filament",
          voltage_V: yard.range(),
        }),
      );
      for (const one of extra) {
        yard.wire(`${joint}.2`, `${one}.+`, { tag: "more", area_mm2: 1.5, length_m: 0.5 });
        yard.wire(`${one}.−`, yard.ground(), { tag: "more", area_mm2: 1.5, length_m: 0.5, colour: "BK" });
      }
      return [joint, ...wires, load];
    },
    BOTH,
  ),
  planter(
    "K05",
    "two wires on one side of a bullet",
    ["too-many-wires-in-joint"],
    jointed("bullet"),
    (yard, { joint }) => {
      const one = yard.part("load", "E", {
        type: "lamp",
        function: "work-lamp",
        current_A: 0.5,
        behaviour: "filament",
        voltage_V: yard.range(),
      });
      yard.wire(`${joint}.2`, `${one}.+`, { tag: "more", area_mm2: 1.5, length_m: 0.5 });
      yard.wire(`${one}.−`, yard.ground(), { tag: "more", area_mm2: 1.5, length_m: 0.5, colour: "BK" });
      return [joint];
    },
    BOTH,
  ),
  planter(
    "K06",
    "thin and thick in one crimp",
    ["sizes-far-apart-in-crimp", "barrel-does-not-fit-wires"],
    jointed("crimp"),
    (yard, { joint, wires }) => {
      yard.build.change(joint, { barrel: "unknown" });
      yard.build.change(wires[0]!, { area_mm2: 6 });
      yard.build.change(wires[1]!, { area_mm2: 1 });
      return [joint, ...wires];
    },
  ),
  planter(
    "K07",
    "yellow barrel on thin wires",
    ["barrel-does-not-fit-wires"],
    jointed("crimp"),
    changed({ barrel: "yellow" }),
    BOTH,
  ),
  planter(
    "K08",
    "two joints at one place of a run",
    ["joints-at-one-place"],
    jointed("solder"),
    (yard, { run, vehicle, joint, load }) => {
      const second = yard.joint("solder", 1.5);
      const plan = { area_mm2: 1.5, length_m: 1, runs: [run] } as const;
      const old = yard.tagged("ground");
      yard.remove(old.wires[0]!);
      const one = yard.wire(`${vehicle}.2`, `${second}.1`, { ...plan, tag: "ground", colour: "BK" });
      const two = yard.wire(`${second}.2`, `${load}.−`, { ...plan, tag: "ground", colour: "BK" });
      return [joint, second, one, two];
    },
  ),
  planter(
    "K09",
    "joint in the door's loom",
    ["joint-where-loom-flexes"],
    (yard) => {
      const job = jointed("solder")(yard);
      yard.changeRun(job.run, {
        hinge: "twists-along",
        passes: [{ what: "door pillar", protection: "gaiter" }],
      });
      yard.build.change(job.joint, { zone: "cabin" });
      for (const wire of job.wires) yard.build.change(wire, { runs: [] });
      return job;
    },
    (yard, { run, joint, wires }) => {
      for (const wire of wires) yard.build.change(wire, { runs: [yard.runId(run)] });
      yard.build.change(joint, { zone: "door" });
      return [joint, ...wires];
    },
  ),
  planter(
    "K10",
    "joint 20 mm behind a housing",
    ["joint-close-to-contact"],
    jointed("solder"),
    (yard, { joint, wires }) => {
      yard.build.change(wires[0]!, { length_m: 0.02, runs: [] });
      return [joint, ...wires];
    },
  ),
  planter(
    "K11",
    "solder joint without a sleeve",
    ["joint-bare"],
    jointed("solder"),
    changed({ cover: "none" }),
    BOTH,
  ),
  planter(
    "K12",
    "three joints in a lead",
    ["several-joints-in-lead"],
    jointed("solder"),
    (yard, { joint, wires }) => {
      const made: string[] = [];
      let from = `${joint}.2`;
      yard.move(wires[1]!, from, from);
      for (let index = 0; index < 2; index++) {
        const next = yard.joint("solder", 1.5);
        made.push(next);
        yard.wire(from, `${next}.1`, { tag: "more", area_mm2: 1.5, length_m: 0.4 });
        from = `${next}.2`;
      }
      yard.move(wires[1]!, `${joint}.2`, from);
      return [joint, ...wires, ...made];
    },
  ),
  planter(
    "K13",
    "live half of a bullet pair bare",
    ["live-half-bare"],
    (yard) => {
      for (;;) {
        const job = receiverJob(yard);
        const joint = yard.joint("bullet", 1.5);
        const lead = yard.tagged("constant");
        yard.move(lead.wires.at(-1)!, `${job.unit}.1`, `${joint}.1`);
        yard.wire(`${joint}.2`, `${job.unit}.1`, { tag: "pigtail", area_mm2: 2.5, length_m: 0.3 });
        return { ...job, joint };
      }
    },
    (yard, { joint }) => {
      yard.build.change(joint, { liveHalf: "bare" });
      return [joint];
    },
    BOTH,
  ),
  planter(
    "K14",
    "bullet on 12 A",
    ["bullet-on-high-current"],
    (yard) => boardJob(yard, 3),
    (yard, { block }) => {
      const fuse = yard.part("fuse", "F", { rating_A: 20, form: "regular", holder: "own" });
      const joint = yard.joint("bullet", 6);
      const load = yard.part("load", "E", {
        type: "heater",
        function: "heater-control",
        current_A: 13,
        behaviour: "resistance",
        voltage_V: yard.range(),
      });
      yard.wire(`${block}.2`, `${fuse}.1`, { tag: "more", area_mm2: 35, length_m: 0.1 });
      yard.wire(`${fuse}.2`, `${joint}.1`, { tag: "more", area_mm2: 6, length_m: 0.5 });
      yard.wire(`${joint}.2`, `${load}.+`, { tag: "more", area_mm2: 6, length_m: 0.5 });
      yard.wire(`${load}.−`, yard.ground(), { tag: "more", area_mm2: 6, length_m: 0.5, colour: "BK" });
      return [joint];
    },
    BOTH,
  ),
  planter(
    "K15",
    "one colour for two things on two charts",
    ["colours-collide"],
    (yard) => {
      const job = receiverJob(yard, { speakers: "vehicle" });
      for (const contact of ["1", "P1"]) {
        const lead = yard.leads.find((one) => [one.from, one.to].includes(`${job.unit}.${contact}`))!;
        const wire = lead.from === `${job.unit}.${contact}` ? lead.wires[0]! : lead.wires.at(-1)!;
        const joint = yard.joint("solder", 1.5);
        yard.move(wire, `${job.unit}.${contact}`, `${joint}.1`);
        yard.wire(`${joint}.2`, `${job.unit}.${contact}`, {
          tag: "pigtail",
          area_mm2: 2.5,
          length_m: 0.2,
          colour: contact === "1" ? "OG" : "WH",
        });
      }
      for (const wire of yard.tagged("constant").wires)
        yard.build.change(wire, { colour: { base: "RD", tracer: null } });
      return job;
    },
    (yard, { unit, vehicle }) => {
      yard.cavity(`${vehicle}.B1`, { lead: { colour: { base: "YE", tracer: null }, area_mm2: 0.75 } });
      yard.cavity(`${unit}.1`, { lead: { colour: { base: "YE", tracer: null }, area_mm2: 1.5 } });
      const lead = yard.leads.find((one) => one.to === `${vehicle}.B1`)!;
      const pigtail = yard.wiresAt(`${unit}.1`)[0]!.designation;
      for (const wire of [...lead.wires.slice(-1), pigtail])
        yard.build.change(wire, { colour: { base: "YE", tracer: null } });
      return [unit, vehicle, pigtail, ...lead.wires, ...yard.tagged("constant").wires];
    },
  ),
  planter(
    "K16",
    "green and yellow where there is high voltage",
    ["green-and-yellow-on-low-voltage"],
    (yard) => {
      const job = lampJob(yard);
      yard.build.settings({ vehicle: { highVoltage: "yes", lamps: "plain" } });
      for (const wire of Object.values(yard.harness.wires))
        yard.build.change(wire.designation, { colour: { base: "BU", tracer: null } });
      return job;
    },
    (yard) => {
      const wire = yard.pick(yard.tagged("lamp-out").wires);
      yard.build.change(wire, {
        colour: yard.pick([
          { base: "GN", tracer: "YE" } as const,
          { base: "YE", tracer: "GN" } as const,
          { base: "GNYE", tracer: null } as const,
        ]),
      });
      return [wire];
    },
  ),
  planter(
    "K17",
    "household nut",
    ["twist-on-nut"],
    jointed("crimp"),
    changed({ method: "twist-on-nut", cover: "none", barrel: "unknown" }),
    BOTH,
  ),
];
