import type { AroundAnswer, DeskAnswer, MapAnswer, RecordAnswer, SeasonAnswer } from "../../../review/desk/answers.ts";
import { AT, ask, Refused } from "./ask.ts";
import { button, element } from "./dom.ts";
import { filterForm } from "./filter-form.ts";
import { keep, kept } from "./kept.ts";
import { listen } from "./keys.ts";
import { Ledger, type Row } from "./ledger.ts";
import { mapFigure } from "./map-figure.ts";
import { aroundSection, type RecordActs, recordPage } from "./record-page.ts";
import { type Draft, Rulings } from "./rulings.ts";
import { seasonFigure } from "./season-figure.ts";
import { openSheet } from "./sheets.ts";
import { squarePage } from "./square-page.ts";

const KEYS: readonly (readonly [key: string, word: string, says: string])[] = [
  ["u", "Use", "the record is used as it stands"],
  ["h", "Hold", "it waits, and is not used meanwhile"],
  ["l", "Leave out", "it is not used"],
  ["c", "Correct", "a field is read otherwise; a proposal stands there already"],
  ["r", "Re-identify", "it is another taxon"],
  ["i", "Identification", "what is known of it"],
  ["p", "Part seen", "what it rests on"],
  ["w", "Why", "in words"],
  ["b", "Whole look", "one ruling for all records of the look"],
  ["z", "Take back", "the last ruling of this window"],
];

void begin();

async function begin(): Promise<void> {
  const [, , page, grid, code] = location.pathname.split("/");
  try {
    if (page === "square" && grid !== undefined && code !== undefined)
      document.body.append(await squarePage(grid, decodeURIComponent(code)));
    else await openDesk(await ask<DeskAnswer>("desk"));
  } catch (error) {
    document.body.append(
      element(
        "main",
        { class: "page" },
        element("p", { role: "alert" }, error instanceof Refused ? error.message : String(error)),
      ),
    );
    throw error;
  }
}

