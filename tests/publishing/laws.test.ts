/** What holds of everything that is published, whatever the scheme's files hold. */
import {
  appendFileSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import Papa from "papaparse";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Answer } from "../../src/build/answer.ts";
import { buildAtlas } from "../../src/build/build-atlas.ts";
import { checkScheme } from "../../src/build/check-records.ts";
import { everyReading, filesBelow } from "../support/published-bytes.ts";
import { keepLog } from "../support/run-scheme.ts";

const TWO_GRIDS = fileURLToPath(new URL("../golden/two-grids/input/", import.meta.url));

/** Texts that do harm where they are not taken as text. */
const HOSTILE = [
  "<script>alert(1)</script>",
  '"><img src=x onerror=alert(1)>',
  "' onmouseover='alert(1)",
  "=cmd|' /C calc'!A0",
  "@SUM(1+1)",
  "../../../escaped",
  "..\\..\\escaped",
  "{{constructor}} #{7*7} <%= 7*7 %>",
  "🐝 \u202Etxt.exe \u200Fשלום",
  'a "quoted" name, with commas; and\ttabs',
  "'; DROP TABLE records; --",
];
/** Names of people and places, remarks and ids, that no byte of what is published may hold. */
const PRIVATE = [
  "Xanthippe Quillfeather",
  "Zyxmoor Cottage",
  "beehive-under-the-porch",
  "quillfeather-0001",
  "Quorndon Vicarage",
];

let folder: string;
let atlas: string;
let answer: Answer;
let findings: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "atlaswright-laws-"));
  const content = join(folder, "scheme");
  cpSync(TWO_GRIDS, content, { recursive: true });
  makeHostile(content);
  atlas = join(folder, "out/atlas");
  const run = { content, workFolder: join(folder, "work") };
  answer = await buildAtlas({ ...run, out: atlas, base: "/", progress: keepLog() });
  ({ findings_file: findings } = await checkScheme({
    ...run,
    reviewFolder: join(content, "review"),
    progress: keepLog(),
  }));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Puts a hostile text into every text a scheme's files hold, and private ones into the records. */
