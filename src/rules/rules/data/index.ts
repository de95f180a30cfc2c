import type { Rule } from "../../rule.ts";
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

/** The rules of this group, in the order in which a page lists them. */
export const rules: readonly Rule[] = [
  canLeadsExchanged,
  canLeadMissing,
  canPairUntwisted,
  canTerminationWrong,
  dataLeadsExchanged,
  dataLeadOnWrongBus,
  dataLeadOnFeed,
  dataLeadGrounded,
  keyLineOnBattery,
  keyLinesExchanged,
  configurationSwitchWrong,
  configurationSwitchUnset,
  sameShellMatedWrongly,
  moduleNeverSleeps,
];
