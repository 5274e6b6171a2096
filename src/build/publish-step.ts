import { copyFileSync, mkdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { Mistake } from "../mistake.ts";
import { publish } from "../publishing/publish.ts";
import { counted } from "./counted.ts";
import { type MediaStep, publishedNames } from "./media-step.ts";
import type { Measured, RunOptions } from "./pipeline.ts";
import { codeHash, hashOf } from "./stages.ts";

/** Folder of the newest edition's tables, beside the one named for the edition. */
export const LATEST = "latest";

/**
 * Writes the published folder, or takes it from an earlier build where the same went in.
 *
 * @throws {Mistake} where the edition has a name that is taken
 */
export async function publishStep(
  { scheme, database, stages, key, read }: Measured,
  pictures: MediaStep,
  { progress }: RunOptions,
) {
  refuseEdition(scheme.settings);
  const step = progress.step("publish", counted(scheme.taxa.length, "taxon", "taxa"));
  const { folder: _, checklist: __, ...texts } = scheme;
  const inputs = [
    key,
    codeHash(["publishing"]),
    JSON.stringify(texts),
    JSON.stringify([...scheme.accounts.values()]),
    ...contentFiles(scheme),
    pictures.key,
  ];
  const stage = await stages.reuse("published", inputs, async (folder) => {
    await publish(database, scheme, { folder, read, media: pictures.ready });
    if (pictures.ready.length > 0) mkdirSync(join(folder, "media"));
    for (const from of pictures.folders)
      for (const name of publishedNames(from)) copyFileSync(join(from, name), join(folder, "media", name));
  });
  const files = (JSON.parse(readFileSync(join(stage.folder, "downloads.json"), "utf8")) as { files: unknown[] }).files
    .length;
  step.done(counted(files, "file"), { reused: stage.reused });
  return stage;
}

/**
 * Refuses an edition whose folder would be written over.
 *
 * @throws {Mistake} where the edition is named as the newest always is
 */
function refuseEdition({ edition }: Measured["scheme"]["settings"]): void {
  if (edition.id.toLowerCase() !== LATEST) return;
  const wayOut = "give the edition a name of its own";
  throw new Mistake("edition.id", `is ${LATEST}, which always names the newest`, wayOut, { file: "atlas.yaml" });
}

function basemapFiles({ basemap }: Measured["scheme"]["settings"]): string[] {
  if (basemap === undefined) return [];
  const { land, lakes, borders, detail, licence_file } = basemap;
  return [land, lakes, borders, detail, licence_file].filter((file) => file !== undefined);
}

/** Content hashes of files that are published as they are. */
function contentFiles({ folder, settings }: Measured["scheme"]): string[] {
  return basemapFiles(settings).map((file) => hashOf([readFileSync(join(folder, file), "utf8")]));
}