function makeHostile(content: string): void {
  const csv = (rows: string[][]) => `${Papa.unparse(rows, { newline: "\n" })}\n`;
  const settings = join(content, "atlas.yaml");
  const [script = "", tag = "", quote = ""] = HOSTILE;
  const text = readFileSync(settings, "utf8")
    .replace(
      "title: Two Grids",
      `title: ${JSON.stringify(`Two Grids ${script}`)}\nheading: ${JSON.stringify(tag)}\ncontact: ${JSON.stringify(quote)}`,
    )
    .replace(/summary: .*/, `summary: ${JSON.stringify(HOSTILE.join(" "))}`)
    .replace("one: beetle, many: beetles", `one: ${JSON.stringify(tag)}, many: ${JSON.stringify(script)}`)
    .replace("name: Ireland", `name: ${JSON.stringify(tag)}`)
    .replace("title: Museum", `title: ${JSON.stringify(`=1+1${script}`)}`)
    .replace("label: Queen", `label: ${JSON.stringify(tag)}`)
    .replace("records/walks.csv", `${JSON.stringify(`records/it's a "walk" & more; .csv`)}`);
  writeFileSync(settings, text);
  renameSync(join(content, "records/walks.csv"), join(content, `records/it's a "walk" & more; .csv`));
  appendFileSync(
    join(content, "checklist.csv"),
    csv(
      HOSTILE.map((one, index) => [
        `${one} ${index}`,
        `Exemplum h${index} ${one}`,
        one,
        one,
        "",
        `en:${one.replaceAll("|", "/")} ${index}`,
        "",
      ]),
    ),
  );
  const header = [
    "occurrenceID",
    "scientificName",
    "eventDate",
    "gridReference",
    "recordedBy",
    "locality",
    "occurrenceRemarks",
    "caste",
    "sex",
    "lifeStage",
    "individualCount",
    "basisOfRecord",
  ];
  const hostileRows = header.flatMap((_, column) =>
    HOSTILE.map((one, index) =>
      header.map((name, at) => (at === column ? one : (PLAIN[name] ?? "").replace("#", `${column}-${index}`))),
    ),
  );
  const [person = "", place = "", remark = "", id = "", vicarage = ""] = PRIVATE;
  const privateRows = [
    [id, "Exemplum rubrum", "2016-06-06", "SK1020", person, place, remark, "", "", "", "1", ""],
    [`${id}b`, "Exemplum rubrum", "2016-06-07", vicarage, person, place, remark, remark, remark, person, remark, ""],
    [`${id}c`, person, "2016-06-07", "SK1020", person, place, remark, "", "", "", "", ""],
    [`${id}d`, "Exemplum viride", remark, "SK1020", person, place, remark, "worker", "", "", "", ""],
  ];
  mkdirSync(join(content, "records"), { recursive: true });
  writeFileSync(join(content, "records/museum.csv"), csv([header, ...hostileRows, ...privateRows]));
  mkdirSync(join(content, "species"), { recursive: true });
  const sections = HOSTILE.map((one) => `## ${one}\n\n${one} [link](javascript:alert(1)) ${one}\n`).join("\n");
  writeFileSync(
    join(content, "species/album.md"),
    `---\ntaxonID: album\nlead: ${JSON.stringify(tag)}\nevidence: ${JSON.stringify(script)}\nlook_alikes:\n  - { outside: ${JSON.stringify(tag)}, difference: ${JSON.stringify(script)} }\n---\n${sections}`,
  );
  mkdirSync(join(content, "pages"), { recursive: true });
  writeFileSync(
    join(content, "pages/about.md"),
    `---\ntitle: ${JSON.stringify(tag)}\nlead: ${JSON.stringify(script)}\n---\n${sections}`,
  );
  writeFileSync(
    join(content, "characters.csv"),
    csv([
      ["taxonID", "castes", "form", "part", "state", "note", "reliability", "evidence"],
      ...HOSTILE.map((one) => ["album", "", one, one, one, one, "supports", one]),
    ]),
  );
}

const PLAIN: Readonly<Record<string, string>> = {
  occurrenceID: "h#",
  scientificName: "Exemplum rubrum",
  eventDate: "2016-06-05",
  gridReference: "SK1020",
  recordedBy: "Ann Example",
};

function pages(): { path: string; html: string }[] {
  return filesBelow(atlas)
    .filter((path) => path.endsWith(".html"))
    .map((path) => ({ path: relative(atlas, path), html: readFileSync(path, "utf8") }));
}

/** Every tag of a page with its attributes. A < or a quotation mark of the other kind within a value is part of it. */
function tagsOf(html: string): { name: string; attributes: Map<string, string> }[] {
  const tag = /<([a-z][a-z0-9-]*)((?:\s+[^\s=>"']+(?:="[^"]*"|='[^']*'|=[^\s>"']+)?)*)\s*\/?>/gi;
  const attribute = /\s+([^\s=>"']+)(?:="([^"]*)"|='([^']*)'|=([^\s>"']+))?/g;
  return [...html.matchAll(tag)].map(([, name = "", attributes = ""]) => ({
    name: name.toLowerCase(),
    attributes: new Map(
      [...attributes.matchAll(attribute)].map(([, key = "", ...values]) => [key.toLowerCase(), values.join("")]),
    ),
  }));
}

/** Whether a tag could run, load or send anything that is not the atlas's own. */
function isStrange({ name, attributes }: { name: string; attributes: Map<string, string> }): boolean {
  const source = attributes.get("src") ?? "";
  return (
    /^(iframe|object|embed|base|frame|applet)$/.test(name) ||
    (name === "script" && attributes.get("type") !== "application/json" && !/^\/_astro\/[\w.-]+\.js$/.test(source)) ||
    source === "x" ||
    [...attributes.keys()].some((key) => key.startsWith("on") || key === "srcdoc") ||
    ["href", "src", "action", "xlink:href"].some((key) =>
      /^\s*(?:javascript|vbscript|data):/i.test(attributes.get(key) ?? ""),
    )
  );
}

