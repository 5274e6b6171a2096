import type { Database } from "../engine/database.ts";
import { partyKey } from "./party-key.ts";

/** Gives every distinct text of `recorder_texts` the key of its party, once: table `parties`. */
export async function interpretRecorders(database: Database): Promise<void> {
  const filler = await database.fill("parties", { recordedBy: "text", recorder: "text" });
  await database.batches('SELECT "recordedBy" FROM recorder_texts ORDER BY "recordedBy"', (columns, size) => {
    const recordedBy = Array.from({ length: size }, (_, index) => String(columns["recordedBy"]?.[index] ?? ""));
    filler.add({ recordedBy, recorder: recordedBy.map(partyKey) });
  });
  filler.done();
}
