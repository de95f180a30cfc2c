import * as z from "zod/mini";

/**
 * An object whose unknown fields survive reading and saving (a newer version may have written them), while
 * its type shows only the fields we know, so that a misspelt one does not compile.
 */
export function object<Shape extends z.core.$ZodShape>(shape: Shape): z.ZodMiniObject<Shape, z.core.$strip> {
  return z.looseObject(shape) as unknown as z.ZodMiniObject<Shape, z.core.$strip>;
}

/** A line of text as a person typed it. */
export const line = z.string().check(z.maxLength(400));
/** A line that is not empty. */
export const filledLine = line.check(z.minLength(1));
/** Several lines. */
export const note = z.string().check(z.maxLength(8000));

const idText = (prefix: string) => z.string().check(z.regex(new RegExp(`^${prefix}:[A-Za-z0-9_-]{1,60}$`)));
export const partId = idText("p").brand<"part">();
export const wireId = idText("w").brand<"wire">();
export const cableId = idText("c").brand<"cable">();
export const runId = idText("r").brand<"run">();
export const waiverId = idText("v").brand<"waiver">();
export const testRowId = idText("t").brand<"test row">();
export const photoId = idText("f").brand<"photo">();

/** IEC 60757 letter codes, in that standard's table order. */
export const COLOUR_CODES = [
  "BK",
  "BN",
  "RD",
  "OG",
  "YE",
  "GN",
  "BU",
  "VT",
  "GY",
  "WH",
  "PK",
  "GD",
  "TQ",
  "SR",
  "GNYE",
] as const;
export const colourCode = z.enum(COLOUR_CODES);

/**
 * Base and tracer are two fields because IEC 60757 writes two colours in table order, which loses the base.
 * A colour that nobody has stated is `null` where this is used, never black.
 */
export const colour = object({ base: colourCode, tracer: z.nullable(colourCode) });

/** Metal cross-section, mm². The upper bound is far past any vehicle cable; it keeps nonsense out. */
export const area_mm2 = z.number().check(z.positive(), z.maximum(1000));
export const length_m = z.number().check(z.nonnegative(), z.maximum(1000));
export const current_A = z.number().check(z.nonnegative(), z.maximum(10000));
export const unknown = z.literal("unknown");

/** Names a function of the catalogue. The document does not import the catalogue; an unheard-of name is kept. */
export const functionName = z.string().check(z.regex(/^[a-z][a-z0-9-]{0,63}$/));

/** Contacts count from 1 in the order of the part's contact list; what is printed on the housing is `label`. */
export const contactNumber = z.int().check(z.minimum(1), z.maximum(2000));
export const contactRef = object({ part: partId, contact: contactNumber });
/** A wire's end: on a contact, or loose. A loose end is data; the rules speak of it. */
export const end = z.union([contactRef, z.literal("loose")]);

/** A place on the drawing, in drawing units. */
export const coordinate = z.number().check(z.minimum(-1e6), z.maximum(1e6));
