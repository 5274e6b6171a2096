import book from "./book.ts";
import layout from "./layout.ts";
import text from "./text.ts";

export default { ...book, ...layout, ...text };
