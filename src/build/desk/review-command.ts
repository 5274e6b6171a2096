import { join } from "node:path";
import { Mistake } from "../../mistake.ts";
import { BACKUP } from "../../review/append-decisions.ts";
import { openDesk } from "../../review/desk/desk.ts";
import { takeBackRuling } from "../../review/desk/rule.ts";
import { DECISIONS_FILE } from "../../scheme/decisions-file.ts";
import { counted } from "../counted.ts";
import { reviewScheme } from "../pipeline.ts";
import { inventRecords, type Options, portOf, prepare, schemeFolder } from "../run-commands.ts";
import { endOnSignal } from "../serve.ts";
import { serveDesk } from "./desk-server.ts";

/** Opens the review desk on a scheme's records, and serves it until it is told to end. */
export async function runReview(options: Options): Promise<void> {
  const port = portOf(options);
  const { free, ...run } = prepare(options);
  try {
    await inventRecords(run);
    const { database, scheme } = await reviewScheme(run);
    try {
      const serving = await serveDesk(await openDesk(database, scheme), port);
      run.progress.close();
      process.stdout.write(`${serving.address}\n`);
      process.stderr.write(
        `Open this address in a browser on this machine. Rulings go to ${join(run.content, DECISIONS_FILE)}; as it is now it is kept as ${BACKUP}. Ctrl-C ends it.\n`,
      );
      await endOnSignal(serving);
    } finally {
      database.close();
    }
  } finally {
    free();
  }
}

/** Takes a ruling, or all of a batch, back. */
export async function runTakeBack(id: string, options: Options & { why?: string; who?: string }): Promise<void> {
  const folder = schemeFolder(options);
  const { records } = await takeBackRuling(folder, id, { who: options.who ?? "", why: options.why ?? "" });
  if (records.length === 0) throw new Mistake(`“${id}”`, "is no ruling", "give its decisionID or batch");
  process.stdout.write(`Taken back: ${counted(records.length, "ruling")}. The rows stay; one more says so.\n`);
}
