import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import {
  accounts,
  type CharacterCells,
  frontAndProse,
  list,
  rowsOf,
  slugsIn,
  type TaxonRow,
  textOf,
} from "./read-demonstration.ts";

/** Rows of the bee's body plan, from face to wings. */
const PARTS = ["face", "collar", "mid-thorax", "rear-thorax", "T1", "T2", "T3", "T4", "T5", "T6", "hind-leg", "wings"];
/** Colours the body plan can draw, and the two words for a mark that is not there or not constant. */
const COLOURS = [
  "black",
  "yellow",
  "lemon",
  "white",
  "red",
  "orange",
  "buff",
  "ginger",
  "brown",
  "grey",
  "smoky",
  "clear",
];
const STATES = [...COLOURS, "none", "varies"];
/** Marks that may follow a colour. */
const MARKS = ["sides", "broken"];
const PLACE_OR_TREND =
  /Scotland|Scottish|Highlands|England|Wales|Ireland|Britain|British|Channel Islands|Hebrides|Shetland|Orkney|\bnorth|\bsouth|\beast|\bwest|spread|declin|fell |falls |recover|newly found|not refound|widespread/i;

const settings = parse(textOf("atlas.yaml")) as {
  invented: boolean;
  castes: { id: string }[];
  first_seen: { id: string }[];
  sources: { id: string; files: string; licence: string; target?: string }[];
};
const taxa = rowsOf<TaxonRow>("checklist.csv");
const characters = rowsOf<CharacterCells>("characters.csv");
const texts = accounts();
const byId = new Map(taxa.map((taxon) => [taxon.taxonID, taxon]));
const castesOf = (id: string) => list(byId.get(id)?.castes ?? "");
const usual = (id: string, part: string, caste: string) =>
  characters.filter(
    (row) =>
      row.taxonID === id &&
      row.part === part &&
      row.form === "" &&
      (row.castes === "" || list(row.castes).includes(caste)),
  );

describe("the checklist", () => {
  it("gives each taxon an id of its own that begins invented-", () => {
    expect(byId.size).toBe(taxa.length);
    expect(taxa.filter((taxon) => !/^invented-[a-z-]+$/.test(taxon.taxonID))).toEqual([]);
  });

  it("gives each name to one taxon only", () => {
    const names = taxa.flatMap((taxon) => [taxon.scientificName, ...list(taxon.synonyms)]);
    expect(names.filter((name, index) => names.indexOf(name) !== index)).toEqual([]);
  });

  it("puts taxa within aggregates that it holds, without a circle", () => {
    const above = (id: string, path: string[]): string[] => {
      expect(path).not.toContain(id);
      return list(byId.get(id)?.within ?? "").flatMap((parent) => [parent, ...above(parent, [...path, id])]);
    };
    for (const taxon of taxa)
      for (const parent of above(taxon.taxonID, [])) expect(byId.get(parent)?.taxonRank).toBe("speciesAggregate");
  });

  it("holds the white-tailed aggregate and the buff-tailed bumblebee within one group", () => {
    expect(byId.get("invented-lucorum-agg")?.within).toBe("invented-terrestris-lucorum-group");
    expect(byId.get("invented-terrestris")?.within).toBe("invented-terrestris-lucorum-group");
  });

  // Common practice: cuckoo bumblebees (subgenus Psithyrus) rear no workers, and their females are no queens.
  it("allows females and males for cuckoos, queens, workers and males for all others", () => {
    for (const taxon of taxa)
      expect(list(taxon.castes)).toEqual(
        taxon.subgenus === "Psithyrus" ? ["female", "male"] : ["queen", "worker", "male"],
      );
  });

  it("uses castes and what-you-see-first groups of the settings, each group at least once", () => {
    const castes = settings.castes.map((caste) => caste.id);
    expect(taxa.flatMap((taxon) => list(taxon.castes)).filter((caste) => !castes.includes(caste))).toEqual([]);
    expect([...new Set(taxa.map((taxon) => taxon.firstSeen))].sort()).toEqual(
      settings.first_seen.map((group) => group.id).sort(),
    );
  });
});

