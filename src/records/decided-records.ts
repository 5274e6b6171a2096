import { type Database, sqlBeside } from "../engine/database.ts";
import { CORRECTABLE, type DecisionRow } from "../scheme/decisions-file.ts";
import { isRuled, type RecordDecision } from "../scheme/decisions-in-force.ts";
import type { SiteRow } from "../scheme/sites-file.ts";
import { siteKey } from "./site-points.ts";

const RULED = {
  record_key: "text",
  decision_id: "text",
  ruling: "text",
  identification: "text",
  why: "text",
  settles: "boolean",
  opinions: "text",
  said_name: "text",
  said_date: "text",
  said_place: "text",
  said_kind: "text",
  scientificName: "text",
  gridReference: "text",
  decimalLatitude: "text",
  decimalLongitude: "text",
  eventDate: "text",
  caste: "text",
} as const;

/**
 * Joins the rulings in force to the records they are on: tables `rulings_in_force` and `decided`. Needs the view
 * `record_texts`.
 *
 * @param inForce as `decisionsInForce` gives them
 */
export async function layDecisions(database: Database, inForce: ReadonlyMap<string, RecordDecision>): Promise<void> {
  const filler = await database.fill("rulings_in_force", RULED);
  const rulings = [...inForce.values()];
  filler.add({
    record_key: rulings.map(({ recordKey }) => recordKey),
    decision_id: rulings.map(({ latest }) => latest.decisionID),
    ruling: rulings.map(({ status }) => status?.ruling ?? ""),
    identification: rulings.map(({ identification }) => identification?.identification ?? ""),
    why: rulings.map(({ status, identification, latest }) => (status ?? identification ?? latest).why),
    settles: rulings.map(isRuled),
    opinions: rulings.map(({ opinions }) => opinions.map(opinionInWords).join("; ")),
    said_name: rulings.map(({ latest }) => latest.saidName),
    said_date: rulings.map(({ latest }) => latest.saidDate),
    said_place: rulings.map(({ latest }) => latest.saidPlace),
    said_kind: rulings.map(({ latest }) => latest.saidKind),
    ...Object.fromEntries(
      CORRECTABLE.map((field) => [field, rulings.map(({ corrections }) => corrections[field] ?? null)]),
    ),
  });
  filler.done();
  await database.run(sqlBeside(import.meta.url, "decided.sql"));
}

function opinionInWords({ value, identification, partSeen, why, who, when }: DecisionRow): string {
  const said = [value, identification, partSeen, why].filter(Boolean).join(", ");
  return `${said} (${[who, when.slice(0, 10)].filter(Boolean).join(", ")})`;
}

/**
 * Lays the view `stated_records`: what is interpreted. Without a correction it is the records as read,
 * what is withheld of a place standing with what was coarsened, and `site` and `site_m`, the site the locality names and its reach.
 *
 * @param inForce as `decisionsInForce` gives them
 */
export async function layStatedRecords(
  database: Database,
  inForce: ReadonlyMap<string, RecordDecision>,
  sites: readonly SiteRow[] = [],
): Promise<void> {
  await laySiteNames(database, sites);
  await database.run(sqlBeside(import.meta.url, "placed-texts.sql"));
  const corrected = [...inForce.values()].some(({ corrections }) => Object.keys(corrections).length > 0);
  if (corrected) await database.run(sqlBeside(import.meta.url, "stated-records.sql"));
  else await database.run("CREATE OR REPLACE VIEW stated_records AS SELECT * FROM placed_texts");
}

/** Names of sites as localities are compared, each with the furthest reach given for it: table `site_names`. */
async function laySiteNames(database: Database, sites: readonly SiteRow[]): Promise<void> {
  const reach = new Map<string, number>();
  for (const { name, uncertainty_m } of sites.filter((site) => site.name !== "")) {
    const key = siteKey(name);
    reach.set(key, Math.max(reach.get(key) ?? 0, uncertainty_m));
  }
  const filler = await database.fill("site_names", { name: "text", uncertainty_m: "double" });
  filler.add({ name: [...reach.keys()], uncertainty_m: [...reach.values()] });
  filler.done();
}
