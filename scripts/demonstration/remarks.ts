import type { Random } from "./random.ts";

const REMARKS = [
  "on bramble",
  "on comfrey",
  "on red clover",
  "on lavender",
  "on knapweed",
  "on thistle",
  "on heather",
  "on foxglove",
  "nest in bird box",
  "many, not counted",
  "worn",
  "flying low over grass",
  "dead on path",
  "on sallow catkins",
  "garden, near the compost",
  "sheltering from rain",
  "several more not caught",
  "photograph kept",
  "on viper's-bugloss",
];

/** A remark on some rows, with commas and quotes among them; empty on most. @example remark(random) // "" */
export function remark(random: Random): string {
  return random.chance(0.12) ? random.pick(REMARKS) : "";
}

/** A recorder's key as typed: a few are spelt otherwise. @example typedKey("invented-recorder-017", random) */
export function typedKey(key: string, random: Random): string {
  const way = random.next();
  return way < 0.97 ? key : way < 0.98 ? key.toUpperCase() : way < 0.99 ? key.replaceAll("-", " ") : ` ${key}`;
}
