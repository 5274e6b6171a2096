import { describe, expect, it } from "vitest";
import { columnSql } from "../../../src/review/standard-tests/held-tests.ts";
import { durationInSeconds, eventParts, isoInterval } from "../../../src/review/standard-tests/iso-text.ts";
import {
  complies,
  hasResult,
  lacks,
  noAuthority,
  proposes,
  unchanged,
} from "../../../src/review/standard-tests/response.ts";
import { integerIn, isEmpty, numberIn, standardTest } from "../../../src/review/standard-tests/standard-test.ts";
import { angleIn, areInRange, pairIn } from "../../../src/review/standard-tests/verbatim-degrees.ts";
import { isDegreesCode } from "../../../src/review/standard-tests/vocabulary-tests.ts";
import { writtenDate } from "../../../src/review/standard-tests/written-amendments.ts";

describe("examples", () => {
  it("hold", () => {
    expect(columnSql({ term: "day", onlyWhetherFilled: true })).toBe('filled("day") AS "day"');
    expect(isoInterval("1880-05-08/10")?.precision).toBe("range");
    expect(eventParts("2007-03")).toEqual({ year: "2007", month: "3" });
    expect(durationInSeconds("1880-05-08/10")).toBe(259_200);
    expect(hasResult("86400", "one day")).toEqual({ status: "RUN_HAS_RESULT", result: "86400", comment: "one day" });
    expect(complies(false, "month is 1 to 12").result).toBe("NOT_COMPLIANT");
    expect(lacks("eventDate is empty").status).toBe("INTERNAL_PREREQUISITES_NOT_MET");
    expect(noAuthority().status).toBe("EXTERNAL_PREREQUISITES_NOT_MET");
    expect(unchanged("month is already a number").status).toBe("NOT_AMENDED");
    expect(proposes("AMENDED", { month: "4" }, "read as a Roman numeral").changes).toEqual({ month: "4" });
    expect(standardTest({ guid: "…", label: "…", actsOn: ["day"], run: () => lacks("…") }).kind).toBe("validation");
    expect(isEmpty(" \u000e")).toBe(true);
    expect(numberIn("-71.53")).toBe(-71.53);
    expect(integerIn("05")).toBe(5);
    expect(angleIn("139 degrees 55.38 minutes east")).toEqual({ degrees: 139.923, text: "139.923", axis: "longitude" });
    expect(pairIn("139.92, -23.712")?.latitude.text).toBe("-23.712");
    const zero = { degrees: 0, text: "0", axis: undefined };
    expect(areInRange({ degrees: 91, text: "91", axis: undefined }, zero)).toBe(false);
    expect(isDegreesCode("EPSG:27700")).toBe(false);
    expect(writtenDate("18/V/1981", { format: "iso" })).toBe("1981-05-18");
  });
});
