import { cpSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { Mistake } from "../mistake.ts";
import { AccountingFile } from "../publishing/contracts.ts";
import { publish } from "../publishing/publish.ts";
import { type Answer, answerOf } from "./answer.ts";
import { counted } from "./counted.ts";
import { writeOffline } from "./offline/write-offline.ts";
import { type Measured, measureScheme, type RunOptions } from "./pipeline.ts";
import { renderSite } from "./render-site.ts";
import { codeHash, hashOf } from "./stages.ts";
import { refuseForeignFolder, swapIn } from "./swap-in.ts";

/** Folder of the newest edition's tables, beside the one named for the edition. */
const LATEST = "latest";

/** What a build is given beside what every run is. */
export interface BuildOptions extends RunOptions {
  /** Folder of the finished atlas; replaced whole, in one step, when all is done. */
  out: string;
  /** Address prefix it will be served under. */
  base: string;
}

/**
 * Builds an atlas: records, measures, published tables, pages; then puts it in the place of the old one. Until that last
 * step the old atlas stands as it was, whatever happens.
 *
 * @throws {Mistake} for what is wrong with the scheme's folder or the output folder
 */
export async function buildAtlas({ out, base, ...options }: BuildOptions): Promise<Answer> {
  refuseForeignFolder(out, options.content);
  const measured = await measureScheme(options);
  try {
    const published = await publishStep(measured, options);
    const site = await renderStep(measured, options, { published, base });
    swapIn(
      assemble(options.workFolder, {
        pages: join(site.folder, "pages"),
        published: published.folder,
        edition: measured.scheme.settings.edition.id,
        languages: measured.scheme.settings.languages.filter((tag) => tag !== measured.scheme.settings.language),
      }),
      out,
    );
    measured.stages.forgetOthers();
    const accounting = AccountingFile.parse(
      JSON.parse(readFileSync(join(published.folder, "accounting.json"), "utf8")),
    );
    return { ...(await answerOf(measured.database, measured.scheme, accounting)), out };
  } finally {
    measured.database.close();
  }
}

/** Lays pages and tables together in one folder; `data/latest` is a copy of the edition's, for addresses that stay. */
function assemble(
  workFolder: string,
  {
    pages,
    published,
    edition,
    languages,
  }: { pages: string; published: string; edition: string; languages: readonly string[] },
): string {
  const whole = join(workFolder, "whole");
  rmSync(whole, { recursive: true, force: true });
  cpSync(pages, whole, { recursive: true });
  for (const part of ["data", "map", "identify"]) cpSync(join(published, part), join(whole, part), { recursive: true });
  cpSync(join(whole, "data", edition), join(whole, "data", LATEST), { recursive: true });
  writeOffline(whole, languages, edition);
  return whole;
}

async function publishStep({ scheme, database, stages, key, read }: Measured, { progress }: RunOptions) {
  refuseEdition(scheme.settings);
  const step = progress.step("publish", counted(scheme.taxa.length, "taxon", "taxa"));
  const { folder: _, checklist: __, ...texts } = scheme;
  const inputs = [
    key,
    codeHash(["publishing"]),
    JSON.stringify(texts),
    JSON.stringify([...scheme.accounts.values()]),
    ...contentFiles(scheme),
  ];
  const stage = await stages.reuse("published", inputs, async (folder) => {
    await publish(database, scheme, { folder, read });
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

async function renderStep(
  { stages }: Measured,
  { workFolder, progress }: RunOptions,
  { published, base }: { published: { folder: string; key: string }; base: string },
) {
  const step = progress.step("render", "pages");
  let pages = 0;
  const stage = await stages.reuse("site", [published.key, base, codeHash(["site", "build"])], async (folder) => {
    await renderSite({
      published: published.folder,
      base,
      workFolder: join(workFolder, "astro"),
      outFolder: join(folder, "pages"),
      log: progress.note,
      onPage: (done) => {
        pages = done;
        step.update(done);
      },
    });
  });
  step.done(pages === 0 ? "" : counted(pages, "page"), { reused: stage.reused });
  return stage;
}
