import { Mistake } from "../../src/mistake.ts";

/** The message of the Mistake that a call throws; anything else it throws is thrown on. */
export function mistakeOf(call: () => unknown): string {
  try {
    call();
  } catch (error) {
    if (error instanceof Mistake) return error.message;
    throw error;
  }
  return "no mistake";
}
