import { expect, test } from "vitest";
import { type ContactKey, contactKey } from "../../src/graph/contacts.ts";
import { trace } from "../../src/graph/trace.ts";
import { sayCircuit } from "../../src/rules/say.ts";
import { type Build, build } from "../build.ts";
import { joined } from "./harnesses.ts";

function say(harness: Build, name: string): string {
  const { part, contact } = harness.at(name);
  return sayCircuit(harness.harness, trace(harness.harness), contactKey(part, contact));
}

test("what a lead is joined to, through which joint, and what feeds it", () => {
  expect(say(joined(), "X2.1")).toBe(
    "X2.1 constant feed, yellow, is joined to X1.A4 constant feed, red, through splice XJ1. It is fed from X1.A4 constant feed (red), at all times, behind its own 15 A fuse.",
  );
});

test("the source itself is not said to feed itself", () => {
  expect(say(joined(), "X1.A4")).toBe(
    "X1.A4 constant feed, red, is joined to X2.1 constant feed, yellow, through splice XJ1.",
  );
});

test("a joint says what it joins", () => {
  expect(say(joined(), "XJ2.1")).toBe(
    "Splice XJ2 joins X1.A7 switched feed, yellow; and X2.2 switched feed, red. It is fed from X1.A7 switched feed (yellow), with the key at accessory or run, behind its own 10 A fuse.",
  );
});

test("a spare, a loose end and a bare contact", () => {
  const unit = () => build().unit("X2", { "1": "mute PK", "2": "speed" });
  expect(say(unit().path("X2.1", "XC1"), "X2.1")).toBe("X2.1 mute, pink, is a spare under cap XC1.");
  expect(say(unit().wire("X2.1", "loose"), "X2.1")).toBe(
    "X2.1 mute, pink, is joined to nothing. W1 ends loose.",
  );
  expect(say(unit(), "X2.2")).toBe("X2.2 vehicle speed is joined to nothing.");
});

test("a ground that lies behind a fuse is named", () => {
  const harness = build().unit("X2", { "3": "ground BK" }).path("X2.3", "F1", "XE1");
  expect(say(harness, "X2.3")).toBe(
    "X2.3 ground, black, is joined to F1.1, black. It reaches ground at XE1.",
  );
});

test("a fuse on the way is named with the feed", () => {
  const harness = build()
    .part("supply", "G1")
    .unit("X2", { "1": "constant-feed YE" })
    .path("G1.+", "F1", "X2.1");
  expect(say(harness, "X2.1")).toContain("It is fed from G1.+ constant feed, at all times, through F1.");
});

test("a contact that is not there says nothing", () => {
  const { harness } = joined();
  expect(sayCircuit(harness, trace(harness), "p:none#1" as ContactKey)).toBe("");
  expect(sayCircuit(harness, trace(harness), "p:X1#99" as ContactKey)).toBe("");
});
