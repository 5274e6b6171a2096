import { lacks, noAuthority, proposes, unchanged } from "./response.ts";
import { isEmpty, type StandardTest, standardTest } from "./standard-test.ts";
import { OCCURRENCE_STATUSES } from "./vocabularies.ts";

/** What else people write for a status, and the value meant. */
const MEANT: Readonly<Record<string, string>> = {
  ...Object.fromEntries([...OCCURRENCE_STATUSES].map((status) => [status.toLowerCase(), status])),
  "1": "present",
  "0": "absent",
};

const NOTHING_ELSE_STATED = ["occurrenceStatus", "individualCount", "organismQuantity"] as const;

/** The amendments of occurrenceStatus. */
export const STATUS_AMENDMENTS: readonly StandardTest[] = [
  standardTest({
    guid: "96667a0a-ae59-446a-bbb0-b7f2b0ca6cf5",
    label: "AMENDMENT_OCCURRENCESTATUS_ASSUMEDDEFAULT",
    kind: "amendment",
    actsOn: ["occurrenceStatus"],
    consults: ["individualCount", "organismQuantity"],
    onlyWhetherFilled: NOTHING_ELSE_STATED,
    run: (record) => {
      if (!isEmpty(record["occurrenceStatus"])) return lacks("occurrenceStatus is filled");
      return NOTHING_ELSE_STATED.every((term) => isEmpty(record[term]))
        ? proposes("FILLED_IN", { occurrenceStatus: "present" }, "the default is assumed")
        : unchanged("a count is stated, which may be 0");
    },
  }),
  standardTest({
    guid: "f8f3a093-042c-47a3-971a-a482aaaf3b75",
    label: "AMENDMENT_OCCURRENCESTATUS_STANDARDIZED",
    kind: "amendment",
    actsOn: ["occurrenceStatus"],
    run: (record, { sourceAuthority }) => {
      const text = record["occurrenceStatus"] ?? "";
      if (sourceAuthority === null) return noAuthority();
      if (isEmpty(text)) return lacks("occurrenceStatus is empty");
      const key = text.toLowerCase().replaceAll(/[\s_-]/g, "");
      const occurrenceStatus = Object.hasOwn(MEANT, key) ? MEANT[key] : undefined;
      return occurrenceStatus === undefined || occurrenceStatus === text
        ? unchanged("occurrenceStatus is a value of the standard, or cannot be told")
        : proposes("AMENDED", { occurrenceStatus }, "the standard's value for it");
    },
  }),
];
