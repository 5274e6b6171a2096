import { expect, it } from "vitest";
import { useDatabase } from "../../records/reading.ts";
import { asked, listed } from "../asking.ts";

const database = useDatabase();
const odd = (rows: readonly string[]) => asked(database(), rows, ["odd_row_in_list", "day_and_month_exchanged"]);
const one = listed({ id: "a1" });
const other = listed({ id: "a3" });

it("asks about a row far from two that lie together, and proposes their place", async () => {
  // SP7825 is 28 km east and 19 km north of SP5006, and no slip away from it.
  expect(await odd([one, listed({ id: "a2", place: "SP7825" }), other])).toEqual([
    "3: odd_row_in_list gridReference=SP5006",
  ]);
});

it("lets neighbouring squares, the ends of a list, and rows of another day or person alone", async () => {
  expect(await odd([one, listed({ id: "a2", place: "SP5107" }), other])).toEqual([]);
  expect(await odd([listed({ id: "a2", place: "SP7825" }), one, other])).toEqual([]);
  expect(await odd([one, listed({ id: "a2", place: "SP7825", day: "2011-07-20" }), other])).toEqual([]);
  expect(await odd([one, listed({ id: "a2", place: "SP7825", recorder: "Ben" }), other])).toEqual([]);
});

it("asks about a row whose day differs where the place is the same", async () => {
  expect(await odd([one, listed({ id: "a2", day: "2011-01-01" }), other])).toEqual([
    "3: odd_row_in_list eventDate=2011-07-12",
  ]);
});

it("lets a vaguer date of the same time alone", async () => {
  expect(await odd([one, listed({ id: "a2", day: "2011-07" }), other])).toEqual([]);
});

it("knows day and month exchanged from the row beside it, and takes the date more of the recorder's records have", async () => {
  // 12 July and 7 December.
  const exchanged = listed({ id: "a2", day: "2011-12-07" });
  expect(await odd([exchanged, one, other])).toEqual(["2: day_and_month_exchanged eventDate=2011-07-12"]);
  expect(await odd([one, other, exchanged])).toEqual(["4: day_and_month_exchanged eventDate=2011-07-12"]);
  expect(await odd([one, exchanged])).toEqual([
    "2: day_and_month_exchanged eventDate=2011-12-07",
    "3: day_and_month_exchanged eventDate=2011-07-12",
  ]);
  expect(await odd([one, listed({ id: "a2", day: "2012-12-07" })])).toEqual([]);
  expect(await odd([one, listed({ id: "a2", day: "2011-12-07", place: "SP7825" })])).toEqual([]);
});

it("proposes one date that can be read, where the neighbours state theirs in several columns", async () => {
  const header = "occurrenceID,scientificName,eventDate,year,verbatimEventDate,gridReference,recordedBy";
  const on = (id: string, day: string, words: string) =>
    `${id},Bombus pratorum,${day},${day.slice(0, 4)},${words},SP5006,Ann`;
  const rows = [
    on("a1", "2011-07-12", "12/7/2011"),
    on("a2", "2011-09-01", "1/9/2011"),
    on("a3", "2011-07-12", "12/7/2011"),
  ];
  expect(await asked(database(), rows, ["odd_row_in_list"], { header })).toEqual([
    "3: odd_row_in_list eventDate=2011-07-12",
  ]);
});

it("asks nothing of a file in another order than that of lists, where neighbours leave the row between out time and again", async () => {
  const sorted = Array.from({ length: 24 }, (_, index) =>
    listed({ id: `a${index}`, day: index % 2 === 0 ? "2011-07-12" : `2011-08-${String(index + 1).padStart(2, "0")}` }),
  );
  expect(await odd(sorted)).toEqual([]);
});

it("takes rows of two events for no list, for their ids say that they are two", async () => {
  const header = "occurrenceID,scientificName,eventDate,gridReference,recordedBy,eventID";
  const on = (id: string, day: string, event: string) => `${id},Bombus pratorum,${day},SP5006,Ann,${event}`;
  const rows = (events: readonly [string, string, string]) => [
    on("a1", "2011-07-12", events[0]),
    on("a2", "2011-09-01", events[1]),
    on("a3", "2011-07-12", events[2]),
  ];
  const ask = (events: [string, string, string]) => asked(database(), rows(events), ["odd_row_in_list"], { header });
  expect(await ask(["plot-1", "plot-2", "plot-1"])).toEqual([]);
  expect(await ask(["plot-1", "plot-1", "plot-1"])).toHaveLength(1);
});
