import type { KeyboardEvent, PointerEvent } from "react";

/** A bar between two areas; dragging it, or the arrow keys on it, gives room from one to the other. */
export function Splitter(props: {
  readonly name: string;
  /** The direction the bar runs in. */
  readonly runs: "up" | "across";
  readonly size: number;
  readonly least: number;
  readonly most: number;
  readonly onSize: (size: number) => void;
}) {
  const bounded = (size: number) => Math.min(props.most, Math.max(props.least, Math.round(size)));
  const up = props.runs === "up";
  const drag = (event: PointerEvent<HTMLElement>) => {
    if (event.button !== 0) return;
    event.preventDefault();
    const bar = event.currentTarget;
    const from = up ? event.clientX : event.clientY;
    const { size } = props;
    bar.setPointerCapture(event.pointerId);
    const move = (moved: globalThis.PointerEvent) =>
      props.onSize(bounded(size + from - (up ? moved.clientX : moved.clientY)));
    const end = () => {
      bar.removeEventListener("pointermove", move);
      bar.removeEventListener("pointerup", end);
      bar.removeEventListener("pointercancel", end);
    };
    bar.addEventListener("pointermove", move);
    bar.addEventListener("pointerup", end);
    bar.addEventListener("pointercancel", end);
  };
  const press = (event: KeyboardEvent) => {
    const more = up ? "ArrowLeft" : "ArrowUp";
    const less = up ? "ArrowRight" : "ArrowDown";
    const step = event.shiftKey ? 64 : 16;
    if (event.key === more) props.onSize(bounded(props.size + step));
    else if (event.key === less) props.onSize(bounded(props.size - step));
    else if (event.key === "Home") props.onSize(props.least);
    else if (event.key === "End") props.onSize(props.most);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a movable separator has no element of its own
    <div
      role="separator"
      tabIndex={0}
      className={up ? "splitter splitter-up" : "splitter splitter-across"}
      aria-label={props.name}
      aria-orientation={up ? "vertical" : "horizontal"}
      aria-valuenow={props.size}
      aria-valuemin={props.least}
      aria-valuemax={props.most}
      onPointerDown={drag}
      onKeyDown={press}
    />
  );
}
