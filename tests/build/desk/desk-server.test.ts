import { createHash } from "node:crypto";
import { once } from "node:events";
import { appendFileSync, readdirSync, readFileSync } from "node:fs";
import { request } from "node:http";
import { connect } from "node:net";
import { networkInterfaces } from "node:os";
import { join } from "node:path";
import { describe, expect, it, vi } from "vitest";
import type {
  GroupAnswer,
  Line,
  LinesAnswer,
  RecordAnswer,
  RulingAnswer,
  TraceAnswer,
} from "../../../src/review/desk/answers.ts";
import { DECISION_COLUMNS, readDecisions } from "../../../src/scheme/decisions-file.ts";
import { makeTemporaryFolder } from "../../support/temporary-folder.ts";
import { ALIKE, type OpenedDesk, openTestDesk, UNKNOWN } from "./desk-scheme.ts";

interface Told {
  status: number;
  headers: Record<string, unknown>;
  body: string;
}

/** A request with any header and path, sent as it is written. */
function raw(
  port: number,
  {
    path,
    method = "GET",
    headers = {},
    body = "",
  }: { path: string; method?: string; headers?: Record<string, string>; body?: string },
): Promise<Told> {
  return new Promise((done, failed) => {
    const sent = request({ host: "127.0.0.1", port, path, method, headers }, (response) => {
      let text = "";
      response.on("data", (part) => (text += String(part)));
      response.on("end", () => done({ status: response.statusCode ?? 0, headers: response.headers, body: text }));
    });
    sent.on("error", failed);
    sent.end(body);
  });
}

/** Every file of a folder with the hash of its content. */
function contentOf(folder: string): Map<string, string> {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  return new Map(
    files.map(({ parentPath, name }) => {
      const path = join(parentPath, name);
      return [path.slice(folder.length + 1), createHash("sha256").update(readFileSync(path)).digest("hex")];
    }),
  );
}

async function json<Answer>(response: Response | Promise<Response>): Promise<Answer> {
  const answer = await response;
  expect(answer.status, await answer.clone().text()).toBe(200);
  return (await answer.json()) as Answer;
}

/** The single looks, as their records' numbers. */
async function singles({ ask }: OpenedDesk): Promise<number[]> {
  const { lines } = await json<LinesAnswer>(ask("lines"));
  return lines.filter(({ records }) => records === 1).map(({ record }) => record);
}

const ruling = (record: number, more: object = {}) => ({ ruling: "hold", record, ...more });

