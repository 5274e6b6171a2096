/** A small scheme whose records raise many questions, and a desk on it. */
import { appendFileSync } from "node:fs";
import { join } from "node:path";
import { onTestFinished } from "vitest";
import { serveDesk } from "../../../src/build/desk/desk-server.ts";
import { makeScheme } from "../../../src/build/make-scheme.ts";
import { reviewScheme } from "../../../src/build/pipeline.ts";
import type { Serving } from "../../../src/build/serve.ts";
import { type Desk, openDesk } from "../../../src/review/desk/desk.ts";
import { keepLog } from "../../support/run-scheme.ts";

/** Names no checklist has: each a look of its own. */
export const UNKNOWN = Array.from(
  { length: 34 },
  (_, index) => `Ignotum ${"abcdefghijklmnopqrstuvwxyz"[index % 26]}${index}us`,
);

/** Records that share one unknown name, and so one look. */
export const ALIKE = 12;

const ROWS = [
  ...UNKNOWN.map(
    (name, index) =>
      `q${index},${name},2014-05-${String((index % 28) + 1).padStart(2, "0")},SK1245,Recorder Five,adult,1,present`,
  ),
  ...Array.from(
    { length: ALIKE },
    (_, index) =>
      `g${index},Commune multum,2015-06-${String(index + 1).padStart(2, "0")},SK2643,"Six, Recorder",adult,1,present`,
  ),
];

/** A running desk, its scheme's folder, and how to ask it as its page does. */
export interface OpenedDesk {
  folder: string;
  desk: Desk;
  serving: Serving;
  token: string;
  ask(path: string, body?: unknown): Promise<Response>;
}

/** Makes the scheme in a folder and opens a desk on it; both are closed when the test ends. */
export async function openTestDesk(folder: string): Promise<OpenedDesk> {
  const content = join(folder, "scheme");
  makeScheme(content);
  appendFileSync(join(content, "records/example.csv"), `${ROWS.join("\n")}\n`);
  const { database, scheme } = await reviewScheme({
    content,
    workFolder: join(folder, "work"),
    threads: 2,
    progress: keepLog(),
  });
  const desk = await openDesk(database, scheme);
  const serving = await serveDesk(desk, 0);
  onTestFinished(async () => {
    await serving.close();
    database.close();
  });
  const token = new URL(serving.address).pathname.split("/")[1] ?? "";
  return {
    folder: content,
    desk,
    serving,
    token,
    ask: (path, body) =>
      fetch(`${serving.address}api/${path}`, {
        headers: { "x-desk-token": token, ...(body === undefined ? {} : { "content-type": "application/json" }) },
        ...(body === undefined ? {} : { method: "POST", body: JSON.stringify(body) }),
      }),
  };
}
