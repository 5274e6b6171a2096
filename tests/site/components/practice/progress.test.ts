import { afterEach, expect, it, vi } from "vitest";
import {
  deviceStorage,
  forgetCourse,
  keepCourse,
  readCourse,
} from "../../../../src/site/components/practice/progress.ts";

afterEach(() => vi.restoreAllMocks());

it("practises where the browser forbids storage, and keeps nothing", () => {
  // With cookies blocked, browsers throw as soon as the storage is asked for (HTML, 12.2.3).
  vi.spyOn(globalThis, "localStorage", "get").mockImplementation(() => {
    throw new DOMException("denied", "SecurityError");
  });
  const storage = deviceStorage();
  const course = readCourse(storage, () => 7);
  expect(course.seed).toBe(7);
  keepCourse(storage, { ...course, answered: 3 });
  forgetCourse(storage);
  expect(readCourse(storage, () => 8)).toMatchObject({ seed: 8, answered: 0 });
});
