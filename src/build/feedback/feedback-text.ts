import { reasonInWords } from "../../records/reasons.ts";
import { isListed } from "../../review/for-others.ts";
import { wrapped } from "../../review/wrapped.ts";
import type { Scheme } from "../../scheme/scheme.ts";

/** How many of a recorder's records came to one status and reason. */
export interface Fate {
  recorder: string;
  status: "used" | "held" | "not used";
  reason: string;
  records: number;
}

/** A first record: of a taxon in a territory, of a taxon in a 10 km square, or of anything in one. */
export interface First {
  recorder: string;
  first_of: "territory" | "taxon" | "square";
  taxon_id: string;
  place: string;
}

/** A record that was given another name, and what that rests on. */
export interface Reidentified {
  recorder: string;
  record_key: string;
  said_name: string;
  said_date: string;
  said_place: string;
  name: string;
  part: string;
  why: string;
}

/** What a sheet is made of. */
export interface Feedback {
  name: string;
  year: number;
  fates: readonly Fate[];
  firsts: readonly First[];
  reidentified: readonly Reidentified[];
  /** 10 km squares that lack one visit. */
  squares: readonly string[];
}

/**
 * The sheet of feedback of one recorder and year, as plain text: what was received, used, held and why, what was
 * re-identified and by which part, what was first, and where one more visit counts.
 */
export function feedbackText(scheme: Scheme, feedback: Feedback): string {
  const { settings } = scheme;
  return [
    `${settings.title}: your records of ${feedback.year}`,
    `Dear ${feedback.name},`,
    wrapped(
      `thank you for your records of ${settings.group.many}. This is what became of those you made in ${feedback.year}.`,
    ),
    settings.invented ? wrapped("The records of this demonstration are invented, and so is everybody in it.") : "",
    fatesText(feedback.fates),
    reidentifiedText(feedback.reidentified),
    firstsText(scheme, feedback.firsts),
    squaresText(feedback.squares, settings.coverage.minimum_visits),
    settings.contact === "" ? settings.title : `${settings.title}, ${settings.contact}`,
  ]
    .filter(Boolean)
    .join("\n\n")
    .concat("\n");
}

function fatesText(fates: readonly Fate[]): string {
  const received = fates.reduce((sum, { records }) => sum + records, 0);
  const lines = (["used", "held", "not used"] as const).flatMap((status) => {
    const own = fates.filter((fate) => fate.status === status);
    const all = own.reduce((sum, { records }) => sum + records, 0);
    const why = own.filter(({ reason }) => reason !== "used");
    return [
      `${String(all).padStart(8)}  ${status}`,
      ...why.map(({ records, reason }) => `${String(records).padStart(8)}    ${reasonInWords(reason)}`),
    ];
  });
  return [`Received: ${received}`, ...lines].join("\n");
}

function reidentifiedText(records: readonly Reidentified[]): string {
  if (records.length === 0) return "";
  const lines = records.map(({ said_name, said_date, said_place, name, part, why, record_key }) => {
    const because = [part && `seen on the ${part}`, why].filter(Boolean).join("; ");
    return wrapped(
      `${said_name}, ${said_date}, ${said_place} (${record_key}) is now ${name}${because && `: ${because}`}.`,
      "  ",
    );
  });
  return ["Named otherwise after a second look:", ...lines].join("\n");
}

function firstsText(scheme: Scheme, all: readonly First[]): string {
  const { taxa, settings } = scheme;
  // That a square is a first, or is not, tells whether others saw it there, which of a withheld taxon nobody is told.
  const firsts = all.filter(({ taxon_id }) => !isListed(scheme, taxon_id, "withheld"));
  const nameOf = (id: string) => taxa.find(({ taxonID }) => taxonID === id)?.scientificName ?? id;
  const territory = (id: string) => settings.territories.find((one) => one.id === id)?.name ?? id;
  const of = (kind: First["first_of"]) => firsts.filter(({ first_of }) => first_of === kind);
  const bySpecies = [...Map.groupBy(of("taxon"), ({ taxon_id }) => taxon_id)].map(
    ([taxon, squares]) => `${nameOf(taxon)}: ${squares.map(({ place }) => place).join(", ")}`,
  );
  const parts = [
    ...of("territory").map(({ taxon_id, place }) => `The first record of ${nameOf(taxon_id)} in ${territory(place)}.`),
    ...(of("square").length === 0
      ? []
      : [
          `10 km squares nobody had recorded in: ${of("square")
            .map(({ place }) => place)
            .join(", ")}.`,
        ]),
    ...(bySpecies.length === 0 ? [] : [`10 km squares new for a species: ${bySpecies.join("; ")}.`]),
  ];
  return parts.length === 0 ? "" : ["What you added:", ...parts.map((part) => wrapped(part, "  "))].join("\n");
}

function squaresText(squares: readonly string[], visits: number): string {
  if (squares.length === 0) return "";
  return wrapped(
    `One more visit, with a list of all you see, would make these 10 km squares count as covered (${visits} visits): ${squares.slice(0, 20).join(", ")}. Only where you may go: ask leave, mind water and weather, and do not go alone where that is not safe.`,
  );
}
