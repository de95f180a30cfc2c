import type { ReadCharts } from "./chart.ts";
import { decodeText } from "./read/decode.ts";
import { openWorkbook } from "./read/workbook.ts";
import { type ReadChartOptions, readCharts } from "./read-chart.ts";

/** More than any chart, and still opened in a moment. */
const MOST_BYTES = 50_000_000;

/**
 * Reads a chart out of a file's bytes: a spreadsheet, or text in any usual encoding; what it is shows in its contents,
 * not in its name. Of several sheets, the one that reads best is taken, and that is said.
 */
export async function readChartFile(bytes: Uint8Array, options: ReadChartOptions = {}): Promise<ReadCharts> {
  if (bytes.length > MOST_BYTES)
    return { charts: [], remarks: ["This file is too large for a chart (50 MB at most)."] };
  const isPacked = bytes[0] === 0x50 && bytes[1] === 0x4b && (bytes[2] === 3 || bytes[2] === 5);
  const isOld = bytes[0] === 0xd0 && bytes[1] === 0xcf && bytes[2] === 0x11 && bytes[3] === 0xe0;
  if (!isPacked && !isOld) return readCharts(decodeText(bytes.subarray(0, 4_000_000)), options);
  const opened = await openWorkbook(bytes);
  if ("problem" in opened) return { charts: [], remarks: [opened.problem] };
  const read = opened.sheets.map(({ name, rows }) => ({ name, ...readCharts(rows, options) }));
  const leads = (charts: ReadCharts["charts"]) => charts.reduce((sum, chart) => sum + chart.leads.length, 0);
  const worth = (charts: ReadCharts["charts"]) =>
    charts.reduce(
      (sum, chart) =>
        sum + chart.leads.length + chart.leads.filter(({ reading }) => reading.candidates.length).length,
      0,
    );
  const [best, ...others] = [...read].sort((a, b) => worth(b.charts) - worth(a.charts));
  if (!best || best.charts.length === 0)
    return { charts: [], remarks: [...opened.remarks, "Nothing stands in this spreadsheet."] };
  const filled = others.filter(({ charts }) => leads(charts) > 0);
  const said = filled.length
    ? [
        `Sheet "${best.name}" is read; not read: ${filled.map(({ name, charts }) => `"${name}" (${leads(charts)} rows)`).join(", ")}.`,
      ]
    : [];
  return { charts: best.charts, remarks: [...opened.remarks, ...best.remarks, ...said] };
}
