import { type DragEvent, useCallback, useDeferredValue, useId, useRef, useState } from "react";
import { useStore } from "zustand";
import { PINOUT_GROUPS } from "../../catalogue/pinouts.ts";
import type { Harness, PartId } from "../../graph/harness.ts";
import { addRow, changeRow, type LeadChanges, setAside, takeBack } from "../../match/review/mend.ts";
import type { SideName } from "../../match/review/review.ts";
import { ChartRows } from "./chart-rows.tsx";
import type { ChartsDesk } from "./desk.ts";
import { READY } from "./desk-harness.ts";
import { chartOf, needsOf, SIDE_NAMES, viewOf } from "./desk-model.ts";
import { Notes, UnreadLines } from "./lines.tsx";
import { SideHeads } from "./side-heads.tsx";
import { ChartText, MOST_SHOWN } from "./text-field.tsx";

/** One half of the desk: where its chart comes from, and its rows as they were read. */
export function ChartSideField(props: {
  readonly name: SideName;
  readonly desk: ChartsDesk;
  readonly harness: Harness;
  readonly showNeeds: boolean;
}) {
  const { name, desk, harness } = props;
  const id = useId();
  const state = useStore(desk.store);
  const side = state.sides[name];
  // Many rows are drawn when there is time for it: a key that is pressed meanwhile comes first.
  const mended = useDeferredValue(chartOf(side));
  const { chart } = mended;
  const [over, setOver] = useState(false);
  const file = useRef<HTMLInputElement>(null);
  const latest = useRef(side);
  latest.current = side;
  const change = useCallback(
    (key: string, changes: LeadChanges) => desk.setMends(name, changeRow(latest.current.mends, key, changes)),
    [desk, name],
  );
  const aside = useCallback(
    (key: string, source: string) => desk.setMends(name, setAside(latest.current.mends, key, source)),
    [desk, name],
  );
  const needs = needsOf(state, harness);
  const chartWhy = needs.find((need) => need.side === name && need.what === "chart")?.why ?? "";
  const isEmpty = side.source.kind === "none" && side.text === "";
  const hasText = side.source.kind === "none" || side.source.kind === "text";
  const drop = (event: DragEvent) => {
    setOver(false);
    const dropped = event.dataTransfer.files[0];
    const text = event.dataTransfer.getData("text/plain");
    if (!dropped && text === "") return;
    event.preventDefault();
    // A file dropped anywhere else on the page would be opened as a harness.
    event.stopPropagation();
    if (dropped) void desk.setFile(name, dropped);
    else desk.setText(name, text, true);
  };
  return (
    <section
      className={over ? "chart-side chart-side-over" : "chart-side"}
      aria-labelledby={id}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={drop}
    >
      <h3 id={id}>{SIDE_NAMES[name]}</h3>
      <SideHeads
        name={name}
        side={side}
        seen={viewOf(side, harness)}
        needs={isEmpty ? [] : needs}
        showNeeds={props.showNeeds}
        desk={desk}
      />
      {hasText && side.showText && (
        <ChartText
          name="Paste or drop its chart, in whatever words it has"
          need={`${name}-chart`}
          text={side.text}
          first={name === "left"}
          onPaste={(text) => desk.setText(name, text, true)}
          onType={(text) => desk.setText(name, text, false)}
        />
      )}
      {isEmpty && (
        <div className="chart-ways">
          <TakeConnector name={name} desk={desk} harness={harness} />
          <button type="button" className="button" onClick={() => file.current?.click()}>
            Open a file
          </button>
          <button
            type="button"
            className="button"
            onClick={() => {
              desk.typeRows(name);
              desk.setMends(name, addRow(side.mends, chart));
            }}
          >
            Type the rows
          </button>
          <input
            ref={file}
            type="file"
            hidden
            accept=".txt,.csv,.tsv,.md,.html,.htm,.xlsx,text/plain"
            onChange={(event) => {
              const chosen = event.target.files?.[0];
              event.target.value = "";
              if (chosen) void desk.setFile(name, chosen);
            }}
          />
        </div>
      )}
      <p className="field-why" role="alert">
        {state.failed[name]}
        {props.showNeeds && !state.failed[name] ? chartWhy : ""}
      </p>
      <p className="chart-said" role="status">
        {state.reading[name]
          ? "Reading…"
          : isEmpty
            ? ""
            : sayRead(chart.leads.length, chart.unread.length, chart.title)}
      </p>
      {side.remarks.map((remark) => (
        <p key={remark} className="chart-remark">
          {remark}
        </p>
      ))}
      {side.source.kind !== "beside" &&
        side.read.length > 1 &&
        state.sides[name === "left" ? "right" : "left"].source.kind !== "beside" && (
          <p className="chart-remark">
            The text holds {side.read.length} charts; this is number {side.which + 1}.{" "}
            <button type="button" className="text-button" onClick={() => desk.otherChart(name)}>
              Take the other one
            </button>
          </p>
        )}
      <UnreadLines
        lines={chart.unread}
        onMend={(line, text) => void desk.mendLine(name, line.line, text)}
        onAside={(line) => aside(`=${line.text}`, line.text)}
      />
      {chart.leads.length > 0 && (
        <ChartRows
          name={SIDE_NAMES[name]}
          mended={mended}
          sizes={harness.settings.sizes}
          mayDrop={side.source.kind === "text" || side.source.kind === "beside"}
          onChange={change}
          onAside={aside}
        />
      )}
      {!isEmpty && (
        <div className="chart-ways">
          <button
            type="button"
            className="button"
            onClick={() => desk.setMends(name, addRow(side.mends, chart))}
          >
            Add a row
          </button>
          {hasText && side.text !== "" && side.text.length <= MOST_SHOWN && chart.leads.length > 0 && (
            <button
              type="button"
              className="button"
              aria-expanded={side.showText}
              onClick={() => desk.set(name, { showText: !side.showText })}
            >
              {side.showText ? "Hide the text" : "Show the text"}
            </button>
          )}
          {chart.leads.some((lead) => lead.label !== null) && side.source.kind !== "connector" && (
            <label className="chart-face">
              Rows of the face
              <input
                type="text"
                inputMode="numeric"
                value={side.rows}
                onChange={(event) => desk.set(name, { rows: event.target.value })}
              />
            </label>
          )}
          <button type="button" className="button" onClick={() => desk.clear(name)}>
            Take another chart
          </button>
        </div>
      )}
      <Notes
        notes={chart.notes}
        aside={side.mends.aside}
        onTakeBack={(text) => desk.setMends(name, takeBack(side.mends, text))}
      />
    </section>
  );
}

