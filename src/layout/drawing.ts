/**
 * A drawing is a flat list of primitives in drawing units. One unit is one CSS pixel at zoom 1 on the
 * screen and 0.25 mm on paper at scale 1:1, so the screen and the sheet show the same thing.
 *
 * Colours are names, not values: a writer resolves them, so that one drawing serves the light screen, the
 * dark screen and a black-and-white print. `wire:RD` is the pigment of an IEC 60757 letter code.
 */
export type Ink =
  | "ink" // lines and text
  | "quiet" // secondary text, hairlines
  | "paper" // page ground
  | "panel" // fill of a part's body
  | "accent" // selection and focus
  | "danger"
  | "fault"
  | "weak"
  | "tidy"
  | `wire:${string}`
  | "none";

export type Stroke = {
  readonly colour: Ink;
  readonly width: number;
  readonly dash?: readonly number[];
  readonly cap?: "butt" | "round";
};

/** Path commands, absolute coordinates only: few enough that every writer can be complete. */
export type PathCommand =
  | readonly ["M", number, number]
  | readonly ["L", number, number]
  | readonly ["C", number, number, number, number, number, number]
  | readonly ["Z"];

export type Primitive =
  | {
      readonly kind: "line";
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
      readonly stroke: Stroke;
    }
  | {
      readonly kind: "rectangle";
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
      readonly radius?: number;
      readonly fill?: Ink;
      readonly stroke?: Stroke;
    }
  | {
      readonly kind: "circle";
      readonly x: number;
      readonly y: number;
      readonly radius: number;
      readonly fill?: Ink;
      readonly stroke?: Stroke;
    }
  | {
      readonly kind: "path";
      readonly commands: readonly PathCommand[];
      readonly fill?: Ink;
      readonly stroke?: Stroke;
    }
  | {
      readonly kind: "text";
      readonly x: number;
      /** Baseline. */
      readonly y: number;
      readonly text: string;
      /** Font size in drawing units. */
      readonly size: number;
      readonly weight?: "regular" | "bold";
      readonly align?: "start" | "middle" | "end";
      readonly colour: Ink;
      /** Degrees, counter-clockwise as seen; only 0 and 90 are used. */
      readonly turn?: 0 | 90;
    }
  | { readonly kind: "group"; readonly x: number; readonly y: number; readonly items: readonly Primitive[] };

export type Drawing = {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly items: readonly Primitive[];
};

/** Millimetres on paper for one drawing unit at scale 1:1. */
export const UNIT_MM = 0.25;
