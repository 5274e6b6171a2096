import { type Database, sqlBeside } from "../../engine/database.ts";
import { DECISIONS_FILE, type DecisionRow, readDecisions } from "../../scheme/decisions-file.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { comparedPeriods } from "../../scheme/settings-agree.ts";
import { layWorklist } from "../worklist.ts";

/** The desk's own state beside the database: the scheme, and the rulings of its file as they are now. */
export interface Desk {
  database: Database;
  scheme: Scheme;
  /** Rows of `decisions.csv`, as last read. */
  decisions: DecisionRow[];
  /** Ids of the rulings the worklist was made with. */
  known: ReadonlySet<string>;
  /** Runs one thing after the other on the database. */
  turn<Result>(work: () => Promise<Result>): Promise<Result>;
  /** Waits for what is under way, a ruling that is being written too, and begins nothing more. */
  end(): Promise<void>;
}

/** What is asked of a desk that has ended. */
export class DeskEnded extends Error {}

/**
 * Opens the desk over reviewed records: the worklist, and what is drawn beside a record. Needs what `reviewRecords` or
 * `openReview` leaves.
 *
 * @example const desk = await openDesk(database, scheme)
 */
export async function openDesk(database: Database, scheme: Scheme): Promise<Desk> {
  await layWorklist(database);
  await fillClosure(database, scheme);
  await fillPeriods(database, scheme);
  await database.run(sqlBeside(import.meta.url, "desk-tables.sql"));
  const decisions = readDecisions(scheme.folder);
  let last: Promise<unknown> = Promise.resolve();
  let ended = false;
  const desk: Desk = {
    database,
    scheme,
    decisions,
    known: new Set(decisions.map(({ decisionID }) => decisionID)),
    turn(work) {
      const next = last
        .catch(() => {})
        .then(() => {
          if (ended) throw new DeskEnded("the desk has ended");
          return work();
        });
      last = next;
      return next;
    },
    async end() {
      ended = true;
      await last.catch(() => {});
    },
  };
  await takeUpRulings(desk, decisions);
  return desk;
}

/**
 * Takes up the rows of `decisions.csv` as they are now, so that what was ruled since the desk was opened shows at once.
 *
 * @param decisions all rows of the file
 */
export async function takeUpRulings(desk: Desk, decisions: DecisionRow[]): Promise<void> {
  desk.decisions = decisions;
  const withdrawn = new Set(decisions.filter(({ ruling }) => ruling === "withdraw").map(({ value }) => value));
  const ruled = new Map<string, string>();
  for (const { decisionID, batch, recordKey, ruling } of decisions) {
    if (desk.known.has(decisionID) || withdrawn.has(decisionID) || withdrawn.has(batch)) continue;
    if (ruling !== "withdraw" && ruling !== "opinion") ruled.set(recordKey, ruling);
  }
  const filler = await desk.database.fill("desk_ruled", { record_key: "text", ruling: "text" });
  filler.add({ record_key: [...ruled.keys()], ruling: [...ruled.values()] });
  filler.done();
}

/** Reads the file again when something else may have changed it. */
export async function readAgain(desk: Desk): Promise<void> {
  await takeUpRulings(desk, readDecisions(desk.scheme.folder));
}

/** The only file the desk writes, as it is called in messages. */
export const WRITTEN = DECISIONS_FILE;

async function fillClosure(database: Database, { taxa, checklist }: Scheme): Promise<void> {
  const pairs = taxa.flatMap(({ taxonID }) =>
    [taxonID, ...checklist.ancestors(taxonID)].map((above) => [taxonID, above] as const),
  );
  const filler = await database.fill("desk_closure", { taxon_id: "text", counts_for: "text" });
  filler.add({ taxon_id: pairs.map(([taxon]) => taxon), counts_for: pairs.map(([, above]) => above) });
  filler.done();
}

async function fillPeriods(database: Database, { settings }: Scheme): Promise<void> {
  const [earlier, recent] = comparedPeriods(settings) ?? [-1, settings.periods.length - 1];
  const filler = await database.fill("desk_periods", { period: "integer", part: "text" });
  filler.add({ period: [earlier, recent], part: ["earlier", "recent"] });
  filler.done();
}
