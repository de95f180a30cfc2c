import { functionOf } from "../../catalogue/functions.ts";
import { RECEIVER_LEADS } from "../../catalogue/pinouts.ts";
import type { JobSide } from "../../graph/harness.ts";
import type { Chart, Lead } from "../chart.ts";
import { plainWords } from "../words/plain-words.ts";

/** Words of titles that say on which side of the job a chart stands, in the languages of charts. */
const VEHICLE =
  /\b(vehicle|car|van|truck|tractor|lorry|bus|factory|original|oem|loom|towing|socket|chassis|boat|hull|bike|motorcycle|fahrzeug|zugfahrzeug|steckdose|vehicule|voiture|camion|prise|faisceau|origine|vehiculo|coche|furgon|toma|veicolo|auto|furgone|presa|voertuig|wagen|contactdoos|pojazd|samochod|gniazdo|serie|wren)\b/;
const EQUIPMENT =
  /\b(radio|receiver|stereo|head unit|amplifier|amp|camera|unit|aftermarket|new|kit|module|interface|plug|trailer|caravan|display|monitor|heater|alarm|accessory|adapter|lamp|beacon|winch|neues|gerat|verstarker|anhanger|stecker|autoradio|ampli|amplificateur|remorque|fiche|accessoire|nuevo|amplificador|remolque|enchufe|accesorio|amplificatore|rimorchio|spina|versterker|aanhanger|stekker|toestel|wzmacniacz|przyczepa|wtyczka)\b/;

/**
 * On which side of the job a chart stands, as far as it tells: by the directions it states, by its title, by
 * leads that have a receiver's customary colours.
 * @returns `null` where it does not tell; the order of the charts says nothing
 */
export function roleOf(chart: Chart): JobSide | null {
  let votes = 0;
  for (const lead of chart.leads) votes += voteOf(lead);
  const title = plainWords(`${chart.title} ${chart.notes.map((note) => note.text).join(" ")}`);
  if (VEHICLE.test(title)) votes += 2;
  if (EQUIPMENT.test(title)) votes -= 2;
  if (customaryLeads(chart) >= 4) votes -= 3;
  if (votes === 0) return null;
  return votes > 0 ? "vehicle" : "equipment";
}

export type Roles = { readonly left: JobSide | null; readonly right: JobSide | null };

/** Above zero for the vehicle: it gives what a vehicle gives, or takes what equipment gives. */
function voteOf(lead: Lead): number {
  const [first] = lead.reading.candidates;
  if (!first || !lead.reading.certain) return 0;
  const { givenBy } = functionOf(first.function);
  if (givenBy === "either" || (lead.direction !== "gives" && lead.direction !== "takes")) return 0;
  return (lead.direction === "gives") === (givenBy === "vehicle") ? 1 : -1;
}

/** How many leads have the very function that their colour has on aftermarket receivers. */
function customaryLeads(chart: Chart): number {
  return chart.leads.filter((lead) =>
    RECEIVER_LEADS.rows.some(
      (row) =>
        row.function === lead.reading.candidates[0]?.function &&
        row.colour?.base === lead.colour?.base &&
        row.colour?.tracer === lead.colour?.tracer,
    ),
  ).length;
}
