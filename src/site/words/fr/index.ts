import book from "./book.ts";
import layout from "./layout.ts";

export default { ...book, ...layout };
