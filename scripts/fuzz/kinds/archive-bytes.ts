import { buffer } from "node:stream/consumers";
import yazl from "yazl";

const TERMS = "http://rs.tdwg.org/dwc/terms/";
const HEADERS = ["id", "occurrenceID", "scientificName", "eventDate", "decimalLatitude", "decimalLongitude"];

/** A sound archive of 40 records, as the files in it. */
export function soundArchive(): Readonly<Record<string, Buffer>> {
  const fields = HEADERS.slice(1).map((term, i) => `<field index="${i + 1}" term="${TERMS}${term}"/>`);
  const meta = `<archive xmlns="http://rs.tdwg.org/dwc/text/"><core encoding="UTF-8" fieldsTerminatedBy="\\t" linesTerminatedBy="\\n" fieldsEnclosedBy="" ignoreHeaderLines="1" rowType="${TERMS}Occurrence"><files><location>occurrence.txt</location></files><id index="0"/>${fields.join("")}</core></archive>`;
  const rows = Array.from({ length: 40 }, (_, i) => [
    i,
    `o${i}`,
    "Bombus pratorum",
    `2021-05-${10 + (i % 20)}`,
    52.1,
    -1.5,
  ]);
  const text = [HEADERS, ...rows].map((cells) => `${cells.join("\t")}\n`).join("");
  return { "meta.xml": Buffer.from(meta), "occurrence.txt": Buffer.from(text) };
}

/** Files packed as a zip. */
export async function packed(files: Readonly<Record<string, Uint8Array>>): Promise<Buffer> {
  const zip = new yazl.ZipFile();
  for (const [path, content] of Object.entries(files)) zip.addBuffer(Buffer.from(content), path);
  zip.end();
  return await buffer(zip.outputStream);
}
