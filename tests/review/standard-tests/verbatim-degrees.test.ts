import { describe, expect, it } from "vitest";
import { angleIn, pairIn } from "../../../src/review/standard-tests/verbatim-degrees.ts";

const textOf = (text: string) => angleIn(text)?.text;
const pairText = (text: string) => {
  const pair = pairIn(text);
  return pair && `${pair.latitude.text} ${pair.longitude.text}`;
};

describe("angleIn", () => {
  it("keeps decimal degrees as written, with the sign of the hemisphere", () => {
    expect(["51.50", "-0.10", "+7", "51.50 N", "W 0.10", "0 S", "51.5°"].map(textOf)).toEqual([
      "51.50",
      "-0.10",
      "7",
      "51.50",
      "-0.10",
      "0",
      "51.5",
    ]);
  });

  // 20/60 = 0.3333…, 20/3600 = 0.00555…; a tenth of a minute is 0.00167 degrees, of a second 0.0000278.
  it("rounds minutes and seconds to a tenth of the finest unit stated", () => {
    expect(["51° 20'", "51°20′20″S", "51 deg 20.0 min", "51° 0' 0\" W"].map(textOf)).toEqual([
      "51.333",
      "-51.33889",
      "51.3333",
      "-51",
    ]);
  });

  it("does not guess", () => {
    const texts = [
      "51,5",
      "51 30",
      "51° 60'",
      "51.5° 30'",
      "-51.5 S",
      "51.5 North West",
      "about 51",
      "54K 0390210",
      "x degrees east",
      "",
    ];
    expect(texts.map(textOf)).toEqual(texts.map(() => undefined));
  });
});

describe("pairIn", () => {
  it("tells latitude from longitude by hemisphere, or where one is beyond 90", () => {
    expect(
      ["51.5 N 0.1 W", "W0.1, N51.5", "139.92, -23.712", "-23.712;139.92", "51°30′N 0°7.5′W"].map(pairText),
    ).toEqual(["51.5 -0.1", "51.5 -0.1", "-23.712 139.92", "-23.712 139.92", "51.5 -0.125"]);
  });

  it("does not guess", () => {
    const texts = ["51.5, 0.1", "51.5 N, 0.1", "51.5 N, 52.5 N", "91 N 0 E", "0 N 181 E", "139.92", "139.92, 140"];
    expect(texts.map(pairText)).toEqual(texts.map(() => undefined));
  });
});
