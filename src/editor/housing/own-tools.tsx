import { useEffect, useRef, useState } from "react";
import { useStore } from "zustand";
import type { KeptConnector } from "../../graph/own-connector/kept-connector.ts";
import { parseConnector, serialiseConnector } from "../../graph/own-connector/parse-connector.ts";
import { type Problem, sayProblem } from "../../graph/parse/problem.ts";
import { pickFile, writeFile } from "../files/disk.ts";
import { TextField } from "./form-fields.tsx";
import { ownConnectors, putBackOwn, putOwn, refreshOwn, removeOwn } from "./own-connectors.ts";
import { connectorFileName, freeName, type Own, sameName } from "./own-model.ts";
import { SameName } from "./same-name.tsx";

export type ConnectorFile = { readonly name: string; readonly text: string };

type Unread = { readonly file: string; readonly problems: readonly Problem[] };

/** What can be done with a person's own connectors: opened from a file, saved as one, renamed, removed, put back. */
export function OwnTools(props: {
  /** The one that is picked, if it is a person's own. */
  readonly picked: Own | null;
  /** A file that the page was given, to be taken in at once. */
  readonly file: ConnectorFile | null;
  readonly onPick: (id: string) => void;
  readonly onGone: () => void;
}) {
  const { picked } = props;
  const [said, setSaid] = useState("");
  const [unread, setUnread] = useState<Unread | null>(null);
  const [newcomer, setNewcomer] = useState<KeptConnector | null>(null);
  const [renaming, setRenaming] = useState(false);
  const { own, unreadable, removed, trouble } = useStore(ownConnectors);
  const there = newcomer ? sameName(own, newcomer.name) : null;

  const keep = async (connector: KeptConnector, replaces: string | null) => {
    setNewcomer(null);
    const id = await putOwn(connector, replaces);
    if (id === null) return;
    setSaid(`“${connector.name}” is kept in this browser.`);
    props.onPick(id);
    focusTools();
  };
  const takeIn = async (file: ConnectorFile) => {
    const read = parseConnector(file.text);
    setUnread(read.ok ? null : { file: file.name, problems: read.problems });
    if (!read.ok) return;
    setSaid(read.notes.join(" "));
    // Another tab may have kept one of this name, and the list may not have been read yet.
    await refreshOwn();
    if (sameName(ownConnectors.getState().own, read.connector.name)) setNewcomer(read.connector);
    else await keep(read.connector, null);
  };
  const open = async () => {
    try {
      const file = await pickFile("Pigtail connector");
      if (file) await takeIn(file);
    } catch (error) {
      setSaid(`The file could not be read: ${(error as Error).message}`);
    }
  };
  const save = async (name: string, text: string) => {
    const fileName = connectorFileName(name);
    try {
      const written = await writeFile(text, fileName, null);
      if (written !== "cancelled") setSaid(`Saved ${written?.name ?? fileName}.`);
    } catch (error) {
      setSaid(`${fileName} could not be written: ${(error as Error).message}`);
    }
  };
  const remove = async (one: Own) => {
    await removeOwn(one.id);
    setSaid(`“${one.connector.name}” is removed from this browser.`);
    props.onGone();
    focusTools();
  };
  const putBack = async () => {
    const id = await putBackOwn();
    setSaid("It is back.");
    if (id !== null) props.onPick(id);
    focusTools();
  };
  const buttons = useRef<HTMLDivElement>(null);
  /** The button that was pressed has gone: the focus goes to the first of those that stand there now. */
  const [turned, setTurned] = useState(0);
  const focusTools = () => setTurned((times) => times + 1);
  // After the buttons of now are drawn, however long that takes.
  useEffect(() => {
    if (turned > 0) buttons.current?.querySelector("button")?.focus();
  }, [turned]);
  const taken = useRef<ConnectorFile | null>(null);
  const { file } = props;
  // biome-ignore lint/correctness/useExhaustiveDependencies: each file is taken in once
  useEffect(() => {
    if (!file || taken.current === file) return;
    taken.current = file;
    void takeIn(file);
  }, [file]);

  return (
    <div className="own-tools">
      {picked && renaming && (
        <Rename
          own={own}
          one={picked}
          onDone={() => {
            setRenaming(false);
            focusTools();
          }}
          onSaid={setSaid}
        />
      )}
      <div className="own-buttons" ref={buttons}>
        {picked && !renaming && (
          <>
            <button type="button" className="button" onClick={() => setRenaming(true)}>
              Rename…
            </button>
            <button
              type="button"
              className="button"
              onClick={() => void save(picked.connector.name, serialiseConnector(picked.connector))}
            >
              Save as a file
            </button>
            <button type="button" className="button" onClick={() => void remove(picked)}>
              Remove
            </button>
          </>
        )}
        <button type="button" className="button" onClick={() => void open()}>
          Open a connector file…
        </button>
        {removed && (
          <button type="button" className="button" onClick={() => void putBack()}>
            Put back what was removed
          </button>
        )}
        {unreadable.map(({ record }, index) => (
          <button
            key={record.id}
            type="button"
            className="button"
            onClick={() => void save(`unreadable ${index + 1}`, record.text)}
          >
            Save unreadable connector {index + 1} as a file
          </button>
        ))}
      </div>
      {newcomer && there && (
        <SameName
          there={there}
          otherName={freeName(own, newcomer.name)}
          onReplace={() => void keep(newcomer, there.id)}
          onKeepBoth={() => void keep({ ...newcomer, name: freeName(own, newcomer.name) }, null)}
          onLeave={() => {
            setNewcomer(null);
            focusTools();
          }}
        />
      )}
      <p className="rows-said" role="status">
        {said}
      </p>
      {unread && <Unreadable {...unread} />}
      {trouble && (
        <p className="field-why" role="alert">
          The browser's storage cannot be used: {trouble}
        </p>
      )}
    </div>
  );
}

