import type { WordsOf } from "../catalogue.ts";
import type en from "../en/methods-range.ts";

export default {
  "methods.range-occupancy":
    "La zone d’occupation vaut 4 km² par carré de 2 km avec une donnée, l’échelle de référence de l’UICN (Standards and Petitions Committee 2024, Guidelines, version 16). Une donnée précise à 10 km seulement ne remplit aucun carré de 2 km : le chiffre est donc un minimum ; les carrés de 10 km où aucune donnée n’atteint 2 km sont comptés à côté.",
  "methods.range-origin":
    "Les carrés sont ceux du carroyage de chaque territoire, comptés depuis son origine : une autre origine donnerait d’autres carrés, et un autre chiffre.{several, select, yes { Sur plusieurs carroyages les carrés s’additionnent, et là où deux se rencontrent ils peuvent se recouvrir.} other {}}",
  "methods.range-extent":
    "La zone d’occurrence est l’aire, sur l’ellipsoïde WGS84 (Karney 2013), du plus petit polygone convexe autour des coins des carrés de 2 km occupés et des carrés de 10 km où aucune donnée n’atteint 2 km. Ses sommets sont cherchés dans une projection gnomonique autour du milieu de tous les carrés, où les côtés du polygone, des géodésiques, sont droits. Elle contient de la mer et des terres où personne n’a cherché, et une seule donnée isolée peut la doubler. Si elle est plus petite que la zone d’occupation, elle lui est rendue égale, et le tableau le dit.",
  "methods.range-counts":
    "Une donnée compte si elle est utilisée et établie, même d’une année provisoire : une donnée est une donnée. Sont laissées de côté celles dont l’établissement est {left}, selon le réglage de l’atlas.",
  "methods.range-thresholds":
    "Les seuils du critère B (UICN 2012) sont des indices, non une évaluation. Un chiffre est mis en regard du plus petit seuil auquel il est strictement inférieur : 100, 5 000 ou 20 000 km² pour la zone d’occurrence (B1), 10, 500 ou 2 000 km² pour la zone d’occupation (B2). Une catégorie demande deux de trois autres conditions : localités peu nombreuses ou sévèrement fragmentées, déclin continu, fluctuations extrêmes. Dans un seul pays ou une seule île, elle n’est donnée que selon les lignes directrices régionales. Une zone d’occurrence par-dessus la mer entre deux territoires ne vaut pour une seule unité d’évaluation que si l’unité comprend les deux.",
  "methods.season-dates":
    "Une saison est donnée par les jours avant lesquels un dixième, un quart, la moitié, trois quarts et neuf dixièmes des données ou des visites étaient faits : quantiles de type 8 (Hyndman et Fan 1996). Il n’y a pas de date la plus précoce, car elle avance par le seul nombre des données.{castes, select, yes { Chaque caste vaut pour elle-même, et les données qui n’en indiquent pas forment une classe à part, jamais répartie.} other {}} Seules comptent les données datées d’un jour. Les spécimens, la bibliographie et les nids trouvés ne comptent pas : ils disent où elle vivait, non quand elle vole. Avec moins de {records} données ou visites, aucune date n’est donnée.",
  "methods.season-visits":
    "Une visite compte une fois, quel que soit le nombre de ses données. À poids égal, une visite compte pour les jours de son tiers de mois divisés par les visites que quiconque y a faites, comme si chaque jour de l’année avait été visité aussi souvent ; les tiers avec moins de {visits} visites n’ont pas un tel poids. Il n’y a de visites que là où quelque chose du groupe fut vu : ce qu’elles donnent est une part de visites, non des nombres d’animaux.",
  "methods.season-interval":
    "L’intervalle de la médiane prend les dates comme unité d’échantillonnage, car ce qui est noté un même jour partage son temps : l’intervalle binomial exact pour l’effectif qui en dit autant (Woodruff 1952, Korn et Graubard 1998).",
  "methods.season-shift":
    "Un décalage est donné en jours par décennie, d’après l’observation courante d’années closes avec {visits} visites ou plus, s’il y a {years} années de ce genre. La régression quantile du jour sur l’année (Koenker et Bassett 1978) tient compte de la latitude, du territoire et de la caste, et égalise le moment de l’année où l’on observa et indiqua des castes, environ cinq années à la fois ; la latitude est celle du carré de 10 km tel que montré. Son intervalle vient de 400 tirages d’années entières, qui partagent leur temps (Andrews 2002), avec la loi de Student pour le nombre d’années. À côté figure la pente médiane (Theil 1950, Sen 1968) des médianes des années, avec les mêmes corrections et telle que notée ; cette dernière bouge avec les lieux et les moments d’observation.",
  "methods.season-silence":
    "Aucun décalage n’est donné si les castes ne volent pas en même temps et que moins de la moitié des visites en indiquent une, si plus d’un cinquième des visites n’ont pas de carré qui dise leur latitude, si trop peu d’années furent visitées tout au long de sa saison (les premières qui ne le furent pas sont laissées de côté), ou si la latitude ou la caste ont changé si régulièrement avec les années qu’on ne peut les en séparer. L’altitude et les générations ne sont pas prises en compte.",
  "methods.regions-stated":
    "La région qu’une donnée indique l’emporte sur son carré : qui était là connaît mieux la région qu’un carré. Un contrôle interroge là où les deux ne peuvent être justes. Une donnée qui ne remplit aucun carré compte quand même pour la région qu’elle indique.",
  "methods.regions-square":
    "Si aucune n’est indiquée, le carré le plus fin de la donnée compte, s’il ne touche qu’une région. Un carré touche une région qui y a au moins 4 000 m², 0,1 % d’un carré de 2 km ; moins est tenu pour le tracé d’une ligne. Ce qui n’est dans aucune région, la mer en général, ne compte pour aucune.{land, select, yes { Les carrés terrestres d’une région sont ceux de la liste de l’atlas.} other {}}",
  "methods.regions-boundary":
    "Une donnée d’un carré qui touche deux régions, et qui n’en indique aucune, n’est pas attribuée. Elle ne fait de première année dans aucune et compte une fois, à la ligne « non attribuées » ; la liste d’une région peut donc manquer de ce qui fut noté à sa limite. Les données volontairement montrées moins précises sont mises dans une région selon le carré montré, jamais selon la région qu’elles indiquent.",
  "methods.regions-sums":
    "Les données s’additionnent sur les régions et celles qui ne sont pas attribuées. Les carrés et les espèces non : deux données d’un même carré peuvent indiquer deux régions.",
} satisfies WordsOf<typeof en>;
