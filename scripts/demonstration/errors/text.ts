import { type ErrorKind, hasColumn, put } from "./error-kind.ts";

const hasRemarks = hasColumn("occurrenceRemarks");

/** Text that a careless program would run or break on. The record itself is right. */
export const textErrors: readonly ErrorKind[] = [
  {
    kind: "html-in-remarks",
    cards: 1,
    fits: hasRemarks,
    spoil: (row) => put(row, "occurrenceRemarks", '<b>nest</b><script>alert("invented")</script>, in wall'),
  },
  {
    kind: "formula-in-remarks",
    cards: 1,
    fits: hasRemarks,
    spoil: (row, random) => put(row, "occurrenceRemarks", random.pick(["=cmd()", "+1+1", "@sum(1,2)", "-2 seen"])),
  },
  {
    kind: "emoji-in-remarks",
    cards: 1,
    fits: hasRemarks,
    spoil: (row) => put(row, "occurrenceRemarks", "🐝🌼 on the “new” meadow\nsecond line"),
  },
  {
    kind: "ragged-row",
    cards: 2,
    fits: () => true,
    spoil: (row) => {
      row.surplus = "see overleaf";
      return { column: "", right: "no cell after the last column" };
    },
  },
];
