import { spawn } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { connect } from "node:net";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import { describe, expect, it, onTestFinished } from "vitest";
import { type ServeOptions, type Serving, serve } from "../../src/build/serve.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

const FILES = {
  "index.html": "<h1>home</h1>",
  "about/index.html": "<h1>about</h1>",
  "404.html": "<h1>not here</h1>",
  "grid.pmtiles": "0123456789",
  "empty.csv": "",
  "a file é.csv": "a,b",
  ".atlaswright": "marker",
};

async function serveFiles(
  options: Partial<ServeOptions> = {},
  files: Record<string, string> = FILES,
): Promise<Serving> {
  const folder = join(makeTemporaryFolder(), "site");
  for (const [name, text] of Object.entries({
    ...files,
    "../site-secret/a.txt": "secret",
    "../secret.txt": "secret",
  })) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  const serving = await serve({ folder, port: 0, ...options });
  onTestFinished(() => serving.close());
  return serving;
}

/** A request whose path goes out as written: fetch would tidy the dots away. */
function getAsWritten(port: number, path: string): Promise<number | undefined> {
  return new Promise((done, failed) => {
    request({ port, host: "127.0.0.1", path }, (response) => {
      response.resume();
      done(response.statusCode);
    })
      .on("error", failed)
      .end();
  });
}

describe("serve", () => {
  it("gives pages by their folder, with their types", async () => {
    const { address, port } = await serveFiles();
    expect(address).toBe(`http://localhost:${port}/`);
    const home = await fetch(address);
    expect([home.status, home.headers.get("content-type"), await home.text()]).toEqual([
      200,
      "text/html; charset=utf-8",
      "<h1>home</h1>",
    ]);
    const about = await fetch(`${address}about`);
    expect([about.url, await about.text()]).toEqual([`${address}about/`, "<h1>about</h1>"]);
    expect(await (await fetch(`${address}a%20file%20%C3%A9.csv?download`)).text()).toBe("a,b");
    expect(await (await fetch(`${address}empty.csv`)).text()).toBe("");
  });

  it("answers a miss with the atlas's own page and status 404", async () => {
    const { address } = await serveFiles();
    const miss = await fetch(`${address}nothing`);
    expect([miss.status, await miss.text()]).toEqual([404, "<h1>not here</h1>"]);
  });

  it("answers a miss plainly where the atlas has no such page", async () => {
    const { address } = await serveFiles({}, { "index.html": "home" });
    const miss = await fetch(`${address}nothing`);
    expect([miss.status, await miss.text()]).toEqual([404, "not found\n"]);
  });

  it("gives a stretch of a file", async () => {
    const { address } = await serveFiles();
    const part = await fetch(`${address}grid.pmtiles`, { headers: { Range: "bytes=2-4" } });
    expect([
      part.status,
      part.headers.get("content-range"),
      part.headers.get("content-length"),
      await part.text(),
    ]).toEqual([206, "bytes 2-4/10", "3", "234"]);
    const outside = await fetch(`${address}grid.pmtiles`, { headers: { Range: "bytes=10-" } });
    expect([outside.status, outside.headers.get("content-range")]).toEqual([416, "bytes */10"]);
  });

  it("answers HEAD with the size and no body, and refuses what would change anything", async () => {
    const { address } = await serveFiles();
    const head = await fetch(`${address}grid.pmtiles`, { method: "HEAD" });
    expect([head.status, head.headers.get("content-length"), await head.text()]).toEqual([200, "10", ""]);
    expect((await fetch(address, { method: "POST" })).status).toBe(405);
  });

  it("answers 304 to whom has the file already", async () => {
    const { address } = await serveFiles();
    const etag = String((await fetch(address)).headers.get("etag"));
    expect((await fetch(address, { headers: { "If-None-Match": etag } })).status).toBe(304);
  });

  it.each([
    "/../secret.txt",
    "/%2e%2e/secret.txt",
    "/..%2fsecret.txt",
    "/..%5csecret.txt",
    "/about/../../site-secret/a.txt",
    "/..%2fsite-secret/a.txt",
    "//etc/passwd",
    "/%00",
    "/%",
    "/.atlaswright",
    "/index.html/",
  ])("does not find %s", async (path) => {
    const { port } = await serveFiles();
    expect(await getAsWritten(port, path)).toBe(404);
  });

  it("serves below a base, and leads there from the top", async () => {
    const { address, port } = await serveFiles({ base: "/atlas/" });
    expect(address).toBe(`http://localhost:${port}/atlas/`);
    const top = await fetch(`http://localhost:${port}/`);
    expect([top.url, await top.text()]).toEqual([address, "<h1>home</h1>"]);
    expect((await fetch(`http://localhost:${port}/about/`)).status).toBe(404);
  });

  it("takes the next port when one is in use", async () => {
    const first = await serveFiles();
    const second = await serveFiles({ port: first.port });
    expect(second.port).toBeGreaterThan(first.port);
  });

  it("says so when it may not take another", async () => {
    const { port } = await serveFiles();
    await expect(serveFiles({ port, tries: 1 })).rejects.toThrow(
      `server cannot start: port ${port} is in use; name another with --port`,
    );
  });

  it("refuses a folder that is not there", async () => {
    await expect(serve({ folder: "/nowhere/atlas", port: 0 })).rejects.toThrow(
      "folder to serve /nowhere/atlas is not there; build the atlas first, or name its folder",
    );
  });

  it("ends at once with a connection open, and may be ended twice", async () => {
    const { port, close } = await serveFiles();
    const socket = connect(port, "127.0.0.1");
    await new Promise((connected) => socket.once("connect", connected));
    const ended = new Promise((done) => socket.once("close", done));
    await close();
    await ended;
    await close();
    await expect(fetch(`http://127.0.0.1:${port}/`)).rejects.toThrow("fetch failed");
  });
});

describe("endOnSignal", () => {
  it.each(["SIGINT", "SIGTERM"] as const)("ends with exit code 0 on %s, sent twice", async (signal) => {
    const folder = makeTemporaryFolder();
    writeFileSync(join(folder, "index.html"), "home");
    const module = pathToFileURL(join(import.meta.dirname, "../../src/build/serve.ts")).href;
    const code = `import { endOnSignal, serve } from "${module}";
      const serving = await serve({ folder: ${JSON.stringify(folder)}, port: 0 });
      console.log(serving.address);
      await endOnSignal(serving);`;
    const server = spawn(process.execPath, ["--input-type=module", "--eval", code]);
    const address = await new Promise<string>((line) =>
      server.stdout.once("data", (data) => line(String(data).trim())),
    );
    expect(await (await fetch(address)).text()).toBe("home");
    const ended = new Promise((done) => server.once("exit", (code, by) => done({ code, by })));
    server.kill(signal);
    server.kill(signal);
    expect(await ended).toEqual({ code: 0, by: null });
  });
});
