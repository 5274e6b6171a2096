import { expect, it } from "vitest";
import { useDatabase } from "../../records/reading.ts";
import { asked } from "../asking.ts";

const database = useDatabase();

it("asks about a record that was identified before its own day, as finely as the earlier date is written", async () => {
  const row = (id: string, identified: string) => `${id},Bombus pratorum,2011-07-12,SP5006,${identified}`;
  const header = "occurrenceID,scientificName,eventDate,gridReference,dateIdentified";
  const rows = [
    row("a1", "2011-07-11"),
    row("a2", "2011-07-12"),
    row("a3", "2011-07"),
    row("a4", "2010"),
    row("a5", "11/7/2011"),
    row("a6", ""),
  ];
  expect(await asked(database(), rows, ["recorded_after_identified"], { header })).toEqual([
    "2: recorded_after_identified",
    "5: recorded_after_identified",
  ]);
});
