/** What is known of a taxon around a square where it was not recorded in the latest period; weights in whole km. */
export interface Surrounding {
  /** Covered squares of the neighbourhood, and their weight. */
  weight_near: number;
  /** Weight of those of them that hold the taxon; at most `weight_near`. */
  weight_with: number;
  /** Visits to those that hold it, each times the weight of its square, and those of them that recorded it. */
  weighted_visits: number;
  weighted_recording: number;
  /** Everyday visits of the latest period to the square itself, none of which recorded the taxon. */
  visits_here: number;
}

/** The same of the whole atlas, without weights. */
export interface AtlasShare {
  squares: number;
  squares_with: number;
  visits: number;
  recording: number;
}

/** A taxon expected in a square: shares of 0 to 1. */
export interface Chance {
  /** Share of the covered squares around that hold it, drawn towards the atlas's share. */
  share: number;
  /** Share of visits to squares that hold it which record it. */
  frequency: number;
  /** That it is there, given the squares around and that the visits here have not recorded it. */
  chance: number;
}

/** Weights at which a neighbour counts as one: the square itself would. */
const ONE_SQUARE = 40;

/**
 * How likely a taxon is in a square where it was not recorded.
 *
 * The share of covered neighbours that hold it, near ones counting more, is a kernel estimate (Nadaraya 1964, Theory of
 * Probability and its Applications 9: 141–142; Watson 1964, Sankhyā A 26: 359–372), drawn towards the share of the whole
 * atlas by a Beta prior worth one square (common practice); so is the share of visits that record it where it is, by a
 * prior worth `prior_visits`. Visits that have not found it take the chance down by Bayes' theorem, as for a site where
 * a species was not detected on K visits (MacKenzie et al. 2002, Ecology 83: 2248–2255):
 * chance = ψ(1 − p)^K / (1 − ψ + ψ(1 − p)^K).
 *
 * With few neighbours the atlas's share weighs more. It assumes visits that find a taxon independently of each other and
 * equally well in all squares that hold it; it tells of squares like those that were visited, not of habitat.
 *
 * @param atlas with at least one covered square that holds the taxon
 * @param priorVisits visits the prior of the frequency is worth; above 0
 * @returns shares of 0 to 1; `chance` ≤ `share`
 * @example expectedChance({ weight_near: 120, weight_with: 80, weighted_visits: 400, weighted_recording: 80, visits_here: 0 }, { squares: 10, squares_with: 5, visits: 50, recording: 10 }, 5) // => { share: 0.625, frequency: 0.2, chance: 0.625 }
 */
export function expectedChance(around: Surrounding, atlas: AtlasShare, priorVisits: number): Chance {
  const share =
    (around.weight_with + ONE_SQUARE * (atlas.squares_with / atlas.squares)) / (around.weight_near + ONE_SQUARE);
  const usual = atlas.visits === 0 ? 0 : atlas.recording / atlas.visits;
  const worth = ONE_SQUARE * priorVisits;
  const frequency = (around.weighted_recording + worth * usual) / (around.weighted_visits + worth);
  const missed = share * (1 - frequency) ** around.visits_here;
  return { share, frequency, chance: missed === 0 ? 0 : missed / (1 - share + missed) };
}

/**
 * Expected number of taxa that further visits would add to a square: each taxon's chance times the chance that one of the
 * visits records it where it is (binomial, independent visits).
 *
 * @param visits how many; whole, at least 0
 * @returns taxa; 0 to the number of chances, and never less for more visits
 * @example expectedGain([{ chance: 0.5, frequency: 0.2 }], 3).toFixed(3) // => "0.244"
 */
export function expectedGain(taxa: readonly Pick<Chance, "chance" | "frequency">[], visits: number): number {
  return taxa.reduce((sum, { chance, frequency }) => sum + chance * (1 - (1 - frequency) ** visits), 0);
}
