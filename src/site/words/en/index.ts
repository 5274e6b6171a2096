import body from "./body.ts";
import book from "./book.ts";
import layout from "./layout.ts";
import offline from "./offline.ts";
import text from "./text.ts";

export default { ...offline, ...body, ...book, ...layout, ...text };
