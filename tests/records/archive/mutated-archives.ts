/** Archives with faults in their bytes, for tests and long runs: one of events and one of determinations, in a zip or in one of its files. */
import fc from "fast-check";
import { type Fault, faults, withFaults } from "../mutated-files.ts";
import { type Files, metaXml, zipOf } from "./archives.ts";

const NAMES = ["Bombus pratorum", '"Bombus" lucorum', "", "Bombus muscorum\\N"];

function rows(count: number, row: (index: number) => string): string {
  return Array.from({ length: count }, (_, index) => `${row(index)}\n`).join("");
}

/** Events with parents and surveys, and records of them in two files. */
const EVENTS: Files = {
  "meta.xml": metaXml(
    { rowType: "Event", file: "event.txt", columns: ["eventID", "parentEventID", "eventDate", "gridReference"] },
    { rowType: "Occurrence", file: "a.csv b.csv", columns: ["", "occurrenceID", "scientificName", "eventDate"] },
    {
      rowType: "http://rs.tdwg.org/eco/terms/Event",
      file: "survey.txt",
      columns: ["", "http://rs.tdwg.org/eco/terms/isTaxonomicScopeFullyReported"],
    },
  ),
  "event.txt": `id,parent,date,grid\n${rows(20, (index) => `e${index},e${index >> 1},${index % 3 === 0 ? "2021" : ""},TQ38`)}`,
  "a.csv": `id,o,name,date\n${rows(20, (index) => `e${index},o${index},${NAMES[index % 4]},`)}`,
  "b.csv": `id,o,name,date\n${rows(20, (index) => `e${index + 9},p${index},"Bombus, ""${index}""",2020`)}`,
  "survey.txt": `id,full\n${rows(9, (index) => `e${index},${index % 2 === 0}`)}`,
};

/** Records with determinations and media, parted by tabs with nothing enclosed. */
const TABS = 'fieldsTerminatedBy="\\t" fieldsEnclosedBy="" linesTerminatedBy="\\n" ignoreHeaderLines="1"';
const DETERMINED: Files = {
  "meta.xml": metaXml(
    { rowType: "Occurrence", file: "occurrence.txt", attributes: TABS, columns: ["occurrenceID", "scientificName"] },
    {
      rowType: "Identification",
      file: "identification.txt",
      attributes: TABS,
      columns: ["", "scientificName", "identifiedBy", "dateIdentified"],
    },
    {
      rowType: "Multimedia",
      file: "media.txt",
      attributes: TABS,
      columns: ["", "http://purl.org/dc/terms/identifier"],
    },
  ),
  "occurrence.txt": `id\tname\n${rows(30, (index) => `o${index}\t${NAMES[index % 4]}`)}`,
  "identification.txt": `id\tname\tby\ton\n${rows(30, (index) => `o${index >> 1}\tApis ${index % 7}\tA\t${2000 + index}`)}`,
  "media.txt": `id\taddress\n${rows(10, (index) => `o${index}\thttps://example.org/${index}`)}`,
};

/** What is damaged: the whole zip, or one file before it is packed. */
export interface DamagedArchive {
  archive: "events" | "determined";
  where: string;
  faults: Fault[];
}

/** Any archive with any few faults. */
export const damagedArchives: fc.Arbitrary<DamagedArchive> = fc.oneof(
  fc.record({ archive: fc.constant("events" as const), where: fc.constantFrom("zip", ...Object.keys(EVENTS)), faults }),
  fc.record({
    archive: fc.constant("determined" as const),
    where: fc.constantFrom("zip", ...Object.keys(DETERMINED)),
    faults,
  }),
);

/** The bytes of a damaged archive. */
export async function bytesOf({ archive, where, faults: some }: DamagedArchive): Promise<Buffer> {
  const files = archive === "events" ? EVENTS : DETERMINED;
  if (where === "zip") return withFaults(await zipOf(files), some);
  return await zipOf({ ...files, [where]: withFaults(Buffer.from(files[where] ?? ""), some) });
}
