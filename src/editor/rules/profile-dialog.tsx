import { useState } from "react";
import type { Problem } from "../../graph/parse/problem.ts";
import { sayProblem } from "../../graph/parse/problem.ts";
import { PROFILES } from "../../graph/schema/rules.ts";
import { type OwnRule, sayCondition } from "../../rules/own/own-rule.ts";
import { PRESETS } from "../../rules/own/presets.ts";
import { THING_WORDS } from "../../rules/own/things.ts";
import { parseProfile, serialiseProfile } from "../../rules/profile/profile-file.ts";
import { PROFILE_NAMES, profileOf } from "../../rules/profile/profiles.ts";
import { pickFile, writeFile } from "../files/disk.ts";
import { SeverityMark } from "../findings/severity.tsx";
import { Dialog } from "../shell/dialog.tsx";
import { closeDialog } from "../shell/dialogs.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import { Limits } from "./limits-table.tsx";
import { OwnRuleForm } from "./own-rule-form.tsx";
import { freshRule, type Rules, rulesEdit, withRule } from "./profile-model.ts";
import "./profile.css";

/** By which books a harness is checked: the profile, what a shop does otherwise, and its own rules. */
export default function ProfileDialog() {
  const editor = useEditorStore();
  const rules = useEditor((state) => state.history.present.settings.rules);
  const [editing, setEditing] = useState<OwnRule | null>(null);
  const change = (changes: Partial<Rules>, mergeKey?: string) =>
    editor.getState().dispatch(rulesEdit(rules, changes), mergeKey);
  return (
    <Dialog heading="By which books it is checked" onClose={closeDialog} wide>
      <div className="profile">
        <section aria-label="Profile">
          <div className="profile-row">
            <label>
              The harness is for a
              <select
                data-first
                value={rules.profile}
                onChange={(event) => change({ profile: event.target.value as Rules["profile"] })}
              >
                {PROFILES.map((profile) => (
                  <option key={profile} value={profile}>
                    {PROFILE_NAMES[profile]}
                  </option>
                ))}
              </select>
            </label>
            <label>
              Name of the shop
              <input
                type="text"
                maxLength={400}
                value={rules.shop}
                onChange={(event) => change({ shop: event.target.value }, "rules shop")}
              />
            </label>
            <ProfileFile rules={rules} onRead={(read) => change(read)} />
          </div>
          <p className="finding-quiet">
            Where books disagree, each finding names the one it follows. Makers’ instructions, local codes and
            licensed practice go before any of them.
          </p>
        </section>
        <Habits rules={rules} onChange={change} />
        <Limits rules={rules} onChange={change} />
        <section aria-labelledby="own-rules">
          <h3 id="own-rules">The shop’s own rules</h3>
          {rules.own.length === 0 && !editing && (
            <p className="finding-quiet">
              None yet. Write down what your shop holds to, and each harness is checked by it.
            </p>
          )}
          <ul className="own-rules">
            {rules.own.map((rule) => (
              <li key={rule.id}>
                <SeverityMark severity={rule.severity} size={14} />
                <div>
                  <strong>{rule.words}</strong>
                  <p className="finding-quiet">{sayRule(rule)}</p>
                </div>
                <button
                  type="button"
                  className="button"
                  aria-label={`Change: ${rule.words}`}
                  onClick={() => setEditing(rule)}
                >
                  Change…
                </button>
                <button
                  type="button"
                  className="button"
                  aria-label={`Remove: ${rule.words}`}
                  onClick={() => change({ own: rules.own.filter(({ id }) => id !== rule.id) })}
                >
                  Remove
                </button>
              </li>
            ))}
          </ul>
          {editing ? (
            <OwnRuleForm
              key={editing.id}
              rule={editing}
              onDone={(rule) => {
                if (rule) change({ own: [...withRule(rules.own, rule)] });
                setEditing(null);
              }}
            />
          ) : (
            <div className="finding-buttons">
              <button type="button" className="button" onClick={() => setEditing(freshRule(rules.own, null))}>
                Write a rule…
              </button>
              {PRESETS.filter(({ words }) => !rules.own.some((rule) => rule.words === words)).map(
                (preset) => (
                  <button
                    key={preset.id}
                    type="button"
                    className="button"
                    onClick={() => change({ own: [...rules.own, freshRule(rules.own, preset)] })}
                  >
                    Add: {preset.words}
                  </button>
                ),
              )}
            </div>
          )}
        </section>
      </div>
    </Dialog>
  );
}

