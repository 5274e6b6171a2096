import type { Species } from "./species.ts";

/** Cuckoos: females and males, no workers. All numbers are invented. */
export const cuckoos: readonly Species[] = [
  {
    taxonId: "invented-vestalis",
    common: 1.3,
    flights: { female: [3, 4.7, 7], male: [5.4, 7, 9.6] },
    home: (p) => -1.6 + 4 * p.warmth + 0.9 * p.cover - 3 * p.height - Math.max(0, p.y - 330) / 70,
    change: (p, epoch) => (epoch === "2006–2024" ? Math.min(3, Math.max(0, p.y - 280) / 70) : 0),
    arrival: (p) => (p.territory === "ireland" ? 2014 + Math.hypot(p.x - 170, p.y - 410) / 18 : -Infinity),
  },
  {
    taxonId: "invented-bohemicus",
    common: 1.6,
    flights: { female: [4, 5.2, 7.4], male: [6, 7.4, 9.4] },
    home: (p) => -1.2 - 1.4 * p.warmth + 1.6 * p.heath + 0.8 * p.cover + (p.y > 450 ? 0.8 : 0),
    change: (p, epoch) => (epoch === "2006–2024" && p.y < 350 && p.x > 400 ? -1.2 : 0),
  },
  {
    taxonId: "invented-rupestris",
    common: 1,
    flights: { female: [4.9, 6.2, 8.9], male: [7, 8, 9.9] },
    home: (p) => -2.2 + 3.6 * p.warmth + 1.6 * p.flowers - 3 * p.height - Math.max(0, p.y - 300) / 70,
    change: (p, epoch) =>
      epoch === "2006–2024" ? 1 + Math.min(2.2, Math.max(0, p.y - 260) / 80) : epoch === "1990–2005" ? -0.6 : -0.2,
  },
  {
    taxonId: "invented-barbutellus",
    common: 0.9,
    flights: { female: [4, 5.4, 7.4], male: [6, 7.2, 9] },
    home: (p) => -3.6 + 1.2 * p.warmth + 1.6 * p.cover + 0.8 * p.flowers,
    change: (_, epoch) => (epoch === "before 1990" ? 0.9 : epoch === "2006–2024" ? -0.8 : 0),
  },
  {
    taxonId: "invented-campestris",
    common: 0.9,
    flights: { female: [4.1, 5.5, 7.6], male: [6, 7.5, 9.4] },
    home: (p) => -2.6 + 1.6 * p.warmth + p.cover + 0.6 * p.flowers,
    change: (_, epoch) => (epoch === "before 1990" ? 0.5 : epoch === "2006–2024" ? -0.5 : 0),
  },
  {
    taxonId: "invented-sylvestris",
    common: 1.3,
    flights: { female: [3.1, 4.7, 6.8], male: [5, 6.4, 8.6] },
    home: (p) => -1.6 + 1.8 * p.cover + 0.5 * p.warmth,
  },
];
