import { lazy, Suspense } from "react";
import { useStore } from "zustand";
import { Canvas } from "./canvas/canvas.tsx";
import { FileDialogs } from "./files/dialogs.tsx";
import { FindingsList } from "./findings/findings-list.tsx";
import { SaidFindings } from "./findings/said-findings.tsx";
import { FirstMoves } from "./shell/first-moves.tsx";
import { Header } from "./shell/header.tsx";
import { Dialogs } from "./shell/open-dialog.tsx";
import { PhoneSwitch } from "./shell/phone-switch.tsx";
import { desk, SIDE_WIDTH, TABLE_HEIGHT } from "./shell/preferences.ts";
import { Details, Figures, SidePanel } from "./shell/side-panel.tsx";
import { Splitter } from "./shell/splitter.tsx";
import { StatusLine } from "./shell/status-line.tsx";
import { useNarrow } from "./shell/use-narrow.ts";
import { useEditor } from "./state/use-editor.ts";

const PANEL_NAMES = { findings: "Findings", figures: "Figures", inspector: "Details" } as const;

const WireTable = lazy(() => import("./table/wire-table.tsx"));

/** The whole page: drawing in the middle, everything else gives way to it. */
export function App() {
  const narrow = useNarrow();
  return (
    <div className="app">
      <Header />
      {narrow ? <OneThing /> : <SideBySide />}
      <StatusLine />
      {narrow && <PhoneSwitch />}
      <SaidFindings />
      <Dialogs />
      <FileDialogs />
    </div>
  );
}

function Sheet() {
  return (
    <>
      <Canvas />
      <FirstMoves />
    </>
  );
}

function SideBySide() {
  const panel = useEditor((state) => state.panel);
  const wireTable = useEditor((state) => state.wireTable);
  const sideWidth = useStore(desk, (state) => state.sideWidth);
  const tableHeight = useStore(desk, (state) => state.tableHeight);
  return (
    <div className="middle">
      <div className="beside">
        <main className="drawing">
          <Sheet />
        </main>
        {panel !== "none" && (
          <aside className="side" style={{ width: sideWidth }} aria-label={PANEL_NAMES[panel]}>
            <Splitter
              name="Width of the side panel"
              runs="up"
              size={sideWidth}
              least={SIDE_WIDTH.least}
              most={SIDE_WIDTH.most}
              onSize={(size) => desk.setState({ sideWidth: size })}
            />
            <SidePanel />
          </aside>
        )}
      </div>
      {wireTable && (
        <section className="table-place" style={{ height: tableHeight }} aria-label="Wire table">
          <Splitter
            name="Height of the wire table"
            runs="across"
            size={tableHeight}
            least={TABLE_HEIGHT.least}
            most={TABLE_HEIGHT.most}
            onSize={(size) => desk.setState({ tableHeight: size })}
          />
          <Suspense fallback={null}>
            <WireTable />
          </Suspense>
        </section>
      )}
    </div>
  );
}

/** The drawing stays in place behind the other views, so that coming back to it costs nothing. */
function OneThing() {
  const view = useStore(desk, (state) => state.phoneView);
  return (
    <div className="middle">
      <main className="drawing" inert={view !== "drawing"}>
        <Sheet />
      </main>
      {view !== "drawing" && (
        <section className="over" aria-label={view === "wires" ? "Wire table" : view}>
          {view === "findings" ? (
            <div className="side-body">
              <FindingsList />
            </div>
          ) : view === "wires" ? (
            <Suspense fallback={null}>
              <WireTable />
            </Suspense>
          ) : view === "figures" ? (
            <Figures />
          ) : (
            <Details />
          )}
        </section>
      )}
    </div>
  );
}