describe("the desk's server", () => {
  it("answers no request that lacks the token, comes by another name or from another page", async () => {
    const { serving, token } = await openTestDesk(makeTemporaryFolder());
    const { port } = serving;
    const host = `127.0.0.1:${port}`;
    const api = `/${token}/api/lines`;
    const status = async (path: string, headers: Record<string, string> = {}, method = "GET") =>
      (await raw(port, { path, method, headers: { host, ...headers } })).status;
    const withToken = { "x-desk-token": token };
    expect(await status(`/${token}/`)).toBe(200);
    expect(await status(api, withToken)).toBe(200);
    for (const path of ["/", "/favicon.ico", "/desk.css", "/api/lines", `/${token.slice(1)}/`, `/${token}x/`])
      expect(await status(path, withToken), path).toBe(403);
    expect(await status(api)).toBe(403);
    expect(await status(api, { "x-desk-token": token.slice(1) })).toBe(403);
    expect(await status(`/${token}/api/rulings`, { "content-type": "application/json" }, "POST")).toBe(403);
    // A name of somebody else's that points at this machine (DNS rebinding), and requests that other pages send.
    expect(await status(api, { ...withToken, host: `atlas.example:${port}` })).toBe(403);
    expect(await status(api, { ...withToken, host: "127.0.0.1" })).toBe(403);
    expect(await status(api, { ...withToken, origin: "http://atlas.example" })).toBe(403);
    expect(await status(api, { ...withToken, "sec-fetch-site": "cross-site" })).toBe(403);
    expect(await status(api, { ...withToken, origin: `http://${host}` })).toBe(200);
    for (const method of ["PUT", "DELETE", "OPTIONS", "PATCH", "HEAD"])
      expect(await status(api, withToken, method), method).toBe(405);
  });

  it("listens on this machine alone", async () => {
    const { serving } = await openTestDesk(makeTemporaryFolder());
    expect(new URL(serving.address).hostname).toBe("127.0.0.1");
    const outside = Object.values(networkInterfaces())
      .flatMap((addresses) => addresses ?? [])
      .filter(({ internal, family }) => !internal && family === "IPv4");
    for (const { address } of outside)
      await expect(fetch(`http://${address}:${serving.port}/`), address).rejects.toThrow();
  });

  it("lets its page load nothing from elsewhere, and keeps nothing", async () => {
    const { serving, token } = await openTestDesk(makeTemporaryFolder());
    const { headers, body } = await raw(serving.port, {
      path: `/${token}/`,
      headers: { host: `127.0.0.1:${serving.port}` },
    });
    const policy = String(headers["content-security-policy"]);
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("frame-ancestors 'none'");
    expect(policy).toContain("script-src 'self'");
    expect(policy).not.toMatch(/unsafe|https?:|\*/);
    expect(headers).toMatchObject({
      "cache-control": "no-store",
      "x-content-type-options": "nosniff",
      "referrer-policy": "no-referrer",
    });
    expect(body).not.toMatch(/(?:src|href)="(?!\/|data:,)/);
    for (const [, path = ""] of body.matchAll(/(?:src|href)="(\/[^"]+)"/g))
      expect((await fetch(`http://127.0.0.1:${serving.port}${path}`)).status, path).toBe(200);
  });

  it("gives no file of the machine, whatever the path", async () => {
    const { serving, token } = await openTestDesk(makeTemporaryFolder());
    const headers = { host: `127.0.0.1:${serving.port}`, "x-desk-token": token };
    for (const way of [
      "../package.json",
      "..%2fpackage.json",
      "%2e%2e/%2e%2e/package.json",
      "fonts/../../desk-server.ts",
      "page/../guard.ts",
      "square/british/..%2f..%2fx",
      "api/__proto__",
      "api/constructor",
      "/etc/passwd",
    ]) {
      const { status, body } = await raw(serving.port, { path: `/${token}/${way}`, headers });
      expect([403, 404, 422], `${way}: ${status}`).toContain(status);
      expect(body.length, way).toBeLessThan(200);
    }
  });

  it("takes JSON of a ruling's size and contract, and nothing else", async () => {
    const opened = await openTestDesk(makeTemporaryFolder());
    const { serving, token, folder, ask } = opened;
    const [record = 0] = await singles(opened);
    const before = contentOf(folder);
    const post = (body: string, type = "application/json") =>
      raw(serving.port, {
        path: `/${token}/api/rulings`,
        method: "POST",
        headers: { host: `127.0.0.1:${serving.port}`, "x-desk-token": token, "content-type": type },
        body,
      });
    expect((await post(JSON.stringify(ruling(record)), "text/plain")).status).toBe(415);
    expect((await post("{")).status).toBe(422);
    expect((await post(JSON.stringify(ruling(record, { why: "x".repeat(70_000) })))).status).toBe(413);
    for (const wrong of [
      { ruling: "hold" },
      ruling(record, { ruling: "withdraw", value: "d1" }),
      ruling(record, { ruling: "perhaps" }),
      ruling(record, { file: "../elsewhere.csv" }),
      ruling(999_999),
      ruling(record, { ruling: "re-identify", value: "Exemplum tertium" }),
      ruling(record, { ruling: "correct", value: "gridReference=nowhere" }),
      ruling(record, { ruling: "correct", value: "eventDate=2014-02-30" }),
      ruling(record, { ruling: "correct", value: "colour=red" }),
      ruling(record, { ruling: "identify" }),
    ])
      expect((await ask("rulings", wrong)).status, JSON.stringify(wrong)).toBe(422);
    expect((await ask("take-back", { id: "d404" })).status).toBe(422);
    expect(contentOf(folder)).toEqual(before);
  });

  it("changes decisions.csv alone, and shows what was ruled at once", async () => {
    const opened = await openTestDesk(makeTemporaryFolder());
    const { folder, ask } = opened;
    const before = contentOf(folder);
    const [first = 0, second = 0] = await singles(opened);
    const { id } = await json<RulingAnswer>(
      ask(
        "rulings",
        ruling(first, {
          ruling: "re-identify",
          value: "Exemplum primum",
          identification: "confirmed on photograph",
          partSeen: "wing-case",
          why: "=spots, four",
          who: "officer",
          check: "name_unknown",
        }),
      ),
    );
    await json(
      ask("rulings", ruling(first, { ruling: "identify", identification: "agreed on description", who: "second" })),
    );
    await json(ask("rulings", ruling(second)));
    const changed = [...contentOf(folder)].filter(([file, hash]) => before.get(file) !== hash).map(([file]) => file);
    expect(changed).toEqual(["decisions.csv"]);
    expect(readDecisions(folder)[0]).toMatchObject({
      ruling: "re-identify",
      value: "Exemplum primum",
      recordKey: "example:q0",
      saidName: UNKNOWN[0],
      saidPlace: "SK1245",
      why: "=spots, four",
      check: "name_unknown",
    });
    const { history } = await json<RecordAnswer>(ask(`record/${first}`));
    expect(history.map(({ who, identification }) => [who, identification])).toEqual([
      ["officer", "confirmed on photograph"],
      ["second", "agreed on description"],
    ]);
    expect((await json<LinesAnswer>(ask("lines"))).open).toBe(UNKNOWN.length + ALIKE - 2);
    await json(ask("take-back", { id }));
    const after = await json<RecordAnswer>(ask(`record/${first}`));
    expect(after.history.map(({ withdrawn }) => withdrawn)).toEqual([true, false]);
    expect((await ask("take-back", { id })).status).toBe(422);
  });

  it("loses nothing of fifty rulings sent at once from two windows, nor of what is written by hand meanwhile", async () => {
    const opened = await openTestDesk(makeTemporaryFolder());
    const { folder, ask } = opened;
    const [first = 0, ...records] = await singles(opened);
    await json(ask("rulings", ruling(first)));
    const byHand = (key: string) => {
      const cells: Record<string, string> = {
        decisionID: `hand-${key}`,
        recordKey: key,
        ruling: "use",
        why: "by hand",
      };
      appendFileSync(join(folder, "decisions.csv"), `${DECISION_COLUMNS.map((name) => cells[name] ?? "").join(",")}\n`);
    };
    byHand("example:invented-1");
    const sent = ["ann", "ben"].flatMap((who) =>
      records.slice(0, 25).map((record) => ask("rulings", ruling(record, { who }))),
    );
    for (const answer of await Promise.all(sent)) expect(answer.status).toBe(200);
    byHand("example:invented-2");
    await json(ask("rulings", ruling(first)));
    const rows = readDecisions(folder);
    expect(rows).toHaveLength(1 + 1 + 50 + 1 + 1);
    expect(new Set(rows.filter(({ who }) => who !== "").map(({ who, recordKey }) => `${who} ${recordKey}`)).size).toBe(
      50,
    );
    expect(rows.filter(({ why }) => why === "by hand").map(({ decisionID }) => decisionID)).toEqual([
      "hand-example:invented-1",
      "hand-example:invented-2",
    ]);
    expect(rows.at(-1)?.recordKey).toBe("example:q0");
  });

  it("rules on a look as one batch with its filter and count, which is taken back as one", async () => {
    const { folder, ask } = await openTestDesk(makeTemporaryFolder());
    const { lines } = await json<LinesAnswer>(ask("lines"));
    const look = lines.find(({ records }) => records === ALIKE)?.look ?? 0;
    const filter = { source: "example", show: "open" };
    const { mark } = await json<GroupAnswer>(ask(`group/${look}?source=example&show=open`));
    const group = { look, filter, others: true, count: ALIKE, mark };
    expect((await ask("rulings", { ruling: "leave out", group: { ...group, count: ALIKE - 1 } })).status).toBe(422);
    const { id } = await json<RulingAnswer>(ask("rulings", { ruling: "leave out", why: "not ours", group }));
    const rows = readDecisions(folder);
    expect(rows).toHaveLength(ALIKE);
    expect(new Set(rows.map(({ recordKey }) => recordKey)).size).toBe(ALIKE);
    expect(rows.every(({ batch, count }) => batch === id && count === String(ALIKE))).toBe(true);
    expect(rows[0]?.filter).toContain("Commune multum");
    expect((await json<LinesAnswer>(ask("lines?show=open"))).lines.some((line) => line.look === look)).toBe(false);
    await json(ask("take-back", { id }));
    expect(readDecisions(folder)).toHaveLength(ALIKE + 1);
    expect((await json<LinesAnswer>(ask("lines?show=open"))).lines.find((line) => line.look === look)?.open).toBe(
      ALIKE,
    );
  });

  it("rules on no look that holds other records than were shown, though as many", async () => {
    const { folder, ask } = await openTestDesk(makeTemporaryFolder());
    const { lines } = await json<LinesAnswer>(ask("lines"));
    const look = lines.find(({ records }) => records === ALIKE)?.look ?? 0;
    const [one, two] = await json<Line[]>(ask(`look/${look}`));
    const { id } = await json<RulingAnswer>(ask("rulings", ruling(one?.record ?? 0)));
    const shown = await json<GroupAnswer>(ask(`group/${look}`));
    expect(shown.records).toBe(ALIKE - 1);
    await json(ask("take-back", { id }));
    // The second is ruled on by another program, which this desk has not read yet.
    const { history } = await json<RecordAnswer>(ask(`record/${two?.record}`));
    expect(history).toEqual([]);
    const { key } = await json<RecordAnswer>(ask(`record/${two?.record}`));
    const cells: Record<string, string> = { decisionID: "hand", recordKey: key, ruling: "use" };
    appendFileSync(join(folder, "decisions.csv"), `${DECISION_COLUMNS.map((name) => cells[name] ?? "").join(",")}\n`);
    const group = { look, filter: {}, others: true, count: ALIKE - 1, mark: shown.mark };
    const answer = await ask("rulings", { ruling: "leave out", group });
    expect([answer.status, await answer.text()]).toEqual([
      422,
      "the look has other open records now than were shown; look at it again, then rule\n",
    ]);
    expect(readDecisions(folder).some(({ ruling: said }) => said === "leave out")).toBe(false);
    const { mark } = await json<GroupAnswer>(ask(`group/${look}`));
    await json(ask("rulings", { ruling: "leave out", group: { ...group, mark } }));
    expect(readDecisions(folder).filter(({ ruling: said }) => said === "leave out")).toHaveLength(ALIKE - 1);
  });

  it("answers what is no request with a refusal, and prints no trace of it", async () => {
    const { serving, token } = await openTestDesk(makeTemporaryFolder());
    const { port } = serving;
    const headers = { host: `127.0.0.1:${port}`, "x-desk-token": token };
    const printed = vi.spyOn(process.stderr, "write").mockReturnValue(true);
    for (const path of ["//", "http://["]) expect((await raw(port, { path, headers })).status, path).toBe(400);
    expect((await raw(port, { path: `/${token}/api/lines?text=%00`, headers })).status).toBe(200);
    const tooLong = { ...headers, "content-type": "application/json", "content-length": "70000" };
    expect(
      (await raw(port, { path: `/${token}/api/rulings`, method: "POST", headers: tooLong, body: "x".repeat(70_000) }))
        .status,
    ).toBe(413);
    const broken = connect(port, "127.0.0.1");
    broken.write(
      `POST /${token}/api/rulings HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nX-Desk-Token: ${token}\r\nContent-Type: application/json\r\nContent-Length: 9\r\n\r\n{`,
    );
    await once(broken, "ready");
    broken.resume().end();
    await once(broken, "close");
    expect((await raw(port, { path: `/${token}/`, headers })).status).toBe(200);
    expect(printed).not.toHaveBeenCalled();
    printed.mockRestore();
  });

  it("narrows the list, and traces a published square to what the files say", async () => {
    const { ask } = await openTestDesk(makeTemporaryFolder());
    expect((await json<LinesAnswer>(ask("lines?text=Commune"))).records).toBe(ALIKE);
    expect((await json<LinesAnswer>(ask(`lines?recorder=${encodeURIComponent("SIX recorder")}`))).records).toBe(ALIKE);
    expect((await json<LinesAnswer>(ask("lines?from=2015&to=2015"))).records).toBe(ALIKE);
    expect((await json<LinesAnswer>(ask("lines?severity=blocks"))).records).toBe(0);
    expect((await ask("lines?from=20x5")).status).toBe(422);
    // SK126458 and SK123456 lie in SK14; SK1245 and SK1345 name squares of 1 km in it.
    const { taxa } = await json<TraceAnswer>(ask("square/british/SK14"));
    const keys = taxa.flatMap(({ periods }) => periods.flatMap(({ records }) => records.map(({ key }) => key))).sort();
    expect(keys).toEqual(
      ["invented-1", "invented-2", "invented-3", "invented-6", "invented-9"].map((id) => `example:${id}`),
    );
    const cells = taxa[0]?.periods[0]?.records[0]?.cells ?? [];
    expect(Object.fromEntries(cells)).toMatchObject({
      scientificName: "Exemplum primum",
      gridReference: "SK123456",
      recordedBy: "Recorder One",
    });
  });
});
