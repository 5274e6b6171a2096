import { sqlBeside } from "../../engine/database.ts";
import { addFindings, type Check, type CheckContext } from "../check.ts";
import { conditionsOf, notKept } from "../licences.ts";

/** A licence of the data that asks for more than the atlas's gives: nobody may publish such records under it. */
export const licenceStricter: Check = {
  name: "licence_stricter",
  severity: "blocks",
  asks: "Does the licence of the record, or of its source where the record states none, have a condition that the atlas's licence does not keep?",
  find: findStricter,
};

/** A licence nobody here can read. */
export const licenceUnknown: Check = {
  name: "licence_unknown",
  severity: "ask",
  asks: "Is the licence a text that names none that is known here?",
  find: findUnknown,
};

function findStricter(context: CheckContext): Promise<void> {
  return findProblems(context, licenceStricter, ({ said, atlas, conditions }) => {
    const broken = conditions === undefined ? [] : notKept(conditions, conditionsOf(atlas) ?? []);
    if (broken.length === 0) return undefined;
    return [
      `“${said}” asks for ${broken.join(" and ")}, which the atlas's licence ${atlas} does not keep`,
      "ask whoever holds the records for leave, choose a licence for the atlas that keeps the condition, or leave the records out",
    ];
  });
}

function findUnknown(context: CheckContext): Promise<void> {
  return findProblems(context, licenceUnknown, ({ said, conditions }) =>
    said === "" || conditions !== undefined
      ? undefined
      : ["is no licence that is known here", "write an SPDX identifier such as CC-BY-4.0, or the licence's address"],
  );
}

interface Licensed {
  said: string;
  atlas: string;
  conditions: ReturnType<typeof conditionsOf>;
}

/** Puts a question to each distinct licence of a source, and its answer to the records that have it. */
async function findProblems(
  { database, scheme: { settings } }: CheckContext,
  check: Check,
  problemOf: (licensed: Licensed) => [problem: string, wayOut: string] | undefined,
): Promise<void> {
  const distinct = await database.rows<{ source: string; license: string }>(
    "SELECT DISTINCT source, license FROM raw_records ORDER BY source, license",
  );
  const found = distinct.flatMap(({ source, license }) => {
    const said = license.trim() || (settings.sources.find(({ id }) => id === source)?.licence ?? "");
    const problem = problemOf({ said, atlas: settings.licence, conditions: conditionsOf(said) });
    return problem === undefined ? [] : [{ source, license, said, problem: problem[0], way_out: problem[1] }];
  });
  const filler = await database.fill("licence_problems", {
    source: "text",
    license: "text",
    said: "text",
    problem: "text",
    way_out: "text",
  });
  filler.add({
    source: found.map(({ source }) => source),
    license: found.map(({ license }) => license),
    said: found.map(({ said }) => said),
    problem: found.map(({ problem }) => problem),
    way_out: found.map(({ way_out }) => way_out),
  });
  filler.done();
  if (found.length > 0) await addFindings(database, check, sqlBeside(import.meta.url, "licences.sql"));
}
