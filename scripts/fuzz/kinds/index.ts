import type { Kind } from "../trial.ts";
import { castes } from "./castes.ts";
import { coordinates } from "./coordinates.ts";
import { counts } from "./counts.ts";
import { dates } from "./dates.ts";
import { eastings } from "./eastings.ts";
import { europeanCells } from "./european-cells.ts";
import { military } from "./military.ts";
import { names } from "./names.ts";
import { references } from "./references.ts";

/** Kinds of input that are one value each. Files, which need a database and a folder, are made by `fileKind`. */
export const VALUE_KINDS = [
  references,
  europeanCells,
  military,
  coordinates,
  eastings,
  dates,
  names,
  castes,
  counts,
] as readonly Kind[];
