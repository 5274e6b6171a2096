import { describe, expect, it } from "vitest";
import { elementOf, normalSvg } from "./normal-svg.ts";

describe("elementOf", () => {
  it("takes an element with those of its own name inside it", () => {
    const page = '<p><svg class="b"/></p><svg class="a"><svg class="c"><g/></svg><svg/></svg><svg class="a"/>';
    expect(elementOf(page, "svg", 'class="a"')).toBe('<svg class="a"><svg class="c"><g/></svg><svg/></svg>');
    expect(elementOf(page, "svg", 'class="b"')).toBe('<svg class="b"/>');
    expect(() => elementOf(page, "svg", 'class="z"')).toThrow("no svg");
  });
});

describe("normalSvg", () => {
  it("sorts attributes and rounds the numbers of a drawing, and no others", () => {
    expect(normalSvg('<g y="1.26" class="of-1.25" x="2"><path d="M.25.31-1.04h2"/><text>1.25</text></g>')).toBe(
      '<g class="of-1.25" x="2" y="1.3">\n  <path d="M 0.3 0.3 -1 h 2">\n  <text>\n    1.25\n',
    );
  });
  it("reads two ways of writing one drawing alike", () => {
    expect(normalSvg('<path d="M-0.01 50%" transform="scale(.125)"/>')).toBe(
      normalSvg('<path   transform="scale( 0.12 )" d="M0 50.0%"/>'),
    );
  });
});
