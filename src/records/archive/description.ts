/** One column of a table, or a value for all its rows. */
export interface FieldDescription {
  /** IRI of the term. */
  term: string;
  /** Column, from 0; without it the default holds for all rows. */
  index: number | undefined;
  /** For rows without a value; empty for none. */
  default: string;
}

/** One table as the archive describes it. */
export interface TableDescription {
  /** IRI of what a row is. */
  rowType: string;
  /** Files that make up the table, relative to the description. */
  locations: string[];
  encoding: string;
  fieldsTerminatedBy: string;
  linesTerminatedBy: string;
  /** Empty where a quotation mark is text. */
  fieldsEnclosedBy: string;
  ignoreHeaderLines: number;
  /** Empty where it is not stated. */
  dateFormat: string;
  /** Column of the row's own id in the core, and of the core's in an extension. */
  id: number | undefined;
  fields: FieldDescription[];
}

/** What an archive says of itself in its meta.xml. */
export interface ArchiveDescription {
  /** Path of the metadata on the data set, relative to the description; empty for none. */
  metadata: string;
  core: TableDescription | undefined;
  extensions: TableDescription[];
  /** What is wrong with the description, and what was made of it. */
  faults: string[];
}
