/** What a published table is, and short ways of writing its columns. */

export interface Field {
  name: string;
  type: "string" | "integer" | "number" | "boolean" | "year";
  description: string;
}

export interface PublishedTable {
  name: string;
  title: string;
  description: string;
  fields: Field[];
  primaryKey: string[];
  foreignKeys: { fields: string[]; table: string; to: string[] }[];
  /** Gives the fields in order, rows in any; `invented` is added by the writer. */
  query: string;
  /** What a scheme must have for the table to be written; nothing where not given. */
  needs?: "regions" | "surroundings" | "large group";
  /** Order of the rows, as SQL; by all fields where not given. */
  order?: string;
}

/** A column of text. @example text("grid", "grid system").type // => "string" */
export const text = (name: string, description: string): Field => ({ name, type: "string", description });
/** A column of whole numbers. @example whole("visits", "visits").type // => "integer" */
export const whole = (name: string, description: string): Field => ({ name, type: "integer", description });
/** A column of numbers. @example number("low", "lower end").type // => "number" */
export const number = (name: string, description: string): Field => ({ name, type: "number", description });
/** A column of calendar years. @example year("first_year", "earliest year").type // => "year" */
export const year = (name: string, description: string): Field => ({ name, type: "year", description });
/** A column of true and false. @example yes("judged", "whether it speaks").type // => "boolean" */
export const yes = (name: string, description: string): Field => ({ name, type: "boolean", description });

export const TAXON = text("taxon_id", "identifier of the taxon in the scheme's checklist");
export const SQUARE = [
  text("territory", "territory of the atlas the square is counted in"),
  text("grid", "grid system: british, irish, channel-islands, laea or mgrs"),
  whole("resolution_m", "side of the square in metres: 10000 or 2000"),
  text("square", "reference of the square; NA… is a hectad, not a missing value"),
];
export const PERIOD = text("period", "identifier of the period; outside for records inside no period");
export const TAXON_KEY = { fields: ["taxon_id"], table: "taxa", to: ["taxon_id"] };
export const SQUARE_KEY = { fields: ["grid", "square"], table: "squares", to: ["grid", "square"] };
/** A period by its id, `outside` for none, as SQL. @example periodId("period") // => "coalesce(p.id, 'outside') AS period" */
export const periodId = (column: string) => `coalesce(p.id, 'outside') AS ${column}`;
/** Joins the period of a table's row, as SQL. @example ofPeriod("t") // => "LEFT JOIN periods AS p ON p.period = t.period" */
export const ofPeriod = (table: string) => `LEFT JOIN periods AS p ON p.period = ${table}.period`;
