import { type FormEvent, useId, useState } from "react";
import { OWN_RULE_THINGS } from "../../graph/schema/rules.ts";
import { type Condition, type OwnRule, sayChoice } from "../../rules/own/own-rule.ts";
import { PROPERTIES, propertyOf } from "../../rules/own/properties.ts";
import { THING_WORDS } from "../../rules/own/things.ts";
import { SEVERITIES } from "../../rules/rule.ts";
import { conditionOn, firstCondition, waysToAsk } from "./profile-model.ts";

/** Asks for a rule of the shop's own: of which things it speaks, and what they must be. */
export function OwnRuleForm(props: {
  readonly rule: OwnRule;
  /** With the rule, or with `null` where it is left. */
  readonly onDone: (rule: OwnRule | null) => void;
}) {
  const id = useId();
  const [rule, setRule] = useState(props.rule);
  const [why, setWhy] = useState("");
  const change = (changes: Partial<OwnRule>) => setRule({ ...rule, ...changes });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (rule.words.trim() === "") return setWhy("Say in words what is so in sound work.");
    if (rule.must.length === 0) return setWhy("Say what each of them must be.");
    props.onDone({ ...rule, words: rule.words.trim() });
  };
  return (
    <form className="own-rule-form" onSubmit={submit} aria-label="A rule of the shop’s own">
      <label htmlFor={`${id}-words`}>What is so in sound work</label>
      <input
        id={`${id}-words`}
        type="text"
        maxLength={400}
        placeholder="Every joint outside is sealed"
        value={rule.words}
        aria-invalid={why !== ""}
        aria-describedby={`${id}-why`}
        // biome-ignore lint/a11y/noAutofocus: it appears because a person asked to write a rule
        autoFocus
        onChange={(event) => {
          change({ words: event.target.value });
          setWhy("");
        }}
      />
      <p id={`${id}-why`} className="field-why" role="alert">
        {why}
      </p>
      <div className="profile-row">
        <label>
          It speaks of every
          <select
            value={rule.of}
            onChange={(event) => {
              const of = event.target.value as OwnRule["of"];
              change({ of, where: [], must: [firstCondition(of)] });
            }}
          >
            {OWN_RULE_THINGS.map((thing) => (
              <option key={thing} value={thing}>
                {THING_WORDS[thing][0]}
              </option>
            ))}
          </select>
        </label>
        <label>
          One that breaks it is
          <select
            value={rule.severity}
            onChange={(event) => change({ severity: event.target.value as OwnRule["severity"] })}
          >
            {SEVERITIES.map((severity) => (
              <option key={severity}>{severity}</option>
            ))}
          </select>
        </label>
      </div>
      <Conditions
        name="Only where"
        of={rule.of}
        conditions={rule.where}
        onChange={(where) => change({ where: [...where] })}
      />
      <Conditions
        name="It must be so that"
        of={rule.of}
        conditions={rule.must}
        onChange={(must) => change({ must: [...must] })}
      />
      <div className="finding-buttons">
        <button type="submit" className="button strong-button">
          Keep the rule
        </button>
        <button type="button" className="button" onClick={() => props.onDone(null)}>
          Leave it
        </button>
      </div>
    </form>
  );
}

function Conditions(props: {
  readonly name: string;
  readonly of: OwnRule["of"];
  readonly conditions: readonly Condition[];
  readonly onChange: (conditions: readonly Condition[]) => void;
}) {
  const { of, conditions, onChange } = props;
  return (
    <fieldset className="conditions">
      <legend>{props.name}</legend>
      {conditions.map((condition, index) => (
        <OneCondition
          // biome-ignore lint/suspicious/noArrayIndexKey: a condition has no other name than its place
          key={index}
          of={of}
          condition={condition}
          onChange={(changed) => onChange(conditions.map((one, at) => (at === index ? changed : one)))}
          onRemove={() => onChange(conditions.filter((_, at) => at !== index))}
        />
      ))}
      <button type="button" className="button" onClick={() => onChange([...conditions, firstCondition(of)])}>
        {conditions.length ? "And…" : "Add a condition…"}
      </button>
    </fieldset>
  );
}

function OneCondition(props: {
  readonly of: OwnRule["of"];
  readonly condition: Condition;
  readonly onChange: (condition: Condition) => void;
  readonly onRemove: () => void;
}) {
  const { of, condition, onChange } = props;
  const property = propertyOf(of, condition.property);
  const needsValue = condition.is !== "given" && condition.is !== "not-given";
  return (
    <div className="condition">
      <select
        aria-label="Property"
        value={condition.property}
        onChange={(event) => onChange(conditionOn(propertyOf(of, event.target.value)!))}
      >
        {!property && <option value={condition.property}>{condition.property} (not known)</option>}
        {PROPERTIES[of].map(({ id, words }) => (
          <option key={id} value={id}>
            {words}
          </option>
        ))}
      </select>
      <select
        aria-label="How it is asked"
        value={condition.is}
        onChange={(event) => onChange({ ...condition, is: event.target.value as Condition["is"] })}
      >
        {(property ? waysToAsk(property) : []).map(([is, words]) => (
          <option key={is} value={is}>
            {words}
          </option>
        ))}
      </select>
      {needsValue && property?.choices && (
        <span className="condition-choices">
          {property.choices.map((choice) => (
            <label key={choice}>
              <input
                type="checkbox"
                checked={condition.values.includes(choice)}
                onChange={(event) =>
                  onChange({
                    ...condition,
                    values: event.target.checked
                      ? [...condition.values, choice]
                      : condition.values.filter((one) => one !== choice),
                  })
                }
              />
              {sayChoice(choice)}
            </label>
          ))}
        </span>
      )}
      {needsValue && property && !property.choices && (
        <input
          type="text"
          inputMode={property.kind === "number" ? "decimal" : "text"}
          aria-label={property.unit ? `Value, in ${property.unit}` : "Value"}
          value={condition.values.join("; ")}
          onChange={(event) =>
            onChange({
              ...condition,
              values:
                property.kind === "number"
                  ? [event.target.value]
                  : event.target.value.split(";").map((one) => one.trim()),
            })
          }
        />
      )}
      <button
        type="button"
        className="button quiet-button"
        aria-label="Remove the condition"
        onClick={props.onRemove}
      >
        ×
      </button>
    </div>
  );
}
