import type { WordsOf } from "../catalogue.ts";
import type en from "../en/methods-change.ts";

export default {
  "methods.section-change": "Évolution",
  "methods.section-squares-compared": "Carrés comparés",
  "methods.section-local-frequencies": "Fréquences locales",
  "methods.section-reporting-rate": "Taux de mention",
  "methods.section-change-relative-to-the-group": "Évolution par rapport au groupe",
  "methods.section-what-it-hangs-on": "De quoi cela dépend",
  "methods.section-through-time": "Au fil du temps",
  "methods.section-first-years": "Premières années",
  "methods.change":
    "Jusqu’à quatre méthodes disent l’évolution, chacune pour elle-même, d’après les données d’animaux établis hors des années provisoires. Elles répondent à des questions différentes : lisez-les côte à côte. Si leurs intervalles excluent l’absence d’évolution de côtés opposés, elles divergent, et la page le dit ; si une méthode a trop peu pour se prononcer, elle se dit non applicable, et pourquoi.",
  "methods.change-limits":
    "Aucune méthode ne voit ce que personne n’a noté, et aucune n’évalue un risque. Les chiffres relatifs au groupe disent plus, ou moins, de carrés que le groupe dans son ensemble ne le laisse attendre : si tout le groupe décline, ils ne le disent pas.",
  "methods.claim-kept":
    "Elle prétend corriger de l’effort d’observation, ce que la <truth>vérité connue</truth> confirme.",
  "methods.claim-withdrawn":
    "Elle ne prétend <b>pas</b> corriger de l’effort d’observation : là où la <truth>vérité est connue</truth>, {reason}.",
  "methods.claim-rank":
    "Elle classe les espèces du groupe et ne prétend à aucune correction : une sur vingt au plus peut se détacher, quoi qu’il arrive, comme le montre la <truth>vérité connue</truth>.",
  "methods.claim-untested": "Sa correction de l’effort d’observation n’a pas été éprouvée, et rien n’en est prétendu.",
  "methods.squares-does":
    "<p>Parmi les carrés couverts aux deux périodes par des visites qui en mentionnaient d’autres, ceux qui abritent l’espèce aux deux périodes (<i>b</i>), seulement à la seconde (<i>n</i>, nouvellement trouvée) et seulement à la première (<i>o</i>, non retrouvée).</p>",
  "methods.squares-formulas":
    "<formula>bilan = 100 (<i>n</i> − <i>o</i>) / (<i>b</i> + <i>o</i>) %</formula><formula>renouvellement = 100 (<i>n</i> + <i>o</i>) / (<i>b</i> + <i>n</i> + <i>o</i>) %</formula>",
  "methods.squares-tells":
    "<p><b>Elle dit</b> dans combien de carrés comparables, en plus ou en moins, l’espèce fut trouvée. Un carré noté à une période et trop peu visité à l’autre ne peut pas être comparé ; il dit où est l’espèce, non comment elle a changé.</p>",
  "methods.squares-tells-not":
    "<p><b>Elle ne dit pas</b> que l’espèce a ainsi évolué : elle n’est <b>pas corrigée de l’effort d’observation</b>. Davantage de visites aux mêmes carrés trouvent davantage de tout. Une part du renouvellement est toujours une espèce qui était là et ne fut pas trouvée.</p>",
  "methods.squares-speaks":
    "<p><b>Elle se prononce</b> à partir de {squares} carrés comparables. Elle est donnée selon deux règles : un carré est couvert par {least} visites, ou par {more}. À 2 km, elle ne se prononce que si {percent} % au moins des données de l’espèce à chaque période sont précises à 2 km, dans les carrés de 10 km qui en ont aux deux, car de meilleures références ressemblent à de nouveaux carrés.</p>",
  "methods.squares-few":
    "<p><b>Avec peu de données :</b> l’intervalle est exact : parmi les carrés qui ont changé, la part des nouveaux a son intervalle de confiance à 95 %, reporté sur les carrés. Il n’est jamais plus étroit que 95 %, souvent plus large, et exclut l’absence d’évolution exactement quand le test exact de McNemar le fait. Il tient compte du hasard entre les carrés, non de l’effort d’observation.</p>",
  "methods.squares-source":
    "<p><b>Source :</b> C. J. Clopper et E. S. Pearson (1934), <i>Biometrika</i> 26 : 404–413, pour l’intervalle.</p>",
  "methods.squares-reading":
    "<p><b>Notre lecture :</b> que l’intervalle est conditionnel au nombre de carrés qui ont changé, et que seules comptent les données d’animaux établis hors des années provisoires.</p>",
  "methods.local-does":
    "<p>La fréquence avec laquelle une espèce serait trouvée dans un carré, si tous étaient notés de même, est donnée par son voisinage : parmi les {nearest} carrés de 10 km les plus proches, les {similar} qui lui ressemblent le plus par leurs espèces. Les fréquences <i>f</i> y sont relevées à celles d’un voisinage bien noté, <i>g</i>. Les deux périodes sont ramenées à autant de visites dans chaque carré et chaque tiers de la saison, comme si les autres avaient été écartées au hasard ; ce qui reste d’effort <i>s</i> dans un carré est donné par toutes ses espèces, et le moment de l’année des données est pris en compte. Le facteur temporel <i>x</i> d’une espèce est le rapport de ses trouvailles à ce que fréquences et effort laissent attendre.</p>",
  "methods.local-formulas":
    "<formula><i>g</i> = 1 − (1 − <i>f</i>)<sup><i>a</i></sup>, avec <i>a</i> tel que la moyenne de <i>g</i> pondérée par <i>g</i> soit {frequency, number}</formula><formula>probabilité d’une trouvaille = 1 − (1 − <i>g</i>)<sup><i>s x</i></sup>, avec <i>x</i> tel que la somme des probabilités soit le nombre de trouvailles</formula><formula>évolution = 100 (<i>x</i><sub>seconde</sub> / <i>x</i><sub>première</sub> / moyenne du groupe − 1) %</formula>",
  "methods.local-tells":
    "<p><b>Elle dit</b> si une espèce est trouvée dans plus ou moins de carrés que le groupe dans son ensemble ne le laisse attendre, à visites égales. {claim}</p>",
  "methods.local-tells-not":
    "<p><b>Elle ne dit pas</b> l’évolution elle-même : un changement que toutes partagent ressemble à un changement d’effort, et en est ôté. Ni que le goût des observateurs pour une espèce est resté le même.</p>",
  "methods.local-speaks":
    "<p><b>Elle se prononce</b> pour des groupes de {taxa} espèces ou plus, où les carrés ont en moyenne au moins {benchmarks} espèces communes comme repères, sur une espèce trouvée dans {squares} carrés ou plus et aux deux périodes.</p>",
  "methods.local-few":
    "<p><b>Avec peu de données :</b> de petits groupes n’ont pas de chiffre : avec huit espèces attendues dans un carré, une part de {percent} % laisse deux repères, trop peu pour dire l’effort. L’intervalle est fait de ce qu’ajoute chaque carré, et il est large si peu de carrés le portent.</p>",
  "methods.local-source":
    "<p><b>Source :</b> M. O. Hill (2012), Local frequency as a key to interpreting species occurrence data when recording effort is not known, <i>Methods in Ecology and Evolution</i> 3 : 195–205, dont le résumé a pu être lu, non le texte entier.</p>",
  "methods.local-reading":
    "<p><b>Notre lecture :</b> les voisinages par proximité et ressemblance, les fréquences relevées et les facteurs temporels sont de l’article. L’effort de l’article, la part des espèces repères trouvées, déclarait changées trop d’espèces inchangées quand l’effort doublait : les visites égales par carré et saison, l’effort d’après toutes les espèces, la prise en compte du moment de l’année, la moyenne du groupe et l’intervalle sont de nous.</p>",
  "methods.rate-does":
    "<p>La part des listes complètes qui mentionnent l’espèce, à longueur de liste, saison et lieu égaux. Seules entrent les listes déclarées complètes, car elles seules disent ce qui ne fut pas vu ; les enquêtes consacrées à une espèce et les lots de musée n’entrent pas. Les carrés sont comparés à eux-mêmes : ceux qui ont des listes aux deux périodes.</p>",
  "methods.rate-formulas":
    "<formula>log des chances d’être mentionnée = carré + période + log (autres espèces de la liste) + deux ondes de l’année</formula><formula>évolution = 100 (taux<sub>seconde</sub> / taux<sub>première</sub> − 1) %, chacun le taux qu’auraient toutes les listes comparées, si elles étaient de cette période</formula>",
  "methods.rate-tells":
    "<p><b>Elle dit</b> si l’espèce est mentionnée sur plus ou moins de listes de même sorte. {claim}</p>",
  "methods.rate-tells-not":
    "<p><b>Elle ne dit pas</b> qu’elle est dans plus de carrés, ni plus nombreuse : une part de visites n’est pas un effectif. La longueur tient lieu de ce qu’une visite voit : si la plupart d’un groupe deviennent plus communes, les listes s’allongent pour la même promenade, et chaque taux à longueur égale baisse d’une partie de cela.</p>",
  "methods.rate-speaks":
    "<p><b>Elle se prononce</b> à partir de {visits, number} listes complètes à chaque période, dont {detections, number} qui la mentionnent, et de {squares, number} carrés de 10 km avec des listes aux deux périodes.</p>",
  "methods.rate-few":
    "<p><b>Avec peu de données :</b> les carrés où toutes les listes la mentionnent, ou aucune, ne disent rien de l’évolution. L’intervalle laisse de côté chaque carré à son tour, pour que les visites à un seul carré ne passent pas pour beaucoup ; avec peu de carrés il est large.</p>",
  "methods.rate-source":
    "<p><b>Source :</b> J. K. Szabo, P. A. Vesk, P. W. J. Baxter et H. P. Possingham (2010), Regional avian species declines estimated from volunteer-collected long-term data using List Length Analysis, <i>Ecological Applications</i> 20 : 2157–2169.</p>",
  "methods.rate-reading":
    "<p><b>Notre lecture :</b> le modèle de l’article est logistique, avec le logarithme de la longueur de la liste ; que cette longueur compte les autres espèces, les deux ondes de la saison, les carrés, les taux et l’intervalle sont de nous.</p>",
  "methods.relative-does":
    "<p>À chaque période, la part des carrés de 10 km, parmi ceux avec une donnée du groupe aux deux périodes, qui abritent chaque espèce. Une droite par le logarithme des chances de la seconde période selon la première montre ce que le groupe dans son ensemble laisse attendre ; l’indice d’une espèce est sa distance à la droite, en écarts-types.</p>",
  "methods.relative-formulas":
    "<formula>log des chances = log ((carrés avec elle + ½) / (carrés sans elle + ½))</formula><formula>indice = (log des chances<sub>seconde</sub> − droite au log des chances<sub>première</sub>) / écart-type</formula>",
  "methods.relative-tells":
    "<p><b>Elle dit</b> si une espèce s’en est mieux ou moins bien sortie que le groupe : plus ou moins de carrés que le groupe dans son ensemble ne le laisse attendre. Davantage d’observation relève toutes les espèces, et donc la droite. {claim}</p>",
  "methods.relative-tells-not":
    "<p><b>Elle ne dit pas</b> l’évolution elle-même : si toutes déclinent, celle du milieu a l’indice 0. Le signe n’est pas forcément celui de l’évolution des carrés.</p>",
  "methods.relative-speaks":
    "<p><b>Elle se prononce</b> pour des groupes de {taxa} espèces ou plus qui ont {squares} carrés ou plus à la première période ; une espèce qui en a moins n’a pas d’indice.</p>",
  "methods.relative-few":
    "<p><b>Avec peu de données :</b> avec peu d’espèces, la droite est tracée par une poignée d’entre elles. Un indice n’est retenu que s’il dépasse la limite de Student pour une espèce laissée hors de la dispersion et celle de 95 espèces sur 100 du groupe : dans un groupe qui change beaucoup, peu se détachent.</p>",
  "methods.relative-source":
    "<p><b>Source :</b> M. G. Telfer, C. D. Preston et P. Rothery (2002), A general method for measuring relative change in range size from biological atlas data, <i>Biological Conservation</i> 107 : 99–109.</p>",
  "methods.relative-reading":
    "<p><b>Notre lecture :</b> le texte entier n’a pas pu être lu. Les carrés des deux périodes, la droite par toutes les espèces, les poids itérés et les distances standardisées sont de l’article, d’après les descriptions qui en sont faites. Sont de nous la moitié ajoutée aux carrés, la variance <i>a</i> + <i>b</i> / (<i>N p</i> (1 − <i>p</i>)) derrière les poids, les poids égaux ou binomiaux si elle ne peut être ajustée, la standardisation par effet de levier et l’intervalle.</p>",
  "methods.hangs-on":
    "Chaque méthode est refaite avec les années provisoires, sans les visites qui n’ont mentionné qu’une espèce, sans les enquêtes consacrées à une espèce, sans les comptages collectifs, sans les spécimens ni la bibliographie, et avec les seules listes complètes. Une barre signale où la ligne va alors dans un autre sens, perd son sens ou ne peut plus être jugée. Un tel chiffre tient à une sorte de données : citez-le avec cela.",
  "methods.series":
    "Les séries par période et par année viennent des mêmes méthodes, avec les mêmes minimums. Des chiffres voisins partagent leurs carrés, de sorte que deux intervalles qui se recouvrent peuvent quand même différer.{years, select, none {} other { Les années provisoires ({years}) sont ouvertes et n’entrent dans aucune tendance.}}",
  "methods.first-years":
    "Une espèce sans carré à la première période n’a pas d’évolution à montrer, ni d’indice. À sa place figure une carte des années où les carrés furent d’abord notés ; une première donnée peut venir longtemps après la première arrivée, et il faut {visits, number} visites qui en ont mentionné d’autres pour qu’un carré sans elle compte comme couvert.",
} satisfies WordsOf<typeof en>;
