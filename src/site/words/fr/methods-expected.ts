import type { WordsOf } from "../catalogue.ts";
import type en from "../en/methods-expected.ts";

export default {
  "methods.section-expected-species": "Espèces attendues",
  "methods.expected-what":
    "Une espèce que personne n’a signalée dans un carré pendant la dernière période y est attendue lorsque des carrés couverts alentour l’ont. C’est une raison de chercher, non la prédiction qu’elle y est : le calcul parle de carrés semblables à leurs voisins et ne connaît ni habitat ni altitude.",
  "methods.expected-around":
    "Les carrés alentour sont ceux dont le centre est à moins de {km} km du sien, quel que soit le quadrillage, par la distance orthodromique ; leur poids décroît en ligne droite jusqu’à zéro à {km} km. Un carré compte pour une espèce lorsqu’il est couvert pour elle par des données d’autres espèces, et il l’a par une donnée établie de la dernière période. Rien n’est attendu avec moins de {least} carrés de ce genre, ni dans un carré qui a de la terre dans moins de {tetrads} de ses 25 carrés de 2 km. Les groupes ne figurent que là où aucun de leurs membres ne pourrait être trouvé.",
  "methods.expected-formula":
    "<formula>ψ = (poids des carrés qui l’ont + 40 × part de tous les carrés couverts qui l’ont) / (poids des carrés + 40)</formula><formula>chance = ψ(1 − <i>p</i>)<sup><i>K</i></sup> / (1 − ψ + ψ(1 − <i>p</i>)<sup><i>K</i></sup>)</formula><p><i>K</i> est le nombre de visites ordinaires du carré pendant la dernière période, dont aucune ne l’a notée ; <i>p</i> est la part des visites ordinaires des carrés alentour qui l’ont où elle fut notée, tirée vers celle de l’atlas par un a priori qui vaut {visits, plural, one {# visite} other {# visites}}.</p>",
  "methods.expected-gain":
    "<formula>gain = Σ chance × (1 − (1 − <i>p</i>)<sup>{further}</sup>)</formula><p>Les carrés à visiter sont classés par cette somme sur leurs espèces attendues : ce que {further, plural, one {# visite de plus pourrait} other {# visites de plus pourraient}} ajouter à la liste de la dernière période. Le meilleur moment est le tiers de mois où une visite ajouterait le plus, d’après la saison de chaque espèce dans tout l’atlas.</p>",
  "methods.expected-held-out":
    "Essayé sur les données inventées de la démonstration : celles d’un dixième, tiré au sort, de ses carrés couverts furent cachées depuis 2006, et les chances mises à côté de ce qui avait été signalé. Sur {all, number} chances, {foretold, number} devaient se réaliser et {found, number} l’ont fait ; parmi celles de 1 à 2 sur 10, 10 % ; de 4 à 5 sur 10, 40 % ; de 8 à 9 sur 10, 86 %. La moitié des visites cachée, le reste devait trouver {more, number} espèces de plus ; les données de toute sorte en ont ajouté {added, number}.",
  "methods.expected-few":
    "Quand il y a peu de carrés alentour, la part de l’atlas pèse autant que l’un d’eux. Les visites sont supposées trouver une espèce indépendamment les unes des autres et aussi bien partout ; après beaucoup de visites, une chance est donc plutôt trop faible que trop forte.",
  "methods.expected-source":
    "Source : part pondérée par la distance, E. A. Nadaraya (1964), <i>Theory of Probability and its Applications</i> 9 : 141–142, et G. S. Watson (1964), <i>Sankhyā</i> A 26 : 359–372 ; présence après des visites sans résultat, D. I. MacKenzie et coll. (2002), <i>Ecology</i> 83 : 2248–2255. Notre lecture : les deux a priori, chacun valant un carré tout juste couvert, et les limites (usage courant). Tout est calculé sur la copie où les données sensibles sont montrées moins précises.",
} satisfies WordsOf<typeof en>;
