import { expect, it } from "vitest";
import { useDatabase } from "../../records/reading.ts";
import { asked } from "../asking.ts";

const database = useDatabase();
const header = "occurrenceID,scientificName,eventDate,gridReference,countryCode,viceCounty";

it("asks about a place outside the country the record states, and never reads a vice-county as a place", async () => {
  const rows = [
    "a1,Bombus pratorum,2011,SP5006,IE,",
    "a2,Bombus pratorum,2011,SP5006,GB,H12",
    "a3,Bombus pratorum,2011,,,H12",
  ];
  expect(await asked(database(), rows, ["region_disagrees", "place_empty"], { header })).toEqual([
    "2: region_disagrees",
    "4: place_empty",
  ]);
});
