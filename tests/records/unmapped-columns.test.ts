import { describe, expect, it } from "vitest";
import { mapColumns } from "../../src/records/column-mapping.ts";
import { unmappedColumns } from "../../src/records/unmapped-columns.ts";

describe("columns that fill no field", () => {
  it("are given with some of their values, each once", () => {
    const headers = ["Art", "year", "", "Wetter"];
    const rows = [
      ["a", "2020", "x", ""],
      ["b", "2021"],
      [" a ", "2022", "", "sun"],
    ];
    expect(unmappedColumns(headers, mapColumns(headers, {}), rows)).toEqual([
      { header: "Art", values: ["a", "b"] },
      { header: "Wetter", values: ["sun"] },
    ]);
  });

  it("are given with sixty values at most, and none of them long", () => {
    const rows = Array.from({ length: 100 }, (_, index) => [`${index}${"x".repeat(500)}`]);
    const [column] = unmappedColumns(["Art"], mapColumns(["Art"], {}), rows);
    expect(column?.values).toHaveLength(60);
    expect(column?.values[0]).toHaveLength(200);
  });
});
