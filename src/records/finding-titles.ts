import { REASONS } from "./reasons.ts";

/** Checks whose name is no reason of the accounting, in words. */
const TITLES: Readonly<Record<string, string>> = Object.freeze({
  file_encoding: "file is not UTF-8",
  line_endings: "file mixes line endings",
  file_damaged: "file is damaged",
  foreign_file: "file is no table of records",
  sheet_not_read: "sheet is not read",
  formula_without_value: "formula without a value",
  merged_cells: "cells merged over rows",
  cells_beside_table: "cells beside the table",
  rows_before_header: "rows before the header",
  unused_terms: "columns of Darwin Core that are not used",
  unknown_header: "column is not used",
  repeated_header: "two columns for one field",
  mapped_header_missing: "mapped column is not in the file",
  no_known_column: "no column is known",
  missing_column: "no column for the name, date or place",
  no_rows: "file holds no rows",
  ragged_row_filled: "row has too few cells",
  stray_quotation_mark: "stray quotation mark",
  cell_cut: "cell too long",
  uncertainty_out_of_range: "uncertainty out of range",
  uncertainty_with_comma: "comma in an uncertainty",
  reference_may_be_region: "square written like a vice-county",
  reference_may_be_compass: "square written like degrees and minutes",
  date_columns_disagree: "date columns disagree",
  date_interval_end: "end of the interval could be read otherwise",
  date_finer_than_verbatim: "date finer than its verbatim text",
  date_verbatim_disagrees: "date and verbatim text disagree",
  opinion_waits: "opinions of others wait for a ruling",
  decision_without_record: "ruling on a record that is not there",
  caste_contradiction: "two castes that exclude each other",
  caste_unread_words: "words on caste that are not in the vocabulary",
});

/** A check in words for lists; its name with spaces where it has no title. */
export function findingTitle(check: string): string {
  return TITLES[check] ?? REASONS[check] ?? check.replaceAll("_", " ");
}
