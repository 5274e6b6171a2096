/** Runs a scheme's folder through the program's own stages, without a terminal. */
import { join } from "node:path";
import { type Answer, answerOf } from "../../src/build/answer.ts";
import { measureScheme } from "../../src/build/pipeline.ts";
import type { Progress } from "../../src/build/progress.ts";
import { accountingFile } from "../../src/publishing/accounting-file.ts";
import { publish } from "../../src/publishing/publish.ts";

/** A log that keeps which steps were done again and which were reused. */
export interface KeptLog extends Progress {
  steps: Record<string, "done" | "reused">;
  notes: string[];
}

/** A log for tests: nothing is written anywhere. */
export function keepLog(): KeptLog {
  const steps: KeptLog["steps"] = {};
  const notes: string[] = [];
  return {
    steps,
    notes,
    step: (name) => ({
      update: () => {},
      done: (_, { reused = false } = {}) => {
        steps[name] = reused ? "reused" : "done";
      },
    }),
    note: (text) => notes.push(text),
    close: () => {},
  };
}

/** What a scheme's stages gave, up to the published folder; no pages. */
export interface RunScheme {
  /** Folder of the published files. */
  published: string;
  answer: Answer;
  log: KeptLog;
}

/**
 * Reads, interprets, measures and publishes a scheme.
 *
 * @param content the scheme's folder
 * @param folder a folder of the test's own, for work and results
 * @param options threads of the engine; `tables: false` stops before publishing
 */
export async function runScheme(
  content: string,
  folder: string,
  { threads, tables = true }: { threads?: number; tables?: boolean } = {},
): Promise<RunScheme> {
  const log = keepLog();
  const measured = await measureScheme({ content, workFolder: join(folder, "work"), threads, progress: log });
  const published = join(folder, "published");
  try {
    const { database, scheme, read, stages } = measured;
    if (tables) await publish(database, scheme, { folder: published, read });
    stages.forgetOthers();
    return { published, answer: await answerOf(database, scheme, await accountingFile(database, scheme, read)), log };
  } finally {
    measured.database.close();
  }
}
