import { expect, it } from "vitest";
import { useDatabase } from "../../records/reading.ts";
import { asked, listed } from "../asking.ts";

const database = useDatabase();
const far = (rows: readonly string[], settings: object = {}) => asked(database(), rows, ["far_in_a_day"], settings);
const oxford = ["a1", "a2", "a3"].map((id) => listed({ id }));

// SP5006 is E 450 N 206 km; NY3915 is E 339 N 515 km: 328 km apart. SP5092 is 86 km north of SP5006.
it("asks about the one record of a day that is further from the others than a day's travel", async () => {
  expect(await far([...oxford, listed({ id: "b1", place: "NY3915" })])).toEqual(["5: far_in_a_day"]);
  expect(await far([...oxford, listed({ id: "b1", place: "SP5092" })])).toEqual([]);
  expect(
    await far([...oxford, listed({ id: "b1", place: "SP5092" })], { more: { checks: { travel: { far_km: 50 } } } }),
  ).toEqual(["5: far_in_a_day"]);
});

it("says nothing of two records, of two groups, and of people without a name", async () => {
  expect(await far([listed({ id: "a1" }), listed({ id: "b1", place: "NY3915" })])).toEqual([]);
  expect(await far([...oxford, listed({ id: "b1", place: "NY3915" }), listed({ id: "b2", place: "NY3915" })])).toEqual(
    [],
  );
  const nameless = [...oxford, listed({ id: "b1", place: "NY3915" })].map((row) => row.replace("Ann", ""));
  expect(await far(nameless)).toEqual([]);
});
