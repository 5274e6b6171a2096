import { expect, it } from "vitest";
import { ableToDraw } from "../../src/publishing/map-frame.ts";
import { useDatabase } from "../records/reading.ts";

const database = useDatabase();

// 84.2° W lies in UTM zone 16, whose middle is 87° W; 41.1° W is 46° from it.
it("draws squares of one region, and names the first that its projection cannot hold", async () => {
  const lay = (rows: string) =>
    database().run(
      `CREATE OR REPLACE TABLE square_places AS SELECT square, resolution_m, longitude::DOUBLE AS longitude, latitude::DOUBLE AS latitude FROM (VALUES ${rows}) AS t(square, resolution_m, longitude, latitude)`,
    );
  await lay("('16RGV79', 10000, -84.2, 30.6)");
  expect(await ableToDraw(database(), "EPSG:32616")).toBe("EPSG:32616");
  await lay("('16RGV79', 10000, -84.2, 30.6), ('24LTQ70', 10000, -41.1, -9.9)");
  await expect(ableToDraw(database(), "EPSG:32616")).rejects.toThrow(
    /EPSG:32616, which does not reach the square 24LTQ70/,
  );
});
