import type { Species } from "./species.ts";
import type { Surroundings } from "./surroundings.ts";

/** North of a line, 0 to 1 over 150 km. */
function north(place: Surroundings, line: number): number {
  return Math.max(0, Math.min(1, (place.y - line) / 150));
}

function inIreland(place: Surroundings): number {
  return place.territory === "ireland" ? 1 : 0;
}

/** The islands and mainland of the invented north and west, where two scarce species hold on. */
function farNorthWest(place: Surroundings): number {
  return north(place, 780) * (place.x < 330 ? 1 : 0.2) * Math.min(1, 0.35 + place.coast);
}

/** Where a species that was once widespread holds on: the far north of Britain, the far west of Ireland. */
function isRefuge(place: Surroundings): boolean {
  return place.territory === "ireland" ? place.x < -80 : place.y > 780;
}

/** Away from the coast and south of the hills of the north, in Britain. */
function inlandSouth({ territory, coast, y }: Surroundings): number {
  return territory === "britain" && coast === 0 && y < 560 ? 1.5 : 0;
}

/** Species with queens, workers and males. All numbers are invented. */
export const species: readonly Species[] = [
  {
    taxonId: "invented-terrestris",
    common: 5,
    flights: { queen: [2.2, 4, 6], worker: [3.5, 7, 10.3], male: [6, 8, 10.2] },
    numbers: { queen: 0.6, male: 0.5 },
    second: { queen: [8.5, 10, 12], worker: [10.8, 12.2, 13.6] },
    home: (p) => 0.6 + 3.4 * p.warmth - 3 * p.height + 1.2 * p.cover,
    change: (p, epoch) => (epoch === "2006–2024" ? 1.4 * north(p, 600) : -0.2),
  },
  {
    taxonId: "invented-lucorum-agg",
    common: 4,
    flights: { queen: [3, 4.6, 7], worker: [4.6, 7.2, 9.8], male: [6.2, 8, 10] },
    numbers: { queen: 0.6, male: 0.6 },
    home: (p) => 2.2 - 0.8 * p.warmth + 0.8 * p.heath,
  },
  {
    taxonId: "invented-hortorum",
    common: 2,
    flights: { queen: [3.2, 4.9, 6.8], worker: [4.4, 6.8, 9.6], male: [5.4, 7.4, 9.7] },
    numbers: { queen: 0.6, male: 0.4 },
    home: (p) => 0.6 + 1.2 * p.warmth + 1.6 * p.cover + 0.6 * p.flowers - 1.8 * p.height,
  },
  {
    taxonId: "invented-ruderatus",
    common: 0.6,
    flights: { queen: [4.2, 5.6, 7], worker: [6, 7.4, 9], male: [7, 8, 10] },
    missingFrom: ["ireland", "channel-islands"],
    patchy: 3,
    home: (p) => -7.2 + 4.2 * p.flowers + 3.2 * p.warmth - 8 * north(p, 300) - 5 * p.height + (p.x > 380 ? 0.8 : -0.6),
    change: (_, epoch) => (epoch === "before 1990" ? 1.4 : epoch === "2006–2024" ? 0.35 : 0),
  },
  {
    taxonId: "invented-pratorum",
    common: 2.6,
    flights: { queen: [2.3, 3.8, 5.8], worker: [3.4, 5.6, 8.2], male: [4.4, 6.2, 8.4] },
    numbers: { queen: 0.6, male: 0.7 },
    home: (p) => 0.9 + 1.4 * p.cover + 0.6 * p.warmth - 1.2 * p.coast - 0.6 * inIreland(p),
  },
  {
    taxonId: "invented-jonellus",
    common: 1.8,
    flights: { queen: [3, 4.5, 6.8], worker: [4.2, 7, 9.8], male: [5.6, 7.6, 9.6] },
    patchy: 1.6,
    home: (p) => -3.2 + 7 * p.heath + 0.8 * p.coast + 1.2 * north(p, 650),
    change: (p, epoch) => (epoch === "2006–2024" && p.y < 500 && p.height < 0.3 ? -0.9 : 0),
  },
  {
    taxonId: "invented-monticola",
    common: 3,
    flights: { queen: [4, 5.3, 7], worker: [5.2, 7.2, 9.6], male: [7, 8.2, 9.9] },
    missingFrom: ["channel-islands"],
    patchy: 2,
    home: (p) => -6.2 + 11 * p.height + 2 * p.heath - 1.2 * inIreland(p) - (p.height < 0.15 ? 3 : 0),
    change: (p, epoch) => (epoch === "2006–2024" ? -1.3 * (p.y < 560 ? 1 : 0.5) : epoch === "before 1990" ? 0.3 : 0),
  },
  {
    taxonId: "invented-hypnorum",
    common: 3.2,
    flights: { queen: [2.3, 4, 6.4], worker: [3.6, 5.8, 8.6], male: [5, 6.4, 8.6] },
    numbers: { queen: 0.5, male: 0.8 },
    home: (p) => 0.2 + 2.4 * p.cover + 1.6 * p.warmth - 3.5 * p.height - (p.y > 900 ? 3 : 0),
    arrival: (p) =>
      p.territory === "ireland"
        ? 2017 + Math.hypot(p.x - 160, p.y - 400) / 22
        : p.territory === "channel-islands"
          ? 2016
          : 2001 + Math.hypot(p.x - 430, p.y - 120) / (p.y < 560 ? 46 : 52),
  },
  {
    taxonId: "invented-lapidarius",
    common: 4,
    flights: { queen: [3.1, 4.8, 7], worker: [4.5, 7.4, 9.8], male: [6, 7.8, 10] },
    numbers: { queen: 0.5, male: 0.6 },
    home: (p) => -0.6 + 4 * p.warmth + 1.2 * p.flowers - 3 * p.height,
    change: (p, epoch) =>
      epoch === "2006–2024"
        ? 2 * north(p, 470) - 0.5 * inIreland(p)
        : epoch === "before 1990"
          ? -0.6 * north(p, 450)
          : 0,
  },
  {
    taxonId: "invented-ruderarius",
    common: 1.1,
    flights: { queen: [4.1, 5.6, 7], worker: [5.3, 7, 9], male: [7, 8, 9.9] },
    patchy: 3.2,
    home: (p) =>
      -6.2 + 5 * p.flowers + 2.2 * p.warmth - 4 * north(p, 420) - 3 * p.height + 0.8 * inIreland(p) + 0.6 * p.coast,
    change: (_, epoch) => (epoch === "before 1990" ? 1.8 : epoch === "2006–2024" ? -1.5 : 0),
  },
  {
    taxonId: "invented-pascuorum",
    common: 5,
    flights: { queen: [3.3, 4.9, 7], worker: [4.6, 7.8, 10.9], male: [6.3, 8.6, 10.9] },
    numbers: { queen: 0.5, male: 0.5 },
    home: (p) => 2 + 1.4 * p.warmth + 0.8 * p.cover - 2 * north(p, 980),
    change: (p, epoch) => (epoch === "2006–2024" ? 0.6 * north(p, 700) : 0),
  },
  {
    taxonId: "invented-muscorum",
    common: 1.6,
    flights: { queen: [4.8, 6, 8], worker: [6, 7.6, 9.9], male: [7, 8.3, 10] },
    patchy: 3,
    home: (p) =>
      -5.3 +
      3.4 * p.coast +
      2.6 * p.flowers +
      1.8 * p.heath +
      2.2 * farNorthWest(p) +
      1.4 * inIreland(p) -
      inlandSouth(p),
    change: (p, epoch) => (epoch === "before 1990" ? 1.3 : epoch === "2006–2024" ? (p.y < 700 ? -1.3 : -0.5) : 0),
  },
  {
    taxonId: "invented-humilis",
    common: 1.3,
    flights: { queen: [4.9, 6, 7.8], worker: [6, 7.7, 9.9], male: [7, 8.3, 10] },
    missingFrom: ["ireland"],
    patchy: 3,
    home: (p) => -7.0 + 5.2 * p.flowers + 3.4 * p.warmth - 9 * north(p, 190) + 1.2 * p.coast - 4 * p.height,
    change: (_, epoch) => (epoch === "before 1990" ? 1.6 : epoch === "2006–2024" ? 0.5 : -0.3),
  },
  {
    taxonId: "invented-sylvarum",
    common: 1.5,
    flights: { queen: [4.8, 6.1, 8], worker: [6, 8, 10.2], male: [7.2, 8.8, 10.6] },
    missingFrom: ["channel-islands"],
    patchy: 4,
    home: (p) =>
      -8.7 +
      6.4 * p.flowers +
      1.8 * p.warmth -
      8 * north(p, 200) * (1 - inIreland(p)) +
      1.2 * inIreland(p) * (p.x < 20 ? 1 : -3),
    change: (_, epoch) => (epoch === "before 1990" ? 2.2 : epoch === "2006–2024" ? -1.1 : 0),
  },
  {
    taxonId: "invented-distinguendus",
    common: 1.3,
    flights: { queen: [5, 6.4, 8], worker: [7, 8, 9.9], male: [7.1, 8.3, 10] },
    missingFrom: ["channel-islands"],
    patchy: 3,
    home: (p) =>
      -7.2 +
      6 * farNorthWest(p) +
      3 * p.flowers +
      0.8 * p.coast +
      (p.territory === "ireland" && p.x < -80 ? 0.8 : -0.6),
    change: (p, epoch) =>
      epoch === "before 1990"
        ? 2.4
        : (epoch === "2006–2024" ? -0.6 : 0) - (isRefuge(p) ? 0 : epoch === "2006–2024" ? 4 : 2),
  },
  {
    taxonId: "invented-soroeensis",
    common: 1.3,
    flights: { queen: [4.9, 6.2, 8], worker: [7, 8, 9.8], male: [8, 8.8, 10.5] },
    missingFrom: ["ireland", "channel-islands"],
    patchy: 2.6,
    home: (p) => -5.1 + 3 * north(p, 600) + 2.6 * p.flowers + 1.4 * p.heath + (p.y < 180 && p.flowers > 0.6 ? 1.2 : 0),
    change: (_, epoch) => (epoch === "2006–2024" ? -0.5 : 0),
  },
];