async function openDesk(desk: DeskAnswer): Promise<void> {
  document.title = `Review desk: ${desk.title}`;
  const article = element("main", { class: "record", id: "record", tabindex: "-1" });
  const said = element("p", { id: "told", role: "status" });
  const drafted = element("p", { class: "drafted" });
  const answers = new Map<number, Promise<RecordAnswer>>();
  let shown: RecordAnswer | undefined;

  const fetched = (record: number): Promise<RecordAnswer> => {
    const known = answers.get(record) ?? ask<RecordAnswer>(`record/${record}`);
    answers.set(record, known);
    known.catch(() => answers.delete(record));
    if (answers.size > 60) for (const old of [...answers.keys()].slice(0, 20)) answers.delete(old);
    return known;
  };
  const screen = (name: "ledger" | "record") => {
    document.body.dataset["screen"] = name;
  };
  const tell = (text: string, isBad = false) => {
    said.textContent = text;
    said.classList.toggle("bad", isBad);
  };
  let wanted = 0;
  const show = async (record: number): Promise<void> => {
    wanted = record;
    const answer = await fetched(record);
    if (wanted !== record) return;
    shown = answer;
    article.replaceChildren(recordPage(answer, desk, acts));
    article.scrollTop = 0;
    article.dataset["record"] = String(record);
    const next = ledger.next();
    if (next !== undefined) void fetched(next.line.record).catch(() => {});
    await figures(answer, desk, acts, () => wanted === record);
  };
  const chosen = (row: Row, opened: boolean) => {
    if (opened && (row.kind === "record" || row.line.records === 1)) {
      screen("record");
    }
    show(row.line.record).catch((error: unknown) => tell(String(error), true));
  };
  const ledger = new Ledger(chosen);
  const filter = filterForm(desk, () => {
    void ledger.load(filter.read());
  });
  const rulings = new Rulings({
    desk,
    ledger,
    record: () => shown,
    advance: () => ledger.advance(),
    tell,
    draftChanged: (draft: Draft) => {
      const parts = [draft.identification, draft.partSeen && `seen: ${draft.partSeen}`, draft.why].filter(Boolean);
      drafted.textContent = parts.length === 0 ? "" : `With the next ruling: ${parts.join("; ")}`;
    },
    settled: (records, ruling) => {
      for (const record of records) answers.delete(record);
      if (records.length > 1) ledger.mark(new Set(records), ruling);
      if (shown !== undefined && records.includes(shown.record)) void show(shown.record);
      if (records.length > 1 && ruling !== "") void ledger.advance();
    },
  });
  const acts: RecordActs = {
    open: (record) => {
      location.hash = `record-${record}`;
    },
    link: (ruling, key) => void rulings.rule(ruling, key),
    correct: () => rulings.correct(),
    whole: () => void rulings.whole(),
    back: () => {
      screen("ledger");
      ledger.current?.node.querySelector("button")?.focus();
    },
  };
  const enter = () => {
    const row = ledger.current;
    if (row?.kind === "look" && row.line.records > 1) void ledger.toggle();
    else {
      screen("record");
      document.getElementById("record-name")?.focus();
    }
  };
  const does: Record<string, () => void> = {
    j: () => void ledger.step(1),
    k: () => void ledger.step(-1),
    ArrowDown: () => void ledger.step(1),
    ArrowUp: () => void ledger.step(-1),
    Enter: enter,
    Escape: acts.back,
    u: () => void rulings.rule("use"),
    h: () => void rulings.rule("hold"),
    l: () => void rulings.rule("leave out"),
    c: () => rulings.correct(),
    r: () => rulings.reidentify(),
    i: () => rulings.identify(),
    p: () => rulings.part(),
    w: () => rulings.why(),
    b: () => void rulings.whole(),
    z: () => rulings.takeBack(),
    "/": () => filter.focus(),
    "?": () => keysSheet(),
  };
  screen("ledger");
  document.body.append(
    element("a", { class: "skip", href: "#record" }, "To the record"),
    mast(desk),
    element("nav", { class: "ledger", "aria-label": "Questions" }, filter.node, ledger.count, ledger.node, ledger.foot),
    article,
    element(
      "footer",
      { class: "bar" },
      element("div", { class: "told" }, said, drafted),
      element(
        "div",
        { role: "toolbar", "aria-label": "Rulings" },
        ...KEYS.map(([key, word]) => button({}, () => does[key]?.(), element("kbd", {}, key), ` ${word}`)),
      ),
    ),
  );
  listen(does);
  const byAddress = () => {
    const record = Number(/^#record-(\d+)$/.exec(location.hash)?.[1] ?? 0);
    if (record === 0) return;
    screen("record");
    show(record).catch((error: unknown) => tell(String(error), true));
  };
  window.addEventListener("hashchange", byAddress);
  await ledger.load(filter.read());
  byAddress();
}

/** Map, season and other records, each as it comes, while the record is still the one that is wanted. */
async function figures(
  record: RecordAnswer,
  desk: DeskAnswer,
  acts: RecordActs,
  isWanted: () => boolean,
): Promise<void> {
  const put = async (id: string, nodes: Promise<HTMLElement[]>) => {
    const ready = await nodes;
    if (!isWanted()) return;
    const place = document.getElementById(id);
    place?.replaceChildren(...ready);
    place?.removeAttribute("aria-busy");
  };
  const map = async () => [await mapFigure(await ask<MapAnswer>(`map/${record.record}`), record, desk)];
  const season = async () => [
    seasonFigure(
      record.taxon === null
        ? { castes: [], visits: [] }
        : await ask<SeasonAnswer>(`season?taxon=${encodeURIComponent(record.taxon.id)}`),
      record,
      desk,
    ),
  ];
  await Promise.all([put("map", map()), put("season", season())]);
  if (isWanted())
    await put(
      "around",
      ask<AroundAnswer>(`around/${record.record}`).then((around) => aroundSection(around, record, acts)),
    );
}

function mast({ title, invented }: DeskAnswer): HTMLElement {
  const who = element("input", {
    id: "who",
    value: kept("who"),
    autocomplete: "off",
    size: 10,
    placeholder: "role or initials",
  });
  who.addEventListener("input", () => Rulings.remember(who.value));
  return element(
    "header",
    { class: "mast" },
    element("p", { class: "title" }, element("a", { href: AT }, "Review desk"), " ", element("span", {}, title)),
    element("p", { class: "small" }, invented ? "Invented records. " : "", "Private: it shows people and places."),
    element(
      "label",
      {},
      "Ruling as ",
      who,
      element("span", { class: "unseen" }, ". A name is personal data: give a role or initials."),
    ),
    button({ class: "quiet" }, keysSheet, "Keys ", element("kbd", {}, "?")),
  );
}

function keysSheet(): void {
  const off = element("input", { type: "checkbox", name: "keys" });
  off.checked = kept("keys") !== "off";
  off.addEventListener("change", () => keep("keys", off.checked ? "" : "off"));
  const rows: readonly (readonly [string, string])[] = [
    ["j k ↓ ↑", "next and last line"],
    ["Enter", "unfold a look, or read the record"],
    ["Esc", "back to the list"],
    ["/", "find"],
    ...KEYS.map(([key, word, says]) => [key, `${word}: ${says}`] as const),
  ];
  openSheet(
    "Keys",
    [
      element(
        "dl",
        { class: "keys" },
        ...rows.flatMap(([key, says]) => [element("dt", {}, element("kbd", {}, key)), element("dd", {}, says)]),
      ),
      element("label", { class: "check" }, off, "single letters rule"),
      element(
        "p",
        { class: "small" },
        "Who rules is kept with each ruling: give a role or initials, for a name is personal data.",
      ),
    ],
    () => {},
    "Good",
  );
}
