import { existsSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { openArchive } from "../../../src/records/archive/open-archive.ts";
import { makeTemporaryFolder } from "../../support/temporary-folder.ts";
import { useDatabase } from "../reading.ts";
import { type Files, folderOf, metaXml, readFiles, zipOf } from "./archives.ts";

const database = useDatabase();
const read = (archive: Files | Buffer | string) => readFiles(database(), archive);

const META = metaXml({ rowType: "Occurrence", file: "occurrence.txt", columns: ["occurrenceID", "scientificName"] });
const SOUND: Files = { "meta.xml": META, "occurrence.txt": "id,name\no1,Bombus\n" };

/** Offsets in a zip's directory entry (PKWARE APPNOTE 6.3.10, 4.3.12), and the signature it begins with. */
const CENTRAL = Buffer.from("PK\x01\x02", "latin1");
const FLAGS = 8;
const CHECKSUM = 16;
const PACKED_SIZE = 20;
const SIZE = 24;
const ATTRIBUTES = 38;
const NAME = 46;

/** A zip with its directory's entry for a file changed. */
function patched(zip: Buffer, name: string, change: (entry: Buffer) => void): Buffer {
  const bytes = Buffer.from(zip);
  for (let at = bytes.indexOf(CENTRAL); at >= 0; at = bytes.indexOf(CENTRAL, at + 4)) {
    const length = bytes.readUInt16LE(at + 28);
    if (bytes.toString("latin1", at + NAME, at + NAME + length) === name) change(bytes.subarray(at));
  }
  return bytes;
}

/** A sound archive with one more file, whose name in the zip's directory is another of the same length. */
async function renamed(name: string): Promise<Buffer> {
  const stand = "x".repeat(name.length);
  return patched(await zipOf({ ...SOUND, [stand]: "outside" }), stand, (entry) => entry.write(name, NAME, "latin1"));
}

describe("an archive", () => {
  it.each([
    ["../evil.txt", "has a path out of the archive"],
    ["a/../../evil.txt", "has a path out of the archive"],
    ["..\\evil.txt", "has a path out of the archive"],
    ["/etc/evil.txt", "has an absolute path"],
    ["\\\\host\\evil.txt", "has an absolute path"],
    ["C:\\evil.txt", "has an absolute path"],
    ["c:evil.txt", "has an absolute path"],
    ["a\0.txt", "has a path no file can have"],
  ])("is read without a file named %j", async (name, why) => {
    const { rows, findings } = await read(await renamed(name));
    expect(rows.map(({ occurrenceID }) => occurrenceID)).toEqual(["o1"]);
    expect(findings).toMatchObject([
      {
        check: "archive_entry_refused",
        value: name.replaceAll("\\", "/"),
        message: `${why}; it was left alone`,
      },
    ]);
  });

  it("may have paths with backslashes inside it", async () => {
    const zip = await zipOf({ "walks_meta.xml": META, "walks_occurrence.txt": String(SOUND["occurrence.txt"]) });
    const backslashed = (name: string, bytes: Buffer) =>
      patched(bytes, name, (entry) => entry.write("\\", NAME + "walks".length, "latin1"));
    const { rows } = await read(backslashed("walks_meta.xml", backslashed("walks_occurrence.txt", zip)));
    expect(rows).toHaveLength(1);
  });

  it.each([
    ["is a link", (entry: Buffer) => entry.writeUInt32LE((0o120777 << 16) >>> 0, ATTRIBUTES)],
    ["is encrypted", (entry: Buffer) => entry.writeUInt16LE(entry.readUInt16LE(FLAGS) | 1, FLAGS)],
    ["is packed in a way (12) that is not known here", (entry: Buffer) => entry.writeUInt16LE(12, 10)],
    [
      "would grow to 1000 times its size",
      (entry: Buffer) => {
        entry.writeUInt32LE(200_000_000, SIZE);
        entry.writeUInt32LE(200_000, PACKED_SIZE);
      },
    ],
  ])("is not read from a file that %s", async (why, change) => {
    const { rows, findings } = await read(patched(await zipOf(SOUND), "occurrence.txt", change));
    expect(rows).toEqual([]);
    expect(findings.map(({ check }) => check)).toEqual(["archive_entry_refused", "archive_file_missing"]);
    expect(findings[0]?.message).toBe(`${why}; it was left alone`);
  });

  it.each([
    ["its checksum is not the one stated", (entry: Buffer) => entry.writeUInt32LE(7, CHECKSUM)],
    ["too many bytes", (entry: Buffer) => entry.writeUInt32LE(5, SIZE)],
    ["not enough bytes", (entry: Buffer) => entry.writeUInt32LE(500, SIZE)],
  ])("is not read from a file of which %s", async (why, change) => {
    const { rows, findings } = await read(patched(await zipOf(SOUND), "occurrence.txt", change));
    expect(rows).toEqual([]);
    expect(findings).toMatchObject([{ check: "archive_entry_refused", value: "occurrence.txt" }]);
    expect(findings[0]?.message).toContain(why);
  });

  it("that is cut off, or is no zip, is refused whole", async () => {
    const zip = await zipOf(SOUND);
    for (const bytes of [
      zip.subarray(0, zip.length - 30),
      zip.subarray(0, 40),
      Buffer.from("scientificName\n"),
      Buffer.alloc(0),
    ]) {
      const { rows, told, parts } = await read(bytes);
      expect(rows).toEqual([]);
      expect(told).toEqual(["walks.zip:1 archive_unreadable"]);
      expect(parts[0]?.result.records).toBe(0);
    }
  });

  it("is read without a file that is there twice, and without archives in it", async () => {
    const zip = await zipOf({ ...SOUND, "occurrence.tx_": "id,name\no9,Apis\n", "more.zip": await zipOf(SOUND) });
    const twice = patched(zip, "occurrence.tx_", (entry) => entry.write("occurrence.txt", NAME, "latin1"));
    const { rows, told } = await read(twice);
    expect(rows.map(({ occurrenceID }) => occurrenceID)).toEqual(["o1"]);
    expect(told).toEqual(["walks.zip:1 archive_entry_refused", "walks.zip:1 archive_in_archive"]);
  });

  it("in a folder is read without links that leave it", async () => {
    const outside = makeTemporaryFolder();
    writeFileSync(join(outside, "secret.txt"), "id,name\ns,Secret\n");
    const links = { "occurrence.txt": join(outside, "secret.txt"), dir: outside, broken: "nothing" };
    const { rows, findings } = await read(folderOf({ "meta.xml": META }, links));
    expect(rows).toEqual([]);
    expect(findings.map(({ value, message }) => [value, message])).toEqual([
      ["broken", "is a link to nothing; it was left alone"],
      ["dir", "is a link out of the folder; it was left alone"],
      ["occurrence.txt", "is a link out of the folder; it was left alone"],
      ["occurrence.txt", "the table’s file is not in the archive"],
    ]);
    const inside = await read(
      folderOf({ "meta.xml": META, "all.csv": "id,name\no1,Bombus\n" }, { "occurrence.txt": "all.csv" }),
    );
    expect(inside.rows).toHaveLength(1);
  });

  it.each([
    ["https://example.org/occurrence.txt", "is an address on the network, and nothing is fetched"],
    ["ftp://example.org/occurrence.txt", "is an address on the network, and nothing is fetched"],
    ["../occurrence.txt", "is a path out of the archive, and was left alone"],
    ["/etc/passwd", "is an absolute path, and was left alone"],
    ["C:\\occurrence.txt", "is an absolute path, and was left alone"],
    ["other.txt", "is not in the archive"],
  ])("is not read from %s", async (location, why) => {
    const { rows, findings } = await read({ ...SOUND, "meta.xml": META.replace("occurrence.txt", location) });
    expect(rows).toEqual([]);
    expect(findings).toMatchObject([
      { check: "archive_file_missing", severity: "blocks", value: location, message: `the table’s file ${why}` },
    ]);
  });

  it("leaves nothing behind but its records, and takes out only what is asked for", async () => {
    const folder = makeTemporaryFolder();
    const path = join(makeTemporaryFolder(), "walks.zip");
    writeFileSync(path, await zipOf({ ...SOUND, "photographs/a.jpg": "not wanted" }));
    const files = await openArchive(path, folder);
    if ("check" in files) throw new Error(files.message);
    expect(files.paths).toEqual(["meta.xml", "occurrence.txt", "photographs/a.jpg"]);
    await files.take("occurrence.txt");
    files.close();
    expect(readdirSync(folder)).toEqual(["taken-0"]);
    const { parts } = await read(SOUND);
    expect(parts.map(({ parquet }) => parquet)).toEqual(["rows-0.parquet"]);
    expect(existsSync(join(folder, "archive"))).toBe(false);
  });
});
