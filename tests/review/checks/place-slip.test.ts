import { expect, it } from "vitest";
import { useDatabase } from "../../records/reading.ts";
import { asked, listed } from "../asking.ts";

const database = useDatabase();
const slips = (rows: readonly string[], header?: string) =>
  asked(database(), rows, ["place_slip"], header === undefined ? {} : { header });

// SP5006 and SP5060 lie 54 km apart by their figures: easting 450 km in both, northing 206 and 260 km.
it("asks about a row whose figures, exchanged, would lie with the day's others, wherever it stands in the list", async () => {
  const [odd, one, other] = [listed({ id: "a1", place: "SP5060" }), listed({ id: "a2" }), listed({ id: "a3" })];
  expect(await slips([odd, one, other])).toEqual(["2: place_slip gridReference=SP5006"]);
  expect(await slips([one, odd, other])).toEqual(["3: place_slip gridReference=SP5006"]);
  expect(await slips([one, other, odd])).toEqual(["4: place_slip gridReference=SP5006"]);
});

it("asks about both of two rows that stand against each other, and proposes the other's place", async () => {
  expect(await slips([listed({ id: "a1", place: "SP5060" }), listed({ id: "a2" })])).toEqual([
    "2: place_slip gridReference=SP5006",
    "3: place_slip gridReference=SP5060",
  ]);
});

it("asks about the letters of another 100 km square", async () => {
  expect(
    await slips([listed({ id: "a1" }), listed({ id: "a2", place: "ST5006" }), listed({ id: "a3", place: "SP5106" })]),
  ).toEqual(["3: place_slip gridReference=SP5006"]);
});

it("lets the squares of one walk and a second walk of the day alone", async () => {
  // 7 km and 19 km from the others, and no slip away from them.
  expect(
    await slips([listed({ id: "a1" }), listed({ id: "a2", place: "SP5007" }), listed({ id: "a3", place: "SP5713" })]),
  ).toEqual([]);
  expect(await slips([listed({ id: "a1" }), listed({ id: "a2" }), listed({ id: "a3", place: "SP6925" })])).toEqual([]);
});

it("does not look among the records of another recorder or day", async () => {
  const odd = listed({ id: "a1", place: "SP5060" });
  const others = [listed({ id: "a2", day: "2011-07-13" }), listed({ id: "a3", recorder: "Ben" })];
  expect(await slips([odd, ...others])).toEqual([]);
});

it("looks where nearly all records of a recorder, or of a locality, are", async () => {
  const rows = (more: (index: number) => object) =>
    Array.from({ length: 10 }, (_, index) => listed({ id: `a${index}`, day: `2011-07-${index + 10}`, ...more(index) }));
  const odd = { id: "b1", place: "SP5060", day: "2012-06-01" };
  expect(await slips([...rows(() => ({})), listed(odd)])).toEqual(["12: place_slip gridReference=SP5006"]);
  const site = rows((index) => ({ recorder: `R${index}`, locality: "Long Mead" }));
  expect(await slips([...site, listed({ ...odd, recorder: "Zoe", locality: "long mead" })])).toEqual([
    "12: place_slip gridReference=SP5006",
  ]);
});

it("reads coordinates with two figures exchanged or the other sign", async () => {
  const header = "occurrenceID,scientificName,eventDate,decimalLatitude,decimalLongitude,recordedBy";
  const at = (id: string, latitude: string, longitude: string) =>
    `${id},Bombus pratorum,2011-07-12,${latitude},${longitude},Ann`;
  const others = [at("a2", "51.7512", "-1.2511"), at("a3", "51.7514", "-1.2515")];
  // 51.7512, −1.2512 is E 451,788 N 206,099 by the formulas of Ordnance Survey's guide to coordinate systems in Great
  // Britain (2020), worked in another program; 51.5712 lies 20 km south of it.
  expect(await slips([at("a1", "51.5712", "-1.2512"), ...others], header)).toEqual([
    "2: place_slip gridReference=SP517060",
  ]);
  expect(await slips([at("a1", "51.7512", "1.2512"), ...others], header)).toEqual([
    "2: place_slip gridReference=SP517060",
  ]);
});

it("looks for nothing by day where a recorder's places usually stand alone, as a county service's do", async () => {
  // Five days with two places each, kilometres apart; on the sixth day two that differ by exchanged figures.
  const rounds = Array.from({ length: 5 }, (_, index) => [
    listed({ id: `a${index}`, day: `2011-06-1${index}`, place: `SP1${index}06` }),
    listed({ id: `b${index}`, day: `2011-06-1${index}`, place: `SP7${index}45` }),
  ]).flat();
  const pair = [listed({ id: "c1", place: "SP5060" }), listed({ id: "c2" })];
  expect(await slips([...rounds, ...pair])).toEqual([]);
});
