import { expect, it } from "vitest";
import { useDatabase } from "../../records/reading.ts";
import { asked, listed } from "../asking.ts";

const database = useDatabase();
const found = (localities: readonly string[], place = "") =>
  asked(
    database(),
    localities.map((locality, index) => listed({ id: `a${index}`, place, locality })),
    ["reference_in_text"],
  );

it("proposes what may be a grid reference in a text, where no place is given", async () => {
  expect(
    await found(["Oxford SP5006", "near SP 50 06 by the gate", "H12", "N 52 12", "by the B4027", "Oxford"]),
  ).toEqual([
    "2: reference_in_text gridReference=SP5006",
    "3: reference_in_text gridReference=SP5006",
    "4: reference_in_text gridReference=H12",
    "5: reference_in_text gridReference=N5212",
    "6: reference_in_text gridReference=B4027",
  ]);
});

it("never asks where a place is given", async () => {
  expect(await found(["Oxford SP5006"], "SP40")).toEqual([]);
});
