import { AWG_NAMES, awgArea_mm2, METRIC_SIZES_mm2, readSize } from "../../catalogue/conductors.ts";
import { fold } from "./fold.ts";

/** A figure, and where in the text it stands. */
export type Found = { readonly value: number; readonly start: number; readonly end: number };

const NUMBER = "\\d{1,4}(?:[.,]\\d{1,3})?|[.,]\\d{1,3}";
const METRIC = new RegExp(
  `(?<![\\w.,])(?:\\d\\s?x\\s?)?(${NUMBER})\\s*(?:mm\\s?(?:²|2|\\^2|q)|mm(?![\\w²])|mm\\.?\\s?kw\\.?|qmm|sq\\.?\\s?mm|mmq|sq|carres?|carrés?|²)(?!\\w)`,
  "i",
);
const GAUGE_AFTER = /(?<![\w.,])(\d\/0|\d{1,2})[\s-]*(?:awg|ga|gauge)(?!\w)\.?/i;
const GAUGE_BEFORE = /(?<!\w)awg\s*[:#]?\s*(\d\/0|\d{1,2})(?!\w)/i;

/** A cross-section with its unit: "0,75 mm²", "2.5²", "18 AWG", "AWG 16". Its value is in mm². */
export function findSize(text: string): Found | null {
  const metric = METRIC.exec(text);
  if (metric) {
    const value = numberOf(metric[1]!);
    if (value > 0 && value <= 1000) return found(metric, value);
  }
  const gauge = GAUGE_AFTER.exec(text) ?? GAUGE_BEFORE.exec(text);
  const name = gauge && AWG_NAMES.find((known) => known === gauge[1]);
  return gauge && name ? found(gauge, awgArea_mm2(name)) : null;
}

/** A cell of a size column: a figure with its unit, or a bare one in what the column is written in. */
export function sizeCell(text: string, sizes: "metric" | "awg"): number | null {
  return findSize(text)?.value ?? readSize(text.replace(/^[øØ⌀]\s*/, ""), sizes);
}

/** Written without its unit: a stocked size, or one with a fraction, as makers of several countries have their own. */
export function isBareSize(text: string): boolean {
  const value = /^\d{1,2}(?:[.,]\d{1,2})?$/.test(text) ? numberOf(text) : Number.NaN;
  return METRIC_SIZES_mm2.some((size) => size === value) || (/[.,]/.test(text) && value >= 0.1 && value < 10);
}

/** 12, 14, 18, 20 …: gauges that are no metric size. */
export function isGaugeOnly(text: string): boolean {
  return /^(?:12|14|18|2[0246])$/.test(text.trim());
}

/** The value of such a size, mm². */
export function bareSize_mm2(text: string): number | null {
  if (isGaugeOnly(text)) return readSize(text.trim(), "awg");
  return isBareSize(text) ? numberOf(text) : null;
}

const AMPERES = `(${NUMBER})\\s*(m?)a(?:mp(?:s|eres?)?)?(?![\\w+/]|\\s+(?:remote|rem|turn|trigger|enable|control|ctrl|wake|on|switch)(?![a-z]))\\.?`;
const FUSE =
  "(?:fused?|fuses|sicherung(?:en)?|abgesichert|si|fusible|fusibile|zekering|bezpiecznik|protegee?|protection)";
const LINK = "(?:\\s|[:=.,]|(?<!\\w)(?:at|by|with|mit|par|a|de|van|nr|no|max|f\\s?\\d{1,3}[a-z]?)(?!\\w))*";
const FUSE_FIRST = new RegExp(`(?<!\\w)${FUSE}(?!\\w)${LINK}${AMPERES}`);
const FUSE_AFTER = new RegExp(`(?<![\\w.,])${AMPERES}\\s*-?\\s*${FUSE}(?!\\w)`);
const FUSE_NAMED = new RegExp(`(?<!\\w)f\\s?\\d{1,3}[a-z]?[\\s:=(,/-]*${AMPERES}`);
const CURRENT = new RegExp(
  `(?:(?<!\\w)(?:max(?:imum|imal)?|up to|bis zu|bis)\\.?\\s*|[<≤~]\\s*)?(?<![\\w.,+-])${AMPERES}(?:\\s*(?:max(?:imum|imal)?\\b\\.?))?`,
);

/** What protects the lead: "fuse 15 A", "F12 15A", "10A fused", "Sicherung 7,5 A". */
export function findFuse(text: string): Found | null {
  const plain = fold(text);
  const match = FUSE_FIRST.exec(plain) ?? FUSE_AFTER.exec(plain) ?? FUSE_NAMED.exec(plain);
  return match ? amperes(match) : null;
}

/** What the lead carries: "10A", "300 mA", "max. 5 A". */
export function findCurrent(text: string): Found | null {
  const match = CURRENT.exec(fold(text));
  return match ? amperes(match) : null;
}

/** A cell of a column of currents or fuses; a bare number is amperes. */
export function ampereCell(text: string): number | null {
  const stated = findCurrent(text) ?? findFuse(text);
  if (stated) return stated.value;
  const bare = /^[<≤~]?\s*(\d{1,4}(?:[.,]\d+)?)$/.exec(text.trim());
  const value = bare ? numberOf(bare[1]!) : Number.NaN;
  return value > 0 ? value : null;
}

function amperes(match: RegExpExecArray): Found | null {
  const value = numberOf(match[1]!) * (match[2] === "m" ? 0.001 : 1);
  return value > 0 && value <= 2000 ? found(match, Number(value.toPrecision(6))) : null;
}

function found(match: RegExpExecArray, value: number): Found {
  return { value, start: match.index, end: match.index + match[0].length };
}

function numberOf(text: string): number {
  return Number(text.replace(",", "."));
}