function sayRead(rows: number, unread: number, title: string): string {
  const what = rows === 0 ? "No row could be read in it" : rows === 1 ? "1 row read" : `${rows} rows read`;
  const rest = unread === 0 ? "" : unread === 1 ? ", 1 line not" : `, ${unread} lines not`;
  return `${what}${rest}${title ? `: ${title}` : ""}.`;
}

/** A connector that stands in the harness, or a ready one. */
function TakeConnector(props: {
  readonly name: SideName;
  readonly desk: ChartsDesk;
  readonly harness: Harness;
}) {
  const { name, desk } = props;
  const own = Object.values(props.harness.parts).filter((part) => part.kind === "connector");
  const take = (value: string) => {
    const ready = READY.find((one) => one.id === value);
    if (ready) desk.takeReady(name, ready);
    else if (value !== "") desk.takeConnector(name, value as PartId);
  };
  return (
    <select
      aria-label={`${SIDE_NAMES[name]}: take a connector`}
      value=""
      onChange={(event) => take(event.target.value)}
    >
      <option value="">Or take a connector…</option>
      {own.length > 0 && (
        <optgroup label="Of this harness">
          {own.map(({ id, designation, name: words }) => (
            <option key={id} value={id}>
              {words ? `${designation}, ${words}` : designation}
            </option>
          ))}
        </optgroup>
      )}
      {Object.entries(PINOUT_GROUPS).map(([group, words]) => (
        <optgroup key={group} label={`Ready: ${words}`}>
          {READY.filter((one) => one.group === group).map(({ id, title }) => (
            <option key={id} value={id}>
              {title}
            </option>
          ))}
        </optgroup>
      ))}
    </select>
  );
}
