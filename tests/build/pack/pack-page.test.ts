import { readFileSync, writeFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import axe from "axe-core";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Pack, type PackQuestion, packPage } from "../../../src/build/pack/pack-page.ts";
import { readReturned } from "../../../src/review/returned-rows.ts";
import { launchBrowser } from "../../support/browser.ts";
import { makeTemporaryFolder } from "../../support/temporary-folder.ts";

const question = (more: Partial<PackQuestion>): PackQuestion => ({
  look_no: 1,
  record_key: "walks:a1",
  said_mark: "m12345678",
  check_name: "impossible_caste",
  message: "is a caste this taxon does not have",
  way_out: "correct the caste or the name",
  said_name: "Bombus vestalis",
  said_date: "2011-07-12",
  said_place: "SP5006",
  said_kind: "worker",
  locality: 'by the "mill" <b>',
  remarks: "",
  recorded_by: "",
  taxon_id: "invented-vestalis",
  ...more,
});

const PACK: Pack = {
  name: "pack-try",
  title: "An atlas",
  selection: "Bombus vestalis",
  invented: true,
  questions: [
    question({}),
    question({ check_name: "far_in_a_day", message: "is far from the others" }),
    question({ record_key: "walks:a2", remarks: "</script><script>alert(1)</script>" }),
  ],
  characters: new Map([
    [
      "invented-vestalis",
      [
        {
          taxonID: "invented-vestalis",
          castes: ["male"],
          form: "",
          part: "antenna",
          state: "3 shorter than 5",
          note: "",
          reliability: "settles",
          evidence: "specimen",
        },
      ],
    ],
  ]),
  names: new Map([["invented-vestalis", "Bombus vestalis"]]),
};

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

async function open(
  pack = PACK,
  file = join(makeTemporaryFolder(), "pack.html"),
): Promise<{ page: Page; complaints: string[]; requests: string[] }> {
  writeFileSync(file, packPage(pack));
  const page = await browser.newPage({ acceptDownloads: true });
  const [complaints, requests]: [string[], string[]] = [[], []];
  page.on("console", (message) => complaints.push(message.text()));
  page.on("pageerror", (error) => complaints.push(String(error)));
  page.on("request", (request) => requests.push(request.url()));
  await page.goto(pathToFileURL(file).href);
  return { page, complaints, requests };
}

describe("a review pack", () => {
  it("saves what was ruled, for one who says who rules, in the columns that merging reads", async () => {
    const { page, complaints, requests } = await open();
    const second = page.locator("fieldset[data-record='walks:a2']");
    await second.getByLabel("Ruling").selectOption("re-identify");
    await second.getByLabel("Name, or correction").fill("Bombus bohemicus");
    await second.getByLabel("Part seen").fill("antenna");
    await second.getByLabel("Why").fill('segments "equal", seen twice');
    await page.getByRole("button", { name: "Save my rulings" }).click();
    expect(await page.locator("#state").textContent()).toContain("Say who you are");
    await page.keyboard.type("B. R.");
    expect(await page.locator("#state").textContent()).toBe("1 of 2 records ruled on");
    const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("button").click()]);
    const saved = join(makeTemporaryFolder(), download.suggestedFilename());
    await download.saveAs(saved);
    expect(readFileSync(saved, "utf8")).toContain('"segments ""equal"", seen twice"');
    expect(await readReturned(saved)).toMatchObject([
      {
        record: "walks:a2",
        mark: "m12345678",
        ruling: "re-identify",
        value: "Bombus bohemicus",
        part_seen: "antenna",
        who: "B. R.",
      },
    ]);
    expect(complaints).toEqual([]);
    expect(requests.filter((url) => !/^(file|blob):/.test(url))).toEqual([]);
    await page.close();
  });

  it("keeps what was entered when it is closed", async () => {
    const { page } = await open();
    await page.getByLabel("Who rules").fill("B");
    await page.locator("fieldset").first().getByLabel("Ruling").selectOption("hold");
    await page.reload();
    expect(await page.locator("fieldset").first().getByLabel("Ruling").inputValue()).toBe("hold");
    expect(await page.locator("#state").textContent()).toBe("1 of 2 records ruled on");
    await page.close();
  });

  it("gives a later pack of its name none of what was entered for other records, or when a record said otherwise", async () => {
    const file = join(makeTemporaryFolder(), "pack.html");
    const { page } = await open(PACK, file);
    for (const block of await page.locator("fieldset").all()) await block.getByLabel("Ruling").selectOption("hold");
    const { questions } = PACK;
    const later = [
      question({ record_key: "walks:new" }),
      ...questions.filter(({ record_key }) => record_key === "walks:a2"),
      question({ said_mark: "m-other" }),
    ];
    writeFileSync(file, packPage({ ...PACK, questions: later }));
    await page.reload();
    const rulings = page.locator("fieldset").getByLabel("Ruling");
    expect(await Promise.all((await rulings.all()).map((one) => one.inputValue()))).toEqual(["", "hold", ""]);
    await page.close();
  });

  // The page's own policy (CSP level 3): scripts by hash alone, and no address to send anything to.
  it("runs no script but its own, and asks nothing of any host, even where markup got into it", async () => {
    let reached = 0;
    const host = createServer((_, response) => {
      reached += 1;
      response.end();
    });
    await new Promise<void>((done) => host.listen(0, "127.0.0.1", done));
    const { port } = host.address() as AddressInfo;
    const file = join(makeTemporaryFolder(), "pack.html");
    const evil = `<img src="http://127.0.0.1:${port}/x" onerror="document.title='taken'"><script>document.title='taken'</script><link rel="stylesheet" href="http://127.0.0.1:${port}/y">`;
    writeFileSync(file, packPage(PACK).replace("<main>", `<main>${evil}`));
    const page = await browser.newPage();
    await page.goto(pathToFileURL(file).href, { waitUntil: "networkidle" });
    expect([await page.title(), reached]).toEqual([expect.stringContaining("Review pack"), 0]);
    await page.close();
    host.close();
  });

  it("has one block a record with all its questions, what settles it, and text as text", async () => {
    const { page } = await open();
    expect(await page.locator("fieldset").count()).toBe(2);
    expect(await page.locator("fieldset").first().textContent()).toMatch(/does not have.*Is far from the others/s);
    expect(await page.locator("legend").first().textContent()).toContain('by the "mill" <b>');
    expect(await page.locator("table").textContent()).toContain("3 shorter than 5");
    await page.close();
  });

  it.each(["light", "dark"] as const)("passes the rules of accessibility in %s", async (colorScheme) => {
    const { page } = await open();
    await page.emulateMedia({ colorScheme });
    const { violations } = (await page.evaluate(`${axe.source}; axe.run()`)) as axe.AxeResults;
    expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
    await page.close();
  });
});
