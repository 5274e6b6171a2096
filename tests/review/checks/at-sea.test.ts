import { expect, it } from "vitest";
import { useDatabase } from "../../records/reading.ts";
import { asked, listed } from "../asking.ts";

const database = useDatabase();
const atSea = (rows: readonly string[], header?: string) =>
  asked(database(), rows, ["at_sea"], header === undefined ? {} : { header });

// The demonstration's list of land squares has HP40 with tetrads QRSVWXY, HP50 without D, and no HP41.
it("asks about a square without land in the scheme's list, at the finest resolution the place has", async () => {
  expect(
    await atSea([
      listed({ id: "a1", place: "HP4000" }),
      listed({ id: "a2", place: "HP40" }),
      listed({ id: "a3", place: "HP40Q" }),
      listed({ id: "a4", place: "HP41" }),
    ]),
  ).toEqual(["2: at_sea", "5: at_sea"]);
});

it("lets a coarse point alone where its 10 km square has land", async () => {
  const header = "occurrenceID,scientificName,eventDate,decimalLatitude,decimalLongitude,coordinateUncertaintyInMeters";
  // HP4000 is tetrad A of HP40: 60.686° north, 1.260° west is E 440,519 N 1,200,538 (formulas of the national guide, worked in another program).
  const point = (id: string, radius: string) => `${id},Bombus pratorum,2011-07-12,60.6860,-1.2600,${radius}`;
  expect(await atSea([point("a1", "50"), point("a2", "600")], header)).toEqual(["2: at_sea"]);
});
