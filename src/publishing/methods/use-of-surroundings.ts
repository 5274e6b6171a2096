import type { Scheme } from "../../scheme/scheme.ts";
import { type Told, told } from "./statement.ts";

/** What the methods page says of the use of habitats and flowers; nothing where the scheme tells none apart. */
export function useStatements({ settings: { surroundings, group } }: Scheme): Told[] {
  if (surroundings.kinds.length === 0) return [];
  return [
    told("use-ratio", { group: group.one }),
    told("use-interval"),
    told("use-limits", { visits: surroundings.minimum_visits, term: surroundings.minimum_visits_of_term }),
  ];
}
