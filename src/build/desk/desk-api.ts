import { z } from "zod";
import { Mistake } from "../../mistake.ts";
import type { DeskFilter } from "../../review/desk/answers.ts";
import { aroundOf } from "../../review/desk/around.ts";
import { type Desk, readAgain } from "../../review/desk/desk.ts";
import { groupOf, linesOf, recordsOf } from "../../review/desk/lines.ts";
import { mapsOf } from "../../review/desk/map.ts";
import { overviewOf } from "../../review/desk/overview.ts";
import { recordOf } from "../../review/desk/record.ts";
import { rule, takeBack } from "../../review/desk/rule.ts";
import { FilterBody, RulingBody } from "../../review/desk/ruling-request.ts";
import { seasonOf } from "../../review/desk/season.ts";
import { traceOf } from "../../review/desk/trace.ts";

const TakeBackBody = z.strictObject({ id: z.string().min(1).max(200), who: z.string().max(200).default("") });

/** Answers what the page asks: undefined where there is no such thing. */
export interface DeskApi {
  get(path: string, query: URLSearchParams): Promise<unknown>;
  post(path: string, body: unknown): Promise<unknown>;
}

/**
 * The desk's questions and answers, one after the other on its database.
 *
 * @example await deskApi(desk).get("desk", new URLSearchParams())
 */
export function deskApi(desk: Desk): DeskApi {
  const maps = mapsOf(desk);
  const answers: Record<string, (rest: string[], query: URLSearchParams) => Promise<unknown>> = {
    desk: () => readAgain(desk).then(() => overviewOf(desk)),
    lines: (_, query) => linesOf(desk, filterOf(query), wholeNumber(query.get("start") ?? "0")),
    look: ([look], query) =>
      recordsOf(desk, wholeNumber(look), filterOf(query), wholeNumber(query.get("start") ?? "0")),
    group: ([look], query) => groupOf(desk, wholeNumber(look), filterOf(query)),
    record: ([record]) => recordOf(desk, wholeNumber(record)),
    around: ([record]) => aroundOf(desk, wholeNumber(record)),
    map: ([record]) => maps.map(wholeNumber(record)),
    land: (_, query) => Promise.resolve({ path: maps.land(query.get("crs") ?? "") }),
    season: (_, query) => seasonOf(desk, query.get("taxon") ?? ""),
    square: ([grid = "", code = ""]) => traceOf(desk, grid, code),
  };
  return {
    async get(path, query) {
      const [what = "", ...rest] = path.split("/");
      const answer = Object.hasOwn(answers, what) ? answers[what] : undefined;
      return answer === undefined ? undefined : desk.turn(() => answer(rest, query));
    },
    async post(path, body) {
      if (path === "rulings") {
        const request = read(RulingBody, body);
        return desk.turn(() => rule(desk, request));
      }
      if (path === "take-back") {
        const { id, who } = read(TakeBackBody, body);
        return desk.turn(() => takeBack(desk, id, who));
      }
      return undefined;
    },
  };
}

function filterOf(query: URLSearchParams): DeskFilter {
  const known = Object.keys(FilterBody.shape);
  return read(FilterBody, Object.fromEntries([...query].filter(([name]) => known.includes(name))));
}

function read<Body>(contract: z.ZodType<Body>, body: unknown): Body {
  const result = contract.safeParse(body);
  if (result.success) return result.data;
  const issue = result.error.issues[0];
  throw new Mistake(issue?.path.join(".") || "the request", "cannot be read", issue?.message ?? "send it again");
}

function wholeNumber(text: string | undefined): number {
  if (text === undefined || !/^\d{1,9}$/.test(text))
    throw new Mistake("a number", `is ${text ?? "missing"}`, "give a whole number");
  return Number(text);
}
