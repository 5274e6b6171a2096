import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { MediaSource } from "../publishing/contracts.ts";
import { mediaIds, type ReadyMedia } from "../publishing/media/media-list.ts";
import { prepareMedia } from "../publishing/media/prepared.ts";
import type { ContentFinding } from "../scheme/content-findings/index.ts";
import { MEDIA_FOLDER } from "../scheme/media-file.ts";
import type { Scheme } from "../scheme/scheme.ts";
import { counted } from "./counted.ts";
import type { Progress } from "./progress.ts";
import { codeHash, hashOf, type Stages } from "./stages.ts";

/** What the pictures of a scheme have become. */
export interface MediaStep {
  ready: ReadyMedia[];
  /** Folders that hold the files of `ready`, to be laid together. */
  folders: string[];
  findings: ContentFinding[];
  /** Changes with any picture. */
  key: string;
}

/** What stands beside the files of one picture. */
type Notes = { sources: (Omit<MediaSource, "path"> & { name: string })[] } | { found: string; wayOut: string };
const NOTES = "notes.json";

/**
 * Makes the scheme's pictures and clips ready to publish. Each is kept by its bytes, so that a picture is made once.
 *
 * @returns those that can be shown, and findings about the others
 */
export async function mediaStep(
  { folder, media }: Pick<Scheme, "folder" | "media">,
  stages: Stages,
  progress: Progress,
): Promise<MediaStep> {
  const made: MediaStep = { ready: [], folders: [], findings: [], key: "" };
  if (media.length === 0) return made;
  const step = progress.step("pictures", counted(media.length, "picture"));
  const code = codeHash(["publishing/media"]);
  const ids = mediaIds(media.map(({ file }) => file));
  let reused = 0;
  for (const [index, row] of media.entries()) {
    const bytes = readFileSync(join(folder, MEDIA_FOLDER, row.file));
    const id = ids[index] ?? "";
    const inputs = [bytes.toString("base64"), row.kind, row.file, id, code];
    const stage = await stages.reuse("media", inputs, (into) => prepareInto(into, bytes, row, id));
    reused += Number(stage.reused);
    const notes = JSON.parse(readFileSync(join(stage.folder, NOTES), "utf8")) as Notes;
    if ("found" in notes) made.findings.push(refused(row, notes));
    else {
      const sources = notes.sources.map(({ name, ...source }) => ({ path: `${MEDIA_FOLDER}/${name}`, ...source }));
      made.ready.push({ row, id, sources });
      if (!made.folders.includes(stage.folder)) made.folders.push(stage.folder);
    }
    made.key = hashOf([made.key, stage.key]);
    step.update(index + 1);
  }
  step.done(counted(made.ready.length, "picture"), { reused: reused === media.length });
  return made;
}

async function prepareInto(into: string, bytes: Buffer, row: Scheme["media"][number], id: string): Promise<void> {
  const prepared = await prepareMedia(bytes, row);
  const notes: Notes =
    "found" in prepared
      ? prepared
      : {
          sources: prepared.files.map(({ ending, bytes: file, source }) => {
            writeFileSync(join(into, `${id}${ending}`), file);
            return { name: `${id}${ending}`, ...source, bytes: file.length };
          }),
        };
  writeFileSync(join(into, NOTES), JSON.stringify(notes));
}

function refused(
  { file }: Scheme["media"][number],
  { found, wayOut }: { found: string; wayOut: string },
): ContentFinding {
  return {
    check: "media_refused",
    file: "media.csv",
    row: null,
    field: "file",
    value: file,
    found: `${found}; the picture is left out`,
    wayOut,
  };
}

/** Names of the published files in a folder of one picture. */
export function publishedNames(folder: string): string[] {
  return readdirSync(folder).filter((name) => name !== NOTES);
}
