import body from "./body.ts";
import find from "./find.ts";
import inSeason from "./in-season.ts";
import layout from "./layout.ts";
import lists from "./lists.ts";
import maps from "./maps.ts";
import takePart from "./take-part.ts";
import text from "./text.ts";

export default { ...takePart, ...inSeason, ...find, ...body, ...layout, ...text, ...maps, ...lists };
