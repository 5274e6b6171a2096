/** What the review desk is told, as JSON. The page imports these types alone. */

/** A value to narrow the worklist by, with how many records it leaves. */
export interface Choice {
  value: string;
  label: string;
  records: number;
}

/** A taxon to re-identify a record as. */
export interface DeskTaxon {
  id: string;
  name: string;
  vernacular: string;
  /** Everything it can be found by, in lower case. */
  words: string;
}

/** What the desk knows before a record is opened. */
export interface DeskAnswer {
  title: string;
  group: { one: string; many: string };
  invented: boolean;
  /** Compared periods as shown; the first empty where the atlas has one period. */
  periods: [earlier: string, recent: string];
  taxa: DeskTaxon[];
  castes: { id: string; label: string }[];
  /** Parts of the body that characters are known of. */
  parts: string[];
  identifications: string[];
  correctable: string[];
  /** Latest reasons given, newest first. */
  reasons: string[];
  choices: Record<"check" | "severity" | "source" | "taxon" | "region" | "recorder", Choice[]>;
  credit: string;
}

/** How the worklist is narrowed; empty for all. */
export interface DeskFilter {
  check: string;
  severity: string;
  source: string;
  taxon: string;
  region: string;
  recorder: string;
  /** First and last year. */
  from: string;
  to: string;
  text: string;
  /** "open" leaves out what was ruled on since the desk was opened. */
  show: "" | "open";
}

/** One line of the worklist: a record, or the records that one look settles. */
export interface Line {
  look: number;
  /** The record, or the first of the look. */
  record: number;
  records: number;
  open: number;
  severity: string;
  check: string;
  question: string;
  name: string;
  date: string;
  place: string;
  source: string;
  /** The ruling of a single record that was ruled on since the desk was opened. */
  ruling: string;
}

export interface LinesAnswer {
  lines: Line[];
  /** Lines, records and records still open under the filter. */
  all: number;
  records: number;
  open: number;
}

/** A record among others: near it in its file, of its visit, or like it. */
export interface OtherRecord {
  record: number;
  key: string;
  source: string;
  row: number;
  name: string;
  date: string;
  place: string;
  kind: string;
  status: string;
  reason: string;
}

export interface AroundAnswer {
  neighbours: OtherRecord[];
  visit: OtherRecord[];
  alike: OtherRecord[];
}

export interface Question {
  check: string;
  title: string;
  severity: string;
  field: string;
  value: string;
  message: string;
  way_out: string;
  proposal: string;
  look: number;
  records: number;
}

/** A ruling as the history of a record shows it. */
export interface PastRuling {
  id: string;
  batch: string;
  ruling: string;
  value: string;
  identification: string;
  partSeen: string;
  why: string;
  who: string;
  when: string;
  count: string;
  withdrawn: boolean;
}

/** One part of the body in each column: its state, and what it takes to see it. */
export interface SettlingRow {
  part: string;
  cells: (SettlingCell | null)[];
}

export interface SettlingCell {
  state: string;
  note: string;
  reliability: string;
  evidence: string;
}

/** The characters of a taxon beside those it is taken for. */
export interface Settling {
  columns: { name: string; castes: string; own: boolean }[];
  rows: SettlingRow[];
  /** What the account says a record needs. */
  needs: string;
}

export interface RecordAnswer {
  record: number;
  key: string;
  source: string;
  file: string;
  row: number;
  /** What the record says, in short. */
  said: { name: string; date: string; place: string; kind: string };
  taxon: { id: string; name: string; vernacular: string } | null;
  castes: string[];
  /** Days as ISO 8601; null where no date was read. */
  days: [first: string, last: string] | null;
  thirds: [first: number, last: number] | null;
  /** How the place was read, in words. */
  place: string;
  square: { grid: string; hectad: string; tetrad: string } | null;
  territory: string;
  status: string;
  reason: string;
  questions: Question[];
  cells: [field: string, text: string][];
  history: PastRuling[];
  settling: Settling | null;
}

/** Paths in kilometres, y downwards, of one projection. */
export interface MapAnswer {
  crs: string;
  view: [x: number, y: number, width: number, height: number];
  /** Where the record lies: a square or a circle; empty where no place was read. */
  here: string;
  middle: [x: number, y: number] | null;
  proposed: string;
  visited: string;
  both: string;
  earlier: string;
  recent: string;
  nearest: { square: string; km: number; at: [x: number, y: number] } | null;
  squares: number;
}

export interface SeasonAnswer {
  castes: { id: string; label: string; records: number; thirds: number[] }[];
  /** Visits to the group in each third of a month. */
  visits: number[];
}

/** A ruling as the page sends it: on one record, or on a look under a filter. */
export interface RulingRequest {
  ruling: string;
  value: string;
  identification: string;
  partSeen: string;
  why: string;
  who: string;
  check: string;
  record: number | null;
  group: { look: number; filter: DeskFilter; others: boolean; count: number; mark: string } | null;
}

export interface RulingAnswer {
  /** What takes it back. */
  id: string;
  records: number[];
  /** The record's ruling in words. */
  words: string;
  history: PastRuling[];
}

/** What a bulk ruling would be made on. */
export interface GroupAnswer {
  question: string;
  filter: string;
  records: number;
  /** How many of them are asked something else too. */
  others: number;
  /** Stands for which records they are, and is sent back with the ruling. */
  mark: string;
  proposals: string[];
}

export interface TraceAnswer {
  grid: string;
  square: string;
  taxa: { id: string; name: string; vernacular: string; periods: TracePeriod[] }[];
  /** Records that are not shown because there are too many. */
  left_off: number;
}

export interface TracePeriod {
  period: string;
  records: (OtherRecord & { cells: [field: string, text: string][] })[];
}
