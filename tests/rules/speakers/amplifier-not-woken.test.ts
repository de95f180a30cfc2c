import rule from "../../../src/rules/rules/speakers/amplifier-not-woken.ts";
import { build, type Rows } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const pair = { "1": "speaker-front-left-plus takes", "2": "speaker-front-left-minus takes" };
const receiver = () =>
  build().unit("X4", {
    "1": "speaker-front-left-plus",
    "2": "speaker-front-left-minus",
    "3": "amplifier-turn-on BU/WH",
  });
const factory = (rows: Rows, wakes: "by-lead" | "by-signal" | "unknown" = "unknown") =>
  receiver()
    .module("A2", { side: "vehicle", role: "amplifier", wakes, rows: { ...pair, ...rows } })
    .wire("X4.1", "A2.1")
    .wire("X4.2", "A2.2");
const turnOn = { "3": "amplifier-turn-on takes" };

testRule(rule, {
  silent: [
    { name: "its turn-on comes from the receiver", build: factory(turnOn).wire("X4.3", "A2.3") },
    { name: "it wakes by its signal", build: factory(turnOn, "by-signal") },
    {
      name: "it wakes with the key",
      build: factory({ "4": "switched-feed takes" })
        .vehicle("X1", { "1": "switched-feed" })
        .wire("X1.1", "A2.4"),
    },
    {
      name: "an interface speaks to it",
      build: factory({ "4": "data both" })
        .module("A3", { role: "interface", rows: { "1": "data both" } })
        .wire("A3.1", "A2.4"),
    },
    {
      name: "no sound is brought to it",
      build: receiver().module("A2", { side: "vehicle", role: "amplifier", rows: { ...pair, ...turnOn } }),
    },
    {
      name: "the new equipment's own amplifier: another rule's",
      build: receiver()
        .module("A2", { role: "amplifier", rows: { ...pair, ...turnOn } })
        .wire("X4.1", "A2.1")
        .wire("X4.2", "A2.2"),
    },
    { name: "nothing known of how it wakes", build: factory({}) },
    { name: "a person has put its turn-on aside", build: factory({ "3": "amplifier-turn-on takes spare" }) },
    {
      name: "a vehicle without an amplifier, whose chart has the cavity and no lead in it",
      build: build()
        .vehicle("X3", { ...pair, "9": "amplifier-turn-on takes" })
        .unit("X4", { "1": "speaker-front-left-plus", "2": "speaker-front-left-minus" })
        .wire("X4.1", "X3.1")
        .wire("X4.2", "X3.2"),
    },
  ],
  found: [
    {
      name: "its turn-on is open",
      build: factory(turnOn),
      findings: [
        {
          at: ["A2.3", "A2"],
          says: "A2 is fed sound, but A2.3 amplifier turn-on is not given volts",
          fix: null,
        },
      ],
    },
    {
      name: "its turn-on hangs on the lights",
      build: factory(turnOn).vehicle("X1", { "1": "illumination" }).wire("X1.1", "A2.3"),
      findings: [{ at: ["A2.3", "A2"], says: "live only with the lights on", fix: null }],
    },
    {
      name: "the data bus that woke it is gone",
      build: factory({ "4": "data both", "5": "can-high both" }),
      findings: [{ at: ["A2.4", "A2.5", "A2"], says: "lead nowhere", fix: null }],
    },
    {
      name: "behind the vehicle's connector, by line level",
      build: build()
        .vehicle("X3", { "1": "line-front-left-signal takes", "2": "amplifier-turn-on takes" })
        .unit("X4", { "1": "line-front-left-signal" })
        .path("X4.1", "XJ1", "X3.1")
        .path("X3.2", "XC1"),
      findings: [{ at: ["X3.2"], says: "The vehicle's amplifier is fed sound", fix: null }],
    },
  ],
});
