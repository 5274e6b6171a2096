import { spawn } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { PrintingBrowser } from "./find-browser.ts";

/** Longest the browser may take over a book, in milliseconds. */
const PATIENCE = 10 * 60_000;

/**
 * Prints one page to PDF with a headless browser, in a profile of its own that is thrown away.
 *
 * @param address of the page, on this machine
 * @returns the bytes of the PDF
 * @throws Error with the browser's last words where it gives no PDF
 * @example (await printPage({ program: "/usr/bin/chromium" }, "http://localhost:4321/book.html")).subarray(0, 5) // "%PDF-"
 */
export async function printPage({ program, environment }: PrintingBrowser, address: string): Promise<Buffer> {
  const folder = mkdtempSync(join(tmpdir(), "atlaswright-book-"));
  const file = join(folder, "book.pdf");
  try {
    const words = await run(program, [...flags(folder), `--print-to-pdf=${file}`, address], environment);
    try {
      return readFileSync(file);
    } catch {
      throw new Error(`${program} printed nothing: ${words.trim().split("\n").slice(-3).join(" ")}`);
    }
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  }
}

function flags(folder: string): string[] {
  // A browser of root, as in a container, starts only without its sandbox; it opens nothing but our own page.
  const sandbox = process.getuid?.() === 0 ? ["--no-sandbox"] : [];
  return [
    "--headless",
    ...sandbox,
    "--disable-gpu",
    "--no-first-run",
    "--disable-extensions",
    "--disable-dev-shm-usage",
    `--user-data-dir=${join(folder, "profile")}`,
    "--no-pdf-header-footer",
    "--generate-pdf-document-outline",
    "--export-tagged-pdf",
    "--virtual-time-budget=60000",
  ];
}

function run(program: string, words: string[], environment: PrintingBrowser["environment"]): Promise<string> {
  return new Promise((done, failed) => {
    const browser = spawn(program, words, {
      stdio: ["ignore", "ignore", "pipe"],
      env: { ...process.env, ...environment },
    });
    let said = "";
    const timer = setTimeout(() => browser.kill("SIGKILL"), PATIENCE);
    browser.stderr.on("data", (chunk: Buffer) => {
      said = (said + chunk.toString()).slice(-4_000);
    });
    browser.on("error", failed);
    browser.on("close", () => {
      clearTimeout(timer);
      done(said);
    });
  });
}