/** A few places are enough to mend a file by; the list of a wholly other file would fill the page. */
const SHOWN = 5;

function Unreadable({ file, problems }: Unread) {
  return (
    <div className="own-question" role="alert">
      <p>{file} cannot be opened. Nothing was changed.</p>
      <ul>
        {problems.slice(0, SHOWN).map((problem) => (
          <li key={sayProblem(problem)}>{sayProblem(problem)}</li>
        ))}
      </ul>
      {problems.length > SHOWN && <p>and {problems.length - SHOWN} more</p>}
    </div>
  );
}

function Rename(props: {
  readonly own: readonly Own[];
  readonly one: Own;
  readonly onDone: () => void;
  readonly onSaid: (said: string) => void;
}) {
  const { one } = props;
  const [name, setName] = useState(one.connector.name);
  const [why, setWhy] = useState<string | undefined>(undefined);
  const take = async () => {
    const next = name.trim();
    if (next === "") return setWhy("It needs a name by which you find it again.");
    if (sameName(props.own, next, one.id)) return setWhy(`Another one is called “${next}”.`);
    const id = await putOwn({ ...one.connector, name: next }, one.id);
    if (id !== null) props.onSaid(`It is called “${next}” now.`);
    props.onDone();
  };
  return (
    // A form of its own cannot stand inside the dialog's; Enter is taken here instead of adding the connector.
    // biome-ignore lint/a11y/noStaticElementInteractions: the field inside has the keys
    <div
      className="own-rename"
      onKeyDown={(event) => {
        if (event.key === "Enter" && event.target instanceof HTMLInputElement) {
          event.preventDefault();
          void take();
        } else if (event.key === "Escape") {
          event.preventDefault();
          event.stopPropagation();
          props.onDone();
        }
      }}
    >
      <TextField
        name="New name"
        value={name}
        why={why}
        focused
        onText={(text) => {
          setName(text);
          setWhy(undefined);
        }}
      />
      <button type="button" className="button" onClick={() => void take()}>
        Rename it
      </button>
      <button type="button" className="button" onClick={props.onDone}>
        Leave its name
      </button>
    </div>
  );
}
