import { expect, it } from "vitest";
import { interpret } from "./interpreting.ts";
import { useDatabase } from "./reading.ts";

const database = useDatabase();

it("gives every record the key of its party, whatever order and spelling it is written in", async () => {
  const written = ["Ann Smith & Bo Jones", "Jones, Bo | SMITH, Ann", "bo jones; ann smith", "Ann Smith", ""];
  const lines = written.map((people) => `Bombus pratorum,2015-04-03,SP5405,"${people}"`);
  await interpret(database(), { walks: ["scientificName,eventDate,gridReference,recordedBy", ...lines].join("\n") });
  const found = await database().rows<{ recorder: string }>("SELECT recorder FROM records ORDER BY record_no");
  expect(found.map(({ recorder }) => recorder)).toEqual([
    "ann bo jones smith",
    "ann bo jones smith",
    "ann bo jones smith",
    "ann smith",
    "",
  ]);
});
