import type * as z from "zod/mini";
import type * as schema from "./schema/harness.ts";
import type * as parts from "./schema/parts.ts";
import type * as values from "./schema/values.ts";

type Primitive = string | number | boolean | null | undefined;
type Frozen<T> = T extends Primitive ? T : { readonly [Key in keyof T]: Frozen<T[Key]> };

export type PartId = z.infer<typeof values.partId>;
export type WireId = z.infer<typeof values.wireId>;
export type CableId = z.infer<typeof values.cableId>;
export type RunId = z.infer<typeof values.runId>;
export type WaiverId = z.infer<typeof values.waiverId>;
export type TestRowId = z.infer<typeof values.testRowId>;
export type PhotoId = z.infer<typeof values.photoId>;

export type ColourCode = z.infer<typeof values.colourCode>;
export type Colour = Frozen<z.infer<typeof values.colour>>;
export type ContactRef = Frozen<z.infer<typeof values.contactRef>>;
export type End = ContactRef | "loose";
export type Direction = z.infer<typeof parts.direction>;
export type JobSide = z.infer<typeof parts.side>;
export type Cavity = Frozen<z.infer<typeof parts.cavity>>;
export type ConfigurationSwitch = Frozen<z.infer<typeof parts.configurationSwitch>>;

export type Connector = Frozen<z.infer<typeof parts.connector>>;
export type Splice = Frozen<z.infer<typeof parts.splice>>;
export type Cap = Frozen<z.infer<typeof parts.cap>>;
export type Ground = Frozen<z.infer<typeof parts.ground>>;
export type Supply = Frozen<z.infer<typeof parts.supply>>;
export type Fuse = Frozen<z.infer<typeof parts.fuse>>;
export type Relay = Frozen<z.infer<typeof parts.relay>>;
export type Switch = Frozen<z.infer<typeof parts.switchPart>>;
export type Diode = Frozen<z.infer<typeof parts.diode>>;
export type Resistor = Frozen<z.infer<typeof parts.resistor>>;
export type Capacitor = Frozen<z.infer<typeof parts.capacitor>>;
export type Load = Frozen<z.infer<typeof parts.load>>;
export type Speaker = Frozen<z.infer<typeof parts.speaker>>;
export type Module = Frozen<z.infer<typeof parts.modulePart>>;
/** Anything with contacts. */
export type Part =
  | Connector
  | Splice
  | Cap
  | Ground
  | Supply
  | Fuse
  | Relay
  | Switch
  | Diode
  | Resistor
  | Capacitor
  | Load
  | Speaker
  | Module;
export type PartKind = Part["kind"];

export type Wire = Frozen<z.infer<typeof schema.wire>>;
export type Cable = Frozen<z.infer<typeof schema.cable>>;
export type Run = Frozen<z.infer<typeof schema.run>>;
export type Settings = Frozen<z.infer<typeof schema.settings>>;
export type TitleBlock = Frozen<z.infer<typeof schema.titleBlock>>;
export type Waiver = Frozen<z.infer<typeof schema.waiver>>;
export type TestRow = Frozen<z.infer<typeof schema.testRow>>;
export type Photo = Frozen<z.infer<typeof schema.photo>>;
export type Place = Frozen<z.infer<typeof schema.place>>;
export type Path = readonly number[];
export type Layout = Frozen<z.infer<typeof schema.layout>>;

/**
 * The document: what is saved and nothing else. No selection, no zoom, no findings.
 * Plain data; every edit makes a new one and shares what it did not touch.
 */
export type Harness = Frozen<z.infer<typeof schema.harness>>;
export type Section = keyof typeof schema.sections;
export type Entry<S extends Section> = Harness[S][keyof Harness[S]];
