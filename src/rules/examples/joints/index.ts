import type { Examples } from "../example.ts";
import barrelDoesNotFitWires from "./barrel-does-not-fit-wires.ts";
import bulletOnHighCurrent from "./bullet-on-high-current.ts";
import cappedWithTape from "./capped-with-tape.ts";
import coloursCollide from "./colours-collide.ts";
import greenAndYellowOnLowVoltage from "./green-and-yellow-on-low-voltage.ts";
import jointBare from "./joint-bare.ts";
import jointCloseToContact from "./joint-close-to-contact.ts";
import jointLeftOpen from "./joint-left-open.ts";
import jointNotByTheBook from "./joint-not-by-the-book.ts";
import jointUnsealedInWetPlace from "./joint-unsealed-in-wet-place.ts";
import jointWhereLoomFlexes from "./joint-where-loom-flexes.ts";
import jointsAtOnePlace from "./joints-at-one-place.ts";
import liveHalfBare from "./live-half-bare.ts";
import severalJointsInLead from "./several-joints-in-lead.ts";
import sizesFarApartInCrimp from "./sizes-far-apart-in-crimp.ts";
import tapJoint from "./tap-joint.ts";
import tapedJoint from "./taped-joint.ts";
import tooManyWiresInJoint from "./too-many-wires-in-joint.ts";
import tracersHardToTell from "./tracers-hard-to-tell.ts";
import twistOnNut from "./twist-on-nut.ts";
import twistedJoint from "./twisted-joint.ts";

/** The examples of this group by the name of their rule. */
export const examples: Examples = {
  "barrel-does-not-fit-wires": barrelDoesNotFitWires,
  "bullet-on-high-current": bulletOnHighCurrent,
  "capped-with-tape": cappedWithTape,
  "colours-collide": coloursCollide,
  "green-and-yellow-on-low-voltage": greenAndYellowOnLowVoltage,
  "joint-bare": jointBare,
  "joint-close-to-contact": jointCloseToContact,
  "joint-left-open": jointLeftOpen,
  "joint-not-by-the-book": jointNotByTheBook,
  "joint-unsealed-in-wet-place": jointUnsealedInWetPlace,
  "joint-where-loom-flexes": jointWhereLoomFlexes,
  "joints-at-one-place": jointsAtOnePlace,
  "live-half-bare": liveHalfBare,
  "several-joints-in-lead": severalJointsInLead,
  "sizes-far-apart-in-crimp": sizesFarApartInCrimp,
  "tap-joint": tapJoint,
  "taped-joint": tapedJoint,
  "too-many-wires-in-joint": tooManyWiresInJoint,
  "tracers-hard-to-tell": tracersHardToTell,
  "twist-on-nut": twistOnNut,
  "twisted-joint": twistedJoint,
};