describe("the characters", () => {
  it("fill each row of the body plan once for each caste of each taxon", () => {
    const wrong = taxa.flatMap(({ taxonID }) =>
      castesOf(taxonID).flatMap((caste) =>
        PARTS.filter((part) => usual(taxonID, part, caste).length !== 1).map((part) => `${taxonID} ${caste} ${part}`),
      ),
    );
    expect(wrong).toEqual([]);
  });

  it("name colours that can be drawn, in words of at most eight letters", () => {
    const rows = characters.filter((row) => PARTS.includes(row.part) && byId.has(row.taxonID));
    const [colours, marks] = [
      rows.map(({ state }) => state.split(" ")[0] ?? ""),
      rows.map(({ state }) => state.split(" ").slice(1)),
    ];
    expect(colours.filter((colour) => !STATES.includes(colour) || colour.length > 8)).toEqual([]);
    expect(marks.filter((mark) => mark.length > 1 || mark.some((word) => !MARKS.includes(word)))).toEqual([]);
  });

  it("name both states of what varies", () => {
    for (const row of characters.filter((row) => row.state === "varies" && PARTS.includes(row.part))) {
      const [, one, other] = row.note.match(/^(\w+) or (\w+)[:.]/) ?? [];
      expect(COLOURS, `${row.taxonID} ${row.part}: ${row.note}`).toContain(one);
      expect(COLOURS, `${row.taxonID} ${row.part}: ${row.note}`).toContain(other);
      expect(one).not.toBe(other);
    }
  });

  it("belong to taxa of the checklist and to castes these can have", () => {
    const own = characters.filter((row) => row.taxonID !== "*" && !row.taxonID.startsWith("outside-"));
    expect(own.filter((row) => list(row.castes).some((caste) => !castesOf(row.taxonID).includes(caste)))).toEqual([]);
    expect(own.filter((row) => !byId.has(row.taxonID))).toEqual([]);
  });

  it("say how far to trust them and what shows them", () => {
    expect(characters.filter((row) => !["settles", "supports", "misleads"].includes(row.reliability))).toEqual([]);
    expect(characters.filter((row) => !["sight", "photograph", "specimen"].includes(row.evidence))).toEqual([]);
  });

  it("give no pollen basket to a female cuckoo", () => {
    for (const taxon of taxa.filter(({ subgenus }) => subgenus === "Psithyrus"))
      expect(usual(taxon.taxonID, "hind-leg", "female")[0]?.state).toBe("none");
  });

  it("leave room in a group for what its members show", () => {
    const statesOf = (id: string, part: string, caste: string) => {
      const row = usual(id, part, caste)[0];
      return row?.state === "varies" ? (row.note.match(/^(\w+) or (\w+)/) ?? []).slice(1) : [row?.state];
    };
    const refused = taxa.flatMap(({ taxonID, within }) =>
      list(within).flatMap((group) =>
        castesOf(group).flatMap((caste) =>
          PARTS.filter((part) => {
            const allowed = statesOf(group, part, caste);
            return !statesOf(taxonID, part, caste).some((state) => allowed.includes(state));
          }).map((part) => `${group} refuses ${taxonID} for its ${caste}’s ${part}`),
        ),
      ),
    );
    expect(refused).toEqual([]);
  });
});

describe("the accounts", () => {
  it("are one a taxon, in a file named after its id", () => {
    expect(texts.map((text) => `invented-${text.slug}`).sort()).toEqual([...byId.keys()].sort());
    expect(texts.filter((text) => text.front.taxonID !== `invented-${text.slug}`)).toEqual([]);
  });

  it("lead with one sentence", () => {
    expect(texts.filter(({ front }) => !/^[A-Z][^.!?]*\.$/.test(front.lead)).map(({ slug }) => slug)).toEqual([]);
  });

  it("give each caste the size that the characters give it", () => {
    for (const { front } of texts) {
      expect(front.sizes.map((size) => size.caste)).toEqual(castesOf(front.taxonID));
      for (const { caste, mm, note } of front.sizes) {
        expect(usual(front.taxonID, "size", caste).map((row) => row.state)).toEqual([`${mm[0]}–${mm[1]} mm`]);
        expect(note).toMatch(/\.$/);
      }
    }
  });

  it("name look-alikes that exist, other than the taxon, each with a difference", () => {
    for (const { slug, front } of texts) {
      expect(front.look_alikes.length, slug).toBeGreaterThan(0);
      for (const look of front.look_alikes) {
        expect((look.taxonID === undefined) !== (look.outside === undefined), slug).toBe(true);
        if (look.taxonID !== undefined)
          expect(
            [...byId.keys()].filter((id) => id !== front.taxonID),
            slug,
          ).toContain(look.taxonID);
        expect(look.difference, slug).toMatch(/\.$/);
      }
    }
  });

  it("hold 120 to 250 words of prose under the same headings in the same order", () => {
    for (const { slug, prose } of texts) {
      expect(prose.match(/^## .*$/gm), slug).toEqual(["## How to know it", "## Habitat", "## Where", "## Records"]);
      const words = prose
        .replace(/^## .*$/gm, "")
        .split(/\s+/)
        .filter(Boolean).length;
      expect(words, slug).toBeGreaterThanOrEqual(120);
      expect(words, slug).toBeLessThanOrEqual(250);
    }
  });

  it("speak of places and trends only as invented", () => {
    const passages = [
      ...texts.flatMap(({ front, prose }) => [front.lead, front.evidence, ...prose.split("\n\n")]),
      ...texts.flatMap(({ front }) => [
        ...front.sizes.map((size) => size.note),
        ...front.look_alikes.map((look) => look.difference),
      ]),
      ...characters.map((row) => row.note),
    ];
    expect(passages.filter((passage) => PLACE_OR_TREND.test(passage) && !/invented/.test(passage))).toEqual([]);
    for (const { slug, prose } of texts) expect(prose.split("## Where")[1]?.split("## ")[0], slug).toMatch(/invented/);
  });

  it("keep to the words that the atlas shows", () => {
    const avoided = /on the wing|\bgained\b|\bretained\b|rejected|extinct|what could it be|hotspot|under-recorded/i;
    expect(texts.filter(({ front, prose }) => avoided.test(`${front.lead} ${prose}`)).map(({ slug }) => slug)).toEqual(
      [],
    );
  });
});

describe("the settings and pages", () => {
  it("mark the scheme as invented", () => {
    expect(settings.invented).toBe(true);
    for (const slug of slugsIn("pages/")) expect(frontAndProse(`pages/${slug}.md`).prose, slug).toMatch(/invented/);
  });

  it("link the safety, accessibility and about pages from the foot of every page", () => {
    expect(slugsIn("pages/").sort()).toEqual(["about", "accessibility", "safety"]);
    for (const slug of slugsIn("pages/"))
      expect((frontAndProse(`pages/${slug}.md`).front as { footer: boolean }).footer, slug).toBe(true);
  });

  it("name a file and a licence for each source, and a known taxon for a targeted survey", () => {
    for (const source of settings.sources) {
      expect(source.files).toBe(`records/${source.id}.csv`);
      expect(source.licence).toBe("CC-BY-4.0");
      if (source.target !== undefined) expect([...byId.keys()]).toContain(source.target);
    }
  });
});