describe("hostile content and records", () => {
  it("are all accounted for, and stop nothing", () => {
    const rows = 37 + 12 * HOSTILE.length + 4;
    const { read, used, held, not_used } = answer.records;
    expect([read, used + held + not_used]).toEqual([rows, rows]);
    expect(used).toBeGreaterThan(HOSTILE.length);
  });

  it("write nothing outside the folders given, and no path that is not plain", () => {
    expect(readdirSync(folder).sort()).toEqual(["out", "scheme", "work"]);
    expect(readdirSync(join(folder, "out"))).toEqual(["atlas"]);
    const paths = filesBelow(atlas).map((path) => relative(atlas, path));
    expect(paths.length).toBeGreaterThan(60);
    expect(paths.filter((path) => !/^[A-Za-z0-9._/-]+$/.test(path) || path.split("/").includes(".."))).toEqual([]);
    expect(existsSync(join(tmpdir(), "escaped"))).toBe(false);
  });

  it("are shown as text: no script, frame, image or handler but the atlas's own", () => {
    expect(pages().length).toBeGreaterThan(20);
    const strange = pages().flatMap(({ path, html }) =>
      tagsOf(html)
        .filter(isStrange)
        .map(({ name, attributes }) => `${path}: ${name} ${JSON.stringify([...attributes])}`),
    );
    expect(strange).toEqual([]);
    expect(tagsOf(`<p title='>' onclick="x"><img src=x>`).map(isStrange)).toEqual([true, true]);
  });

  it("end no block of data early: each is JSON without a tag", () => {
    const blocks = pages().flatMap(({ html }) => [
      ...html.matchAll(/<script\b[^>]*type="application\/json"[^>]*>([\s\S]*?)<\/script>/g),
    ]);
    expect(blocks.length).toBeGreaterThan(5);
    for (const [, json = ""] of blocks) {
      expect(() => JSON.parse(json) as unknown).not.toThrow();
      expect(json).not.toContain("<");
    }
  });

  it("come under a policy that lets no other script run", () => {
    for (const { path, html } of pages()) {
      const policy = /<meta http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(html)?.[1] ?? "";
      expect([path, policy.includes("default-src 'none'") && policy.includes("script-src 'self';")]).toEqual([
        path,
        true,
      ]);
      expect([path, /unsafe-inline|unsafe-eval/.test(policy)]).toEqual([path, false]);
    }
  });

  it("still show the names as they are written", () => {
    const page = pages().find(({ html }) => html.includes("Exemplum h0 &lt;script&gt;alert(1)&lt;/script&gt;"));
    expect(page).toBeDefined();
  });

  it("begin no cell of a table or of the findings like a formula", () => {
    const tables = filesBelow(atlas).filter((path) => path.endsWith(".csv"));
    expect(tables.length).toBeGreaterThan(20);
    for (const path of [...tables, findings]) {
      const cells = Papa.parse<string[]>(readFileSync(path, "utf8"), { skipEmptyLines: true }).data.flat();
      expect([
        path,
        cells.filter((cell) => /^[=+@\t\r]/.test(cell) || (cell.startsWith("-") && Number.isNaN(Number(cell)))),
      ]).toEqual([path, []]);
    }
  });
});

describe("what is published", () => {
  it("holds no recorder, place name, remark or id of a record, in any file or what it packs", async () => {
    const needles = PRIVATE.flatMap((text) => [
      text,
      encodeURIComponent(text),
      text.toLowerCase(),
      text.replaceAll(" ", "+"),
      Buffer.from(text).toString("base64").slice(0, 12),
    ]);
    const found: string[] = [];
    const control: string[] = [];
    const look = (where: string, bytes: Buffer) => {
      const text = bytes.toString("latin1");
      const folded = text.toLowerCase();
      if (text.includes("NO42")) control.push(where);
      found.push(
        ...needles
          .filter((needle) => text.includes(needle) || folded.includes(needle.toLowerCase()))
          .map((needle) => `${where}: ${needle}`),
      );
    };
    expect(readFileSync(join(folder, "scheme/records/museum.csv"), "latin1")).toContain(PRIVATE[0]);
    for (const { where, bytes } of await everyReading(atlas)) look(where, bytes);
    expect(found).toEqual([]);
    // A square that is published is found the same way, packed and unpacked, so that the search sees what it should.
    for (const where of [/\.html$/, /\.csv$/, /\.parquet decoded$/, /\.json$/])
      expect(control.some((one) => where.test(one))).toBe(true);
  });

  it("quotes its records in the findings, which are not published", () => {
    expect(readFileSync(findings, "utf8")).toContain("Xanthippe Quillfeather");
    expect(relative(join(folder, "scheme"), findings)).toBe("review/findings.csv");
  });
});
