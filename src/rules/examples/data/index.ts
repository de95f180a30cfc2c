import type { Examples } from "../example.ts";
import canLeadMissing from "./can-lead-missing.ts";
import canLeadsExchanged from "./can-leads-exchanged.ts";
import canPairUntwisted from "./can-pair-untwisted.ts";
import canTerminationWrong from "./can-termination-wrong.ts";
import configurationSwitchUnset from "./configuration-switch-unset.ts";
import configurationSwitchWrong from "./configuration-switch-wrong.ts";
import dataLeadGrounded from "./data-lead-grounded.ts";
import dataLeadOnFeed from "./data-lead-on-feed.ts";
import dataLeadOnWrongBus from "./data-lead-on-wrong-bus.ts";
import dataLeadsExchanged from "./data-leads-exchanged.ts";
import keyLineOnBattery from "./key-line-on-battery.ts";
import keyLinesExchanged from "./key-lines-exchanged.ts";
import moduleNeverSleeps from "./module-never-sleeps.ts";
import sameShellMatedWrongly from "./same-shell-mated-wrongly.ts";

/** The examples of this group by the name of their rule. */
export const examples: Examples = {
  "can-lead-missing": canLeadMissing,
  "can-leads-exchanged": canLeadsExchanged,
  "can-pair-untwisted": canPairUntwisted,
  "can-termination-wrong": canTerminationWrong,
  "configuration-switch-unset": configurationSwitchUnset,
  "configuration-switch-wrong": configurationSwitchWrong,
  "data-lead-grounded": dataLeadGrounded,
  "data-lead-on-feed": dataLeadOnFeed,
  "data-lead-on-wrong-bus": dataLeadOnWrongBus,
  "data-leads-exchanged": dataLeadsExchanged,
  "key-line-on-battery": keyLineOnBattery,
  "key-lines-exchanged": keyLinesExchanged,
  "module-never-sleeps": moduleNeverSleeps,
  "same-shell-mated-wrongly": sameShellMatedWrongly,
};
