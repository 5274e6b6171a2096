import { describe, expect, it } from "vitest";
import { bodyPlan } from "../../../../src/site/components/identify/body-plan.ts";
import { partState } from "../../../../src/site/components/identify/part-state.ts";
import type { RibbonColumn } from "../../../../src/site/components/identify/ribbon.ts";
import { drawnShapes } from "../../../../src/site/components/identify/shape-class.ts";

function column(states: Record<string, string>, castes: string[] = []): RibbonColumn {
  const entries = Object.entries(states).flatMap(([part, state]) => {
    const read = partState([{ state, note: "" }]);
    return read === undefined ? [] : [[part, read] as const];
  });
  return { label: "", castes, form: "", states: new Map(entries) };
}
function drawn(id: string, states: Record<string, string>, mini = false, castes: string[] = []) {
  const plan = bodyPlan(id);
  return drawnShapes((mini ? plan?.mini : plan?.figure) ?? [], column(states, castes), mini);
}
const classOf = (shapes: ReturnType<typeof drawn>, href: string) =>
  shapes.filter((shape) => shape.href === href).map(({ className }) => className);

describe("drawnShapes", () => {
  it("colours each part by its row, and what is not described as unknown", () => {
    const shapes = drawn("bee", { T4: "red" });
    expect(classOf(shapes, "#bee-T4")).toEqual(["pile-red"]);
    expect(classOf(shapes, "#bee-T5")).toEqual(["pile-unknown"]);
  });
  it("lays a dark mark over the colour: cut on a bee, stretched over a segment of a damselfly", () => {
    const bee = drawn("bee", { T3: "yellow sides" });
    expect(classOf(bee, "#bee-T3")).toEqual(["pile-yellow", "pile-black mark"]);
    expect(bee.filter(({ clip }) => clip !== undefined).map(({ clip }) => clip)).toEqual(["url(#bee-mark-sides)"]);
    const damselfly = drawn("damselfly", { S2: "blue stalked", S3: "blue" });
    expect(damselfly.filter(({ href }) => href.startsWith("#mark-")).map(({ href }) => href)).toEqual([
      "#mark-stalked",
    ]);
  });
  it("draws the eyes of a fly apart only where they are", () => {
    const eyes = (state: string) =>
      drawn("hoverfly", { eyes: state })
        .map(({ href }) => href)
        .filter((href) => href.includes("eyes"));
    expect(eyes("large")).toEqual(["#hoverfly-eyes"]);
    expect(eyes("apart")).toEqual(["#hoverfly-eyes-apart"]);
  });
  it("gives males of bees longer antennae", () => {
    const antennae = (castes: string[]) =>
      drawn("bee", {}, false, castes)
        .map(({ href }) => href)
        .filter((href) => href.includes("antennae"));
    expect(antennae(["male"])).toEqual(["#bee-antennae-male"]);
    expect(antennae(["queen", "worker"])).toEqual(["#bee-antennae"]);
  });
  it("shows the small bee's hind legs only where they have a colour of their own", () => {
    const legs = (state: string) =>
      drawn("bee", { "hind-leg": state }, true).filter(({ href }) => href.includes("hind-leg")).length;
    expect(["black", "none", "orange"].map(legs)).toEqual([0, 0, 2]);
  });
});
