/** Corners of the polygon that stands for a circle. */
const CORNERS = 720;
/** Its area is less than the circle's by this share, which bounds the error of a share: 1 − sin(2π/n)/(2π/n). */
export const OVERLAP_ERROR = 1.3e-5;

type Point = readonly [x: number, y: number];

/** Share of a circle's area inside a square, by cutting a polygon of 720 corners at the four sides (Sutherland and Hodgman 1974). */
export function shareByClipping(cx: number, cy: number, r: number, west: number, south: number, size: number): number {
  let polygon: Point[] = Array.from({ length: CORNERS }, (_, i) => {
    const angle = (2 * Math.PI * i) / CORNERS;
    return [(cx - west + r * Math.cos(angle)) / size, (cy - south + r * Math.sin(angle)) / size];
  });
  const whole = area(polygon);
  for (const inside of [([x]: Point) => x, ([x]: Point) => 1 - x, ([, y]: Point) => y, ([, y]: Point) => 1 - y])
    polygon = cut(polygon, inside);
  return area(polygon) / whole;
}

/** What of a polygon lies where a distance is not negative. */
function cut(polygon: readonly Point[], inside: (point: Point) => number): Point[] {
  const kept: Point[] = [];
  polygon.forEach((point, i) => {
    const before = polygon.at(i - 1) as Point;
    const [a, b] = [inside(before), inside(point)];
    if (a < 0 !== b < 0) {
      const t = a / (a - b);
      kept.push([before[0] + t * (point[0] - before[0]), before[1] + t * (point[1] - before[1])]);
    }
    if (b >= 0) kept.push(point);
  });
  return kept;
}

/** Area by the shoelace formula. */
function area(polygon: readonly Point[]): number {
  const twice = polygon.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = polygon[(i + 1) % polygon.length] as Point;
    return sum + x * nextY - nextX * y;
  }, 0);
  return Math.abs(twice) / 2;
}
