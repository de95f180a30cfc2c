import { migrate } from "../parse/migrate.ts";
import { filled, type Raw } from "../parse/raw.ts";
import { OF_CAVITY } from "../parse/to-version-3.ts";
import { KEPT_CONNECTOR_VERSION } from "./kept-connector.ts";

/** Steps from each version of a `.connector.json` file to the next; what holds of the steps of a harness holds here. */
const steps: ReadonlyMap<number, (raw: Raw) => Raw> = new Map([[1, toVersion2]]);

/** Brings a raw connector file of an older version up to date; one of this or a newer version is left as it is. */
export function migrateConnector(raw: Raw): Raw {
  return migrate(raw, steps, KEPT_CONNECTOR_VERSION);
}

/** How a cavity gives and what makes it act: each as not stated, as in a harness of format version 3. */
function toVersion2(raw: Raw): Raw {
  if (!Array.isArray(raw.cavities)) return raw;
  return { ...raw, cavities: raw.cavities.map((cavity: unknown) => filled(OF_CAVITY, cavity)) };
}
