import { type Database, sqlBeside } from "../../engine/database.ts";
import { generalisationsOf } from "../../scheme/generalisations.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { addFindings, type Check, type CheckContext } from "../check.ts";
import { dropTables } from "../drop-tables.ts";
import { layNeighbours } from "../neighbouring-squares.ts";
import { EVIDENCE, layEvidence, levelOf } from "../record-evidence.ts";
import { settlingEvidence } from "../settling-evidence.ts";

/** How near a look-alike must be, in kilometres between centres: in the square or one of the eight around it. */
const NEAR_KM = 15;

/**
 * Evidence that a record should have where it is otherwise expected. What the scheme lists in `checks.evidence.needed` is
 * asked for. Beside that only a note: where nothing short of a specimen settles the name in the caste stated, and a
 * look-alike named in the taxon's account was reported near in the same decade. A common taxon that a view settles is not
 * asked about at all; where a record is unexpected, `unexpected_place_season` asks for the evidence with its reasons.
 */
export const evidenceMissing: Check = {
  name: "evidence_missing",
  severity: "ask",
  asks: "Does the evidence of a record show what its taxon and caste need? Asked where the scheme lists it; noted where only a specimen settles the name and a look-alike lives near.",
  find,
};

async function find({ database, scheme }: CheckContext): Promise<void> {
  await layEvidence(database, scheme);
  await layNeighbours(database, scheme, NEAR_KM);
  await fillNeeds(database, scheme);
  await database.run(sqlBeside(import.meta.url, "evidence-missing.sql").replaceAll("{near}", String(NEAR_KM)));
  const { name } = evidenceMissing;
  for (const severity of ["ask", "note"] as const)
    await addFindings(
      database,
      { name, severity },
      `SELECT l.record_no, 'evidence' AS field, h.words AS value, t.name || ' in ' || coalesce(l.hectad, l.territory) AS subject,
         CASE WHEN l.listed THEN 'rests on ' || h.words || '; for this taxon the scheme asks for ' || n.words
           ELSE 'rests on ' || h.words || '; ' || o.name || ' was reported within ${NEAR_KM} km in the same decade, and only a specimen tells them apart' END AS message,
         coalesce(l.words, n.words) AS way_out, '' AS proposal
       FROM lacking_evidence AS l
       JOIN evidence_words AS h ON h.level = l.level
       JOIN evidence_words AS n ON n.level = l.needed_level
       JOIN taxon_names AS t ON t.taxon_id = l.taxon_id
       LEFT JOIN taxon_names AS o ON o.taxon_id = l.other_id
       WHERE l.listed = ${severity === "ask"} ORDER BY l.record_no`,
    );
  await dropTables(database, [
    ...["lacking_evidence", "look_alikes_near", "look_alikes", "settling", "needed", "evidence_words", "taxon_names"],
    ...["record_evidence", "confirmed_records", "review_squares", "neighbouring_squares"],
  ]);
}

async function fillNeeds(database: Database, scheme: Scheme): Promise<void> {
  const { taxa, settings, accounts } = scheme;
  const castes = ["", ...settings.castes.map(({ id }) => id)];
  const settling = taxa.flatMap(({ taxonID }) =>
    castes.flatMap((caste) => {
      const found = settlingEvidence(scheme, taxonID, caste);
      return found === undefined ? [] : [[taxonID, caste, found.level, found.words] as const];
    }),
  );
  await fill(database, "settling", ["taxon_id", "caste", "level", "words"], settling);
  // The question is passed on to others: it must not tell them where a listed taxon lives.
  const bySpecimen = new Set(settling.filter(([, , level]) => level === 3).map(([taxonID]) => taxonID));
  const looks = [...bySpecimen].flatMap((taxonID) =>
    (accounts.get(taxonID)?.front.look_alikes ?? []).flatMap(({ taxonID: other }) =>
      other === undefined || generalisationsOf(scheme, other).length > 0 ? [] : [[taxonID, other] as const],
    ),
  );
  await fill(database, "look_alikes", ["taxon_id", "other_id"], looks);
  const needed = settings.checks.evidence.needed.flatMap((one, index) =>
    one.taxa.flatMap((taxon) =>
      any(one.castes).flatMap((caste) =>
        any(one.territories).map((territory) => [index, taxon, caste, territory, levelOf(one.least)] as const),
      ),
    ),
  );
  await fill(database, "needed", ["place_in_list", "taxon_id", "caste", "territory", "level"], needed);
  const words = EVIDENCE.map(
    (word, level) => [level, level === 0 ? "no stated evidence" : level === 1 ? word : `a ${word}`] as const,
  );
  await fill(database, "evidence_words", ["level", "words"], words);
  await fill(
    database,
    "taxon_names",
    ["taxon_id", "name"],
    taxa.map(({ taxonID, scientificName }) => [taxonID, scientificName]),
  );
}

/** A list of the settings where empty means any. */
function any(list: readonly string[]): readonly string[] {
  return list.length === 0 ? [""] : list;
}

async function fill(
  database: Database,
  table: string,
  names: readonly string[],
  rows: readonly (readonly (string | number)[])[],
): Promise<void> {
  const type = (name: string) =>
    name === "level" || name === "place_in_list" ? ("integer" as const) : ("text" as const);
  const filler = await database.fill(table, Object.fromEntries(names.map((name) => [name, type(name)])));
  filler.add(Object.fromEntries(names.map((name, column) => [name, rows.map((row) => row[column] ?? "")])));
  filler.done();
}
