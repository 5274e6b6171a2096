/** The reasons of "unexpected here and now" in words, with their numbers. */
import { partInWords, type SettlingEvidence } from "../settling-evidence.ts";

/** The numbers of one unexpected record, as `unexpected-asked.sql` gives them; null where a reason says nothing. */
export interface UnexpectedRecord {
  far: boolean;
  off_season: boolean;
  first: boolean;
  /** Share of visits expected to report it here and at this time of year. */
  expected: number | null;
  visits: number | null;
  reports: number | null;
  /** Nobody else reported it anywhere in those years; visits are then those of the whole atlas. */
  nowhere: boolean;
  nearest_km: number | null;
  /** First and last year of those compared. */
  from_year: number | null;
  to_year: number | null;
  region: string;
  region_visits: number | null;
  /** Days outside the season, negative before it; its bound as a day of the year, how many records lie beyond it of how many, of which caste. */
  outside: number | null;
  bound: number | null;
  beyond: number | null;
  records: number | null;
  season_caste: string | null;
  /** What the identification rests on: 0 nothing said, 1 sight, 2 photograph, 3 specimen. */
  level: number;
  part_seen: string;
}

/** Made once: making one for each number costs more than all else. */
const NUMBERS = new Intl.NumberFormat("en-GB");
const MONTHS = "January February March April May June July August September October November December".split(" ");

/**
 * All reasons of one record in one sentence, in words a volunteer reads without offence.
 *
 * @param ringKm outer edge of the rings in which visits were counted
 * @param settling what settles the taxon in the caste stated
 * @example reasonsInWords({ ...record, far: true, visits: 1340, reports: 0, nearest_km: 212 }, 60, undefined) // "none of 1,340 visits by others within 60 km reported it in 2005–2019; nearest square with it then 212 km away; …"
 */
export function reasonsInWords(
  record: UnexpectedRecord,
  ringKm: number,
  settling: SettlingEvidence | undefined,
): string {
  return [...placeReasons(record, ringKm), ...seasonReasons(record), ...evidenceReasons(record, settling)].join("; ");
}

/**
 * Whether a record's evidence can settle its name: as much as is needed, and of the part that is needed where it names one.
 *
 * @example isShown({ level: 2, part_seen: "" }, { level: 2, part: "T2", words: "" }) // true
 */
function isShown(
  { level, part_seen }: Pick<UnexpectedRecord, "level" | "part_seen">,
  settling: SettlingEvidence,
): boolean {
  const named = (text: string) =>
    text
      .toLowerCase()
      .replaceAll(/[^a-z0-9]+/g, " ")
      .trim();
  if (level < settling.level) return false;
  return level === 3 || part_seen === "" || settling.part === "" || named(part_seen).includes(named(settling.part));
}

/** What would settle the question on a record. @example wayOut(offSeason, undefined) // "see whether day and month are right, then the name" */
export function wayOut(record: UnexpectedRecord, settling: SettlingEvidence | undefined): string {
  if (!record.far && !record.first) return "see whether day and month are right, then the name";
  const facts = `see whether ${record.off_season ? "name, place and date" : "name and place"} are right`;
  if (settling === undefined) return facts;
  return isShown(record, settling)
    ? `${facts}; its evidence can settle the name`
    : `${facts}; ${settling.words} would settle the name`;
}

function placeReasons(record: UnexpectedRecord, ringKm: number): string[] {
  const reasons = record.first
    ? [`first for ${record.region} (${count(record.region_visits)} visits by others by then)`]
    : [];
  if (!record.far) return reasons;
  const years = `${record.from_year}–${record.to_year}`;
  const reported = record.reports === 0 ? "none" : count(record.reports);
  reasons.push(
    record.nowhere
      ? `none of ${count(record.visits)} visits by others anywhere in the atlas reported it in ${years}`
      : `${reported} of ${count(record.visits)} visits by others within ${ringKm} km reported it in ${years}; ${nearestInWords(record)}`,
    `here and at this time of year it is expected on ${oneIn(record.expected)}`,
  );
  return reasons;
}

function nearestInWords({ nearest_km }: UnexpectedRecord): string {
  if (nearest_km === null) return "no other square has it in those years";
  if (nearest_km < 5) return "the nearest report is in this 10 km square";
  return `nearest square with it then ${Math.round(nearest_km)} km away`;
}

function seasonReasons({ off_season, outside, bound, beyond, records, season_caste }: UnexpectedRecord): string[] {
  if (!off_season || outside === null || bound === null) return [];
  const [days, side] = outside < 0 ? [-outside, "before"] : [outside, "after"];
  const of = season_caste === null || season_caste === "" ? "" : ` (${season_caste})`;
  return [
    `${count(days)} days ${side} ${dayInWords(bound)}, ${side} which lie ${count(beyond)} of ${count(records)} records${of}`,
  ];
}

function evidenceReasons(record: UnexpectedRecord, settling: SettlingEvidence | undefined): string[] {
  if (settling === undefined || settling.part === "" || !(record.far || record.first) || isShown(record, settling))
    return [];
  return [`its evidence does not show ${partInWords(settling.part)}`];
}

/** "about one visit in 4,000", or "fewer than one visit in 100,000". */
function oneIn(share: number | null): string {
  const visits = 1 / (share ?? 0);
  if (visits >= 100_000) return "fewer than one visit in 100,000";
  const unit = 10 ** Math.max(0, Math.floor(Math.log10(visits)) - 1);
  return `about one visit in ${count(Math.round(visits / unit) * unit)}`;
}

/** Day of the year, 1 to 366 with 29 February as 60, as day and month. */
function dayInWords(day: number): string {
  const date = new Date(Date.UTC(2024, 0, day));
  return `${date.getUTCDate()} ${MONTHS[date.getUTCMonth()]}`;
}

function count(value: number | null): string {
  return NUMBERS.format(value ?? 0);
}
