import { expect, it } from "vitest";
import { useDatabase } from "../../records/reading.ts";
import { asked } from "../asking.ts";

const database = useDatabase();
const header = "occurrenceID,scientificName,eventDate,easting,northing,recordedBy,locality";
const at = (id: string, easting: number, northing: number, day: string, locality = "Hill") =>
  `${id},Bombus pratorum,${day},${easting},${northing},Ann,${locality}`;
const found = (rows: readonly string[], crs: string) =>
  asked(database(), rows, ["projection_offset"], { header, sources: { walks: { crs } } });

// 53.3° north, 3° west is E 333,450 N 378,580 in Britain's grid and E 533,200 N 239,410 in Ireland's, to a kilometre: the
// formulas of Ordnance Survey's guide to coordinate systems in Great Britain (2020), worked in another program, without
// the shift of the Irish datum. Read in Britain's, the latter is in Hertfordshire.
it("asks about numbers that, read in the other grid, lie with the rows beside them of one locality or day", async () => {
  const [one, other] = [at("a1", 333_400, 378_500, "1990"), at("a3", 333_500, 378_600, "1990-07")];
  expect(await found([one, at("a2", 533_200, 239_400, "1990-07-13"), other], "EPSG:27700")).toEqual([
    "3: projection_offset gridReference=SJ3378",
  ]);
  expect(await found([one, at("a2", 533_200, 239_400, "1990", "")], "EPSG:27700")).toEqual([
    "3: projection_offset gridReference=SJ3378",
  ]);
  expect(await found([one, at("a2", 533_200, 239_400, "1991", "Wood"), other], "EPSG:27700")).toEqual([]);
  expect(await found([one, at("a2", 533_200, 300_000, "1990-07-13"), other], "EPSG:27700")).toEqual([]);
});

// The newer Irish projection puts the middle of Dublin at about E 715,800 N 734,700 and the older grid at E 315,900
// N 234,600 (Ordnance Survey Ireland and Ordnance Survey of Northern Ireland, Making maps compatible with GPS, 1999).
it("tells numbers that lie in no territory but would in another national system", async () => {
  expect(await found([at("a1", 715_830, 734_650, "1990")], "EPSG:29903")).toEqual(["2: projection_offset"]);
  expect(await found([at("a1", 315_900, 234_600, "1990")], "EPSG:29903")).toEqual([]);
});
