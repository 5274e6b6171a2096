import { cpSync, existsSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { AccountingFile } from "../publishing/contracts.ts";
import { contentFindings } from "../scheme/content-findings/index.ts";
import { type Answer, answerOf } from "./answer.ts";
import { tellContentFindings } from "./content-notes.ts";
import { counted } from "./counted.ts";
import { mediaStep } from "./media-step.ts";
import { writeOffline } from "./offline/write-offline.ts";
import { type Measured, measureScheme, type RunOptions } from "./pipeline.ts";
import { LATEST, publishStep } from "./publish-step.ts";
import { renderSite } from "./render-site.ts";
import { codeHash } from "./stages.ts";
import { refuseForeignFolder, swapIn } from "./swap-in.ts";

/** What a build is given beside what every run is. */
export interface BuildOptions extends RunOptions {
  /** Folder of the finished atlas; replaced whole, in one step, when all is done. */
  out: string;
  /** Address prefix it will be served under. */
  base: string;
  /** Folder of the scheme's own for what was found in its tables, texts and pictures; `review` in the scheme's without. */
  reviewFolder?: string;
}

/**
 * Builds an atlas: records, measures, published tables, pages; then puts it in the place of the old one. Until that last
 * step the old atlas stands as it was, whatever happens.
 *
 * @throws {Mistake} for what is wrong with the scheme's folder or the output folder
 */
export async function buildAtlas({ out, base, reviewFolder, ...options }: BuildOptions): Promise<Answer> {
  refuseForeignFolder(out, options.content);
  const measured = await measureScheme(options);
  try {
    const pictures = await mediaStep(measured.scheme, measured.stages, options.progress);
    const { scheme } = measured;
    const found = contentFindings({ ...scheme, mediaFindings: [...scheme.mediaFindings, ...pictures.findings] });
    const content_findings = tellContentFindings(
      found,
      reviewFolder ?? join(options.content, "review"),
      options.progress,
    );
    const published = await publishStep(measured, pictures, options);
    const site = await renderStep(measured, options, { published, base });
    swapIn(
      assemble(options.workFolder, {
        pages: join(site.folder, "pages"),
        published: published.folder,
        edition: scheme.settings.edition.id,
        languages: scheme.settings.languages.filter((tag) => tag !== scheme.settings.language),
      }),
      out,
    );
    measured.stages.forgetOthers();
    const accounting = AccountingFile.parse(
      JSON.parse(readFileSync(join(published.folder, "accounting.json"), "utf8")),
    );
    return { ...(await answerOf(measured.database, scheme, accounting)), out, ...told(content_findings) };
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
  for (const part of ["data", "map", "identify", "media"].filter((name) => existsSync(join(published, name))))
    cpSync(join(published, part), join(whole, part), { recursive: true });
  cpSync(join(whole, "data", edition), join(whole, "data", LATEST), { recursive: true });
  writeOffline(whole, languages, edition);
  return whole;
}

/** Nothing is said of findings where there are none. */
function told(content_findings: string[]): Pick<Answer, "content_findings"> {
  return content_findings.length === 0 ? {} : { content_findings };
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