function sayRule({ of, where, must }: OwnRule): string {
  const [one] = THING_WORDS[of];
  const chosen = where.map((condition) => sayCondition(of, condition)).join(" and ");
  const asked = must.map((condition) => sayCondition(of, condition)).join(" and ");
  return `Of every ${one}${chosen ? ` where ${chosen}` : ""}: ${asked}.`;
}

const HABITS = [
  [
    "negativeFuse",
    "A fuse in the negative lead",
    [
      ["never", "never"],
      ["both-at-posts", "in both leads where a unit goes to the battery’s posts"],
    ],
  ],
  [
    "taps",
    "Taps that pierce the insulation",
    [
      ["never", "never"],
      ["signals-only", "for signals only"],
    ],
  ],
  [
    "joints",
    "Leads are joined by",
    [
      ["solder-or-crimp", "solder or crimp"],
      ["solder-only", "solder only"],
      ["crimp-only", "crimp only"],
    ],
  ],
] as const;

function Habits(props: { readonly rules: Rules; readonly onChange: (changes: Partial<Rules>) => void }) {
  const { rules } = props;
  const book = profileOf({
    rules: { ...rules, negativeFuse: "by-profile", taps: "by-profile", joints: "by-profile" },
  });
  return (
    <section aria-labelledby="habits">
      <h3 id="habits">Habits</h3>
      <div className="profile-row">
        {HABITS.map(([field, words, choices]) => {
          const usual = choices.find(([choice]) => choice === book[field].choice)?.[1] ?? "";
          return (
            <label key={field}>
              {words}
              <select
                value={rules[field]}
                onChange={(event) => props.onChange({ [field]: event.target.value })}
              >
                <option value="by-profile">as the book has it: {usual}</option>
                {choices.map(([choice, name]) => (
                  <option key={choice} value={choice}>
                    {name}
                  </option>
                ))}
              </select>
              <small>{rules[field] === "by-profile" ? book[field].book : "the shop’s own choice"}</small>
            </label>
          );
        })}
      </div>
    </section>
  );
}

/** A shop's limits and rules as a file: so they go from harness to harness. */
function ProfileFile(props: { readonly rules: Rules; readonly onRead: (rules: Rules) => void }) {
  const [said, setSaid] = useState("");
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const open = async () => {
    const file = await pickFile("Pigtail profile");
    if (!file) return;
    const read = parseProfile(file.text);
    setProblems(read.ok ? [] : read.problems);
    if (!read.ok) return setSaid(`${file.name} could not be read.`);
    props.onRead(read.rules);
    setSaid([`Read ${file.name}.`, ...read.notes].join(" "));
  };
  const save = async () => {
    const name = `${props.rules.shop.trim().replace(/[^\p{L}\p{N}]+/gu, "-") || "shop"}.profile.json`;
    const written = await writeFile(serialiseProfile(props.rules), name, null);
    if (written !== "cancelled") setSaid(`Saved ${name}.`);
  };
  const tell = (error: unknown) => setSaid((error as Error).message);
  return (
    <div className="profile-file">
      <button type="button" className="button" onClick={() => void open().catch(tell)}>
        Open a profile file
      </button>
      <button type="button" className="button" onClick={() => void save().catch(tell)}>
        Save as a file
      </button>
      <p role="status">{said}</p>
      {problems.slice(0, 5).map((problem) => (
        <p key={sayProblem(problem, "")} className="field-why">
          {sayProblem(problem, "line")}
        </p>
      ))}
    </div>
  );
}
