import layout from "./layout.ts";

export default { ...layout };
