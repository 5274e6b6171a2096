import layout from "./layout.ts";
import text from "./text.ts";

export default { ...layout, ...text };
