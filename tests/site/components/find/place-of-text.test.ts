import { describe, expect, it } from "vitest";
import { placeOfDegrees, placeOfText } from "../../../../src/site/components/find/place-of-text.ts";
import { hasSquare, packSquares } from "../../../../src/site/components/find/search-file.ts";

const FILE = {
  squares: packSquares(["NZ26", "NZ27", "TG51", "O13", "WV65", "10kmE398N302", "30UXE15"]),
  grids: ["british", "irish", "channel-islands", "laea", "mgrs"],
};
const squaresOf = async (text: string) => (await placeOfText(text, FILE))?.squares;

describe("placeOfText", () => {
  it("finds the square of a reference of every grid and precision", async () => {
    for (const text of ["NZ26", "nz 26", "NZ2564", "NZ 257 641", "NZ 25741 64123", "NZ26F", "NZ26NE"])
      expect(await squaresOf(text), text).toEqual(["NZ26"]);
    expect(await squaresOf("O1534")).toEqual(["O13"]);
    expect(await squaresOf("WV 65 54")).toEqual(["WV65"]);
    expect(await squaresOf("10kmE398N302")).toEqual(["10kmE398N302"]);
    expect(await squaresOf("1kmE3987N3024")).toEqual(["10kmE398N302"]);
    expect(await squaresOf("30U XE 12345 56789")).toEqual(["30UXE15"]);
  });

  it("finds the square of a position", async () => {
    // Ordnance Survey, A Guide to Coordinate Systems in Great Britain, annex C: 52°39′27.2531″N 1°43′4.5177″E (OSGB36) is
    // TG 51409 13177; ETRS89 differs by about 100 m, far from the square's side.
    expect(await squaresOf("52.6576, 1.7179")).toEqual(["TG51"]);
    expect(await squaresOf("52°39'27\"N 1°43'5\"E")).toEqual(["TG51"]);
    expect((await placeOfDegrees({ latitude: 0, longitude: 0 }, FILE)).squares).toEqual([]);
  });

  it("names a square that has no page, and takes no name for a place", async () => {
    expect(await placeOfText("NZ9999", FILE)).toEqual({ squares: [], without: "NZ99" });
    for (const text of ["buff-tailed", "bombus", "SP", "7-spot ladybird", ""])
      expect(await placeOfText(text, FILE), text).toBeUndefined();
  });
});

describe("packSquares", () => {
  it("keeps every square and no other", () => {
    const codes = ["NZ26", "NZ27", "O13"];
    expect(codes.every((code) => hasSquare(packSquares(codes), code))).toBe(true);
    expect(hasSquare(packSquares(codes), "NZ28")).toBe(false);
    expect(hasSquare(packSquares(codes), "constructor")).toBe(false);
  });
});
