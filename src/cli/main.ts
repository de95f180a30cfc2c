import { complain, EXIT, say, Unusable } from "./unusable.ts";
import { version } from "./version.ts";

type Command = { readonly usage: string; readonly run: (given: readonly string[]) => Promise<number> };

/** Each command is loaded when it is asked for: a check has no use for the layout engine. */
const COMMANDS: Readonly<Record<string, { readonly what: string; readonly load: () => Promise<Command> }>> = {
  check: { what: "look for faults in harness files", load: () => import("./check.ts") },
  rules: { what: "list the rules that harnesses are checked by", load: () => import("./rules.ts") },
  draw: { what: "draw a harness as PDF, SVG or PNG", load: () => import("./draw.ts") },
  trace: { what: "say what a contact is joined to", load: () => import("./trace.ts") },
  solve: { what: "say volts and amperes in a key position", load: () => import("./solve.ts") },
  size: { what: "size wires and fuses", load: () => import("./size.ts") },
  bundle: { what: "say how thick bundles are and what to cut", load: () => import("./bundle.ts") },
  chart: { what: "read a pinout chart", load: () => import("./chart.ts") },
  match: { what: "propose joins between two charts", load: () => import("./match.ts") },
  new: { what: "write an empty harness", load: () => import("./new.ts") },
  samples: { what: "list the samples, or copy one", load: () => import("./samples.ts") },
};

const HELP = `Pigtail draws, checks and documents one-off wiring harnesses.

  pigtail check FILE… [--json | --sarif] [--profile PROFILE] [--fail-on SEVERITY]
      Looks for faults. SEVERITY is danger, fault, weak (unless told) or tidy: findings as bad as that or worse
      give exit code 1. Waived findings do not count. --json prints one line a file:
      {"file","findings":[{"rule","severity","message","at":["X1.A4",…],"fixable":true|false}]}
      --sarif prints one SARIF 2.1.0 log of all files. PROFILE is road-vehicle, boat, trailer, or a shop's own
      .profile.json file; unless told, as each harness says.
  pigtail check --explain RULE
      Says what a rule holds, why, on whose word, and shows an example.
  pigtail rules [--json]
      Lists the rules. --json prints [{"id","group","severity","summary","source","fixable"}].
  pigtail draw FILE -o OUT.(pdf|svg|png)
      A PDF holds all papers, an SVG or PNG the diagram. [--size A4|A3|Letter|Tabloid] [--portrait|--landscape]
      [--tiles|--one-page] for a PDF, [--grey] for all; unless told, as the harness says.
  pigtail trace FILE CONTACT
      Says what a contact (X1.A4) is joined to and what feeds it.
  pigtail solve FILE [--key off|accessory|run|crank] [--with WORDS] [--json | --spice]
      Volts at every contact, current in every wire. WORDS, with commas: lights, reverse, brake, parking-brake, doors,
      unit, switches, engine, a lamp's function (indicator-left), or a switch that is closed (S1). --json prints
      {"contacts":{"X1.A4":{"volts"}},"wires":{"W1":{"amps","dropVolts","watts","percentOfAmpacity"}},"fuses":{…},
      "relays":{…},"loads":{…},"sources":{…},"warnings":[{"code","message","at"}],"assumptions":[{"words","source"}]};
      volts are null where a contact floats. --spice prints a deck for a general circuit simulator.
  pigtail size FILE [--json] [--shrink] [-o OUT [--force]]
      The smallest wire that bears the current and keeps the drop, in every key position, and why; fuses; volts lost on
      the way; standby; turn-on leads; speaker channels. -o writes the harness with what was too thin put right,
      --shrink also with what is thicker than it need be.
  pigtail bundle FILE [--json]
      Diameter, covering and mass of each run's bundle, and what to cut each wire to.
  pigtail chart FILE [--json] [--awg]
      Reads a pinout chart: text of any layout, CSV, a table of a page, or .xlsx. Prints the rows and what could not
      be read. --awg: bare sizes are gauges. --json prints
      {"charts":[{"title","rows":[{"name","label","function","certain","alternatives":[…],"text","colour","size_mm2",
      "current_A","fuse_A","direction","unused","line"}],"notes":[…],"unread":[{"line","text"}]}],"remarks":[…]}
  pigtail match LEFT [RIGHT] [--json] [-o OUT.harness.json] [--force]
      Proposes which lead of one chart joins which of the other; one file with two charts side by side is both.
      -o writes the certain joins and caps as a harness. --json prints
      {"joins":[{"left","right","function","confidence","why","traps"}],"ask":[{"left":[…],"right":[…],"why"}],
      "splices":[…],"capLeft":[…],"capRight":[…],"missing":[…],"unread":[{"side","line","text"}]}
  pigtail new [FILE] [--force]
      Writes an empty harness.
  pigtail samples [NAME] [-o FILE] [--force]
      Lists the samples, or copies one.
  pigtail --help | --version

FILE may be "-" for the standard input. Files are written whole or not at all.
Exit codes: 0 done, nothing found; 1 findings; 2 files or arguments that cannot be used.`;

async function main(given: readonly string[]): Promise<number> {
  const [name, ...rest] = given;
  if (name === "--version") {
    say(version());
    return EXIT.clean;
  }
  if (name === "--help" || name === "-h" || name === "help" || rest.includes("--help")) {
    say(HELP);
    return EXIT.clean;
  }
  if (name === undefined) throw new Unusable(HELP);
  const command = Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined;
  if (!command) {
    const list = Object.entries(COMMANDS).map(([known, { what }]) => `  ${known.padEnd(8)} ${what}`);
    throw new Unusable(`There is no command ${JSON.stringify(name)}.\n${list.join("\n")}`);
  }
  return (await command.load()).run(rest);
}

// A reader that has seen enough (`| head`) is no error.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit();
  throw error;
});
try {
  process.exitCode = await main(process.argv.slice(2));
} catch (error) {
  // Node's own code for a crash is 1, which would read as "findings".
  const own = error instanceof Unusable ? error.message : ((error as Error).stack ?? String(error));
  complain(error instanceof Unusable ? own : `Pigtail itself failed. Please report this:\n${own}`);
  process.exitCode = EXIT.unusable;
}
