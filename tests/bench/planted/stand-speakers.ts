import { amplifierJob, receiverJob } from "./sound.ts";
import type { Yard } from "./yard.ts";

/** A factory amplifier behind the vehicle's plug, woken and fed at speaker level or at line level. */
export function factoryAmplifier(level: "speaker" | "line") {
  return (yard: Yard) => {
    const job = receiverJob(yard, { module: true, speakers: "none", lines: true, channels: 2 });
    const box = yard.name("A");
    const rows: Record<string, string> = {
      B: "constant-feed 2.5 8A",
      G: "ground 2.5",
      R: "amplifier-turn-on takes 0.5 0.02A",
    };
    for (const [index, channel] of job.channels.entries()) {
      const names = level === "speaker" ? ["plus", "minus"] : ["signal", "shield"];
      rows[`I${index + 1}+`] = `${level}-${channel}-${names[0]} takes`;
      rows[`I${index + 1}-`] = `${level}-${channel}-${names[1]} takes`;
      rows[`O${index + 1}+`] = `speaker-${channel}-plus gives`;
      rows[`O${index + 1}-`] = `speaker-${channel}-minus gives`;
    }
    yard.build.module(box, {
      role: "amplifier",
      side: "vehicle",
      outputs: "bridged",
      leastLoad_ohm: 2,
      channelPower_W: 30,
      wakes: "by-lead",
      sleeps: "yes",
      standby_A: 0.001,
      signalGround: "isolated",
      voltage_V: yard.range(),
      rows,
    });
    // What builds of this side take and give is the other way round by habit; here it is said.
    for (const [index] of job.channels.entries())
      for (const sign of ["+", "-"]) {
        yard.cavity(`${box}.I${index + 1}${sign}`, { direction: "takes" });
        yard.cavity(`${box}.O${index + 1}${sign}`, { direction: "gives" });
      }
    for (const contact of ["B", "R"]) yard.cavity(`${box}.${contact}`, { direction: "takes" });
    yard.cavity(`${box}.G`, { direction: "takes" });
    const battery = yard.battery();
    const fuse = yard.part("fuse", "F", { rating_A: 15, form: "regular", holder: "own" });
    yard.lead(battery.plus, `${fuse}.1`, { tag: "stub", area_mm2: 4, length_m: 0.12, ways: ["direct"] });
    yard.lead(`${fuse}.2`, `${box}.B`, { tag: "factory-feed", area_mm2: 4, length_m: 2, ways: ["direct"] });
    yard.lead(`${box}.G`, yard.ground(), {
      tag: "factory-ground",
      area_mm2: 4,
      length_m: 0.4,
      ways: ["direct"],
      colour: "BK",
    });
    yard.lead(`${job.unit}.10`, `${box}.R`, { tag: "turn-on", area_mm2: 0.75, length_m: 2 });
    const speakers: string[] = [];
    for (const [index, channel] of job.channels.entries()) {
      const speaker = yard.part("speaker", "P", { position: channel, impedance_ohm: 4, power_W: 40 });
      speakers.push(speaker);
      for (const [sign, end, contact] of [
        ["+", "+", "P"],
        ["-", "−", "M"],
      ] as const) {
        yard.lead(`${box}.O${index + 1}${sign}`, `${speaker}.${end}`, {
          tag: `out-${channel}`,
          area_mm2: 1.5,
          length_m: 2,
          ways: ["direct", "solder"],
        });
        if (level === "line") continue;
        const spare = yard.wiresAt(`${job.unit}.${contact}${index + 1}`)[0]!;
        const cap = spare.ends[1];
        yard.remove(spare.designation);
        if (cap !== "loose") yard.remove(yard.harness.parts[cap.part]!.designation);
        yard.cavity(`${job.unit}.${contact}${index + 1}`, { use: "expected" });
        yard.lead(`${job.unit}.${contact}${index + 1}`, `${box}.I${index + 1}${sign}`, {
          tag: `in-${channel}-${sign}`,
          area_mm2: 0.75,
          length_m: 2,
        });
      }
      if (level !== "line") continue;
      const plug = yard.receptacle(
        job.module!,
        { hot: `line-${channel}-signal WH`, shell: `line-${channel}-shield BK` },
        { form: "line-plug", gender: "receptacle", keying: `ring ${index}` },
      );
      const hot = yard.lead(`${plug}.hot`, `${box}.I${index + 1}+`, {
        tag: `in-${channel}-+`,
        area_mm2: 0.22,
        length_m: 2,
        ways: ["direct"],
      });
      const shell = yard.lead(`${plug}.shell`, `${box}.I${index + 1}-`, {
        tag: `in-${channel}--`,
        area_mm2: 0.22,
        length_m: 2,
        ways: ["direct"],
      });
      yard.build.cable(yard.name("WC"), "shielded", [...hot.wires, ...shell.wires], shell.wires[0]!);
    }
    return { ...job, box, speakers };
  };
}

