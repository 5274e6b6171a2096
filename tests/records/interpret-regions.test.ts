import { expect, it } from "vitest";
import { interpret } from "./interpreting.ts";
import { useDatabase } from "./reading.ts";

const database = useDatabase();

it("reads the regions a record states by name in any case, and nothing in what it does not know", async () => {
  // Areas of the demonstration, which states them as vice-counties; the county is no layer of it.
  const rows = ["Trent Valley,", "trent VALLEY ,", "Trentvale,", ",Trent Valley", "VC 57,", "Fens and Nene,Norfolk"];
  await interpret(database(), {
    walks: `scientificName,eventDate,gridReference,viceCounty,county\n${rows.map((row) => `Bombus pratorum,2015-04-03,SK12,${row}`).join("\n")}\n`,
  });
  const told = await database().rows<{ record_no: number; field: string; region_id: string }>(
    "SELECT record_no, field, region_id FROM record_regions ORDER BY record_no",
  );
  expect(told.map(({ field, region_id }) => [field, region_id])).toEqual([
    ["viceCounty", "trent-valley"],
    ["viceCounty", "trent-valley"],
    ["viceCounty", "fens-nene"],
  ]);
  const [first, second, last] = told.map(({ record_no }) => record_no) as [number, number, number];
  expect([second - first, last - first]).toEqual([1, 5]);
});