/** An amplifier of two channels with one low speaker between them. */
export function bridgedAmplifier(yard: Yard) {
  const battery = yard.battery();
  const fuse = yard.part("fuse", "F", { rating_A: 30, form: "maxi", holder: "own" });
  const source = receiverJob(yard, { module: true, speakers: "none", lines: true, channels: 2 });
  const box = yard.name("A");
  yard.build.module(box, {
    role: "amplifier",
    outputs: "bridged",
    leastLoad_ohm: 4,
    channelPower_W: 50,
    wakes: "by-lead",
    sleeps: "yes",
    standby_A: 0.001,
    signalGround: "isolated",
    voltage_V: yard.range(),
    rows: {
      B: "constant-feed 6 20A",
      G: "ground 6",
      R: "amplifier-turn-on takes 0.5 0.02A",
      I: "line-subwoofer-signal takes",
      S: "line-subwoofer-shield takes",
      "1+": "speaker-front-left-plus gives",
      "1-": "speaker-front-left-minus gives optional",
      "2+": "speaker-front-right-plus gives optional",
      "2-": "speaker-front-right-minus gives",
    },
  });
  const plug = yard.receptacle(
    source.module!,
    { hot: "line-subwoofer-signal WH", shell: "line-subwoofer-shield BK" },
    { form: "line-plug", gender: "receptacle" },
  );
  const speaker = yard.part("speaker", "P", {
    position: "subwoofer",
    type: "woofer",
    impedance_ohm: 4,
    power_W: 150,
  });
  const direct = { ways: ["direct"], area_mm2: 6, length_m: 2 } as const;
  yard.lead(battery.plus, `${fuse}.1`, { ...direct, tag: "stub", length_m: 0.12 });
  yard.lead(`${fuse}.2`, `${box}.B`, { ...direct, tag: "feed" });
  yard.lead(`${box}.G`, yard.ground(), { ...direct, tag: "sub-ground", length_m: 0.3, colour: "BK" });
  yard.lead(`${source.unit}.10`, `${box}.R`, { ...direct, tag: "turn-on", area_mm2: 0.75 });
  const hot = yard.lead(`${plug}.hot`, `${box}.I`, { ...direct, tag: "line", area_mm2: 0.22 });
  const shell = yard.lead(`${plug}.shell`, `${box}.S`, { ...direct, tag: "line", area_mm2: 0.22 });
  yard.build.cable(yard.name("WC"), "shielded", [...hot.wires, ...shell.wires], shell.wires[0]!);
  yard.lead(`${box}.1+`, `${speaker}.+`, { ...direct, tag: "low", area_mm2: 2.5 });
  yard.lead(`${box}.2-`, `${speaker}.−`, { ...direct, tag: "low", area_mm2: 2.5 });
  return { box, speaker };
}

/** An amplifier with a tweeter and its capacitor beside a speaker of its channel. */
export function withTweeter(yard: Yard) {
  const job = amplifierJob(yard);
  const tweeter = yard.part("speaker", "P", {
    position: "front-left",
    type: "tweeter",
    impedance_ohm: 4,
    power_W: 30,
  });
  const capacitor = yard.part("capacitor", "C", { capacitance_uF: 6.8 });
  const from = `${job.speakers[0]}.+`;
  yard.wire(from, `${capacitor}.1`, { tag: "tweeter", area_mm2: 1.5, length_m: 0.3 });
  yard.wire(`${capacitor}.2`, `${tweeter}.+`, { tag: "tweeter", area_mm2: 1.5, length_m: 0.1 });
  yard.wire(`${job.speakers[0]}.−`, `${tweeter}.−`, { tag: "tweeter", area_mm2: 1.5, length_m: 0.4 });
  return { tweeter, capacitor, from };
}
