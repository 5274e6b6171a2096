import type { WordsOf } from "../catalogue.ts";
import type en from "../en/narrow.ts";

export default {
  "narrow.place": "Cerner l’espèce",
  "narrow.reading": "Lecture des tableaux …",
  "narrow.title": "Cerner l’espèce",
  "narrow.description": "Où, quand et ce que vous avez vu : des candidats et leurs raisons.",
  "narrow.lead":
    "Dites ce que vous savez, dans n’importe quel ordre. Vous obtenez des candidats et leurs raisons ; c’est à vous de juger lequel c’était.",
  "narrow.no-script":
    "<b>Cette page a besoin de scripts.</b> Sans eux, partez de <first>ce que l’on voit d’abord</first>, ou lisez les <apart>sosies côte à côte</apart>.",
  "narrow.known": "Ce que l’on sait",
  "narrow.where": "Où",
  "narrow.where-field": "Référence de carroyage ou position",
  "narrow.where-example": "par exemple {example}",
  "narrow.where-set": "Retenir",
  "narrow.where-clear": "Ne pas donner de lieu",
  "narrow.position": "Utiliser ma position",
  "narrow.position-note": "Votre position reste sur cet appareil : seul le nom du carré est utilisé.",
  "narrow.position-asking": "On demande à l’appareil où il se trouve…",
  "narrow.position-refused": "L’appareil n’a pas donné sa position. Vous pouvez taper une référence de carroyage.",
  "narrow.position-failed": "L’appareil ne sait pas où il se trouve. Vous pouvez taper une référence de carroyage.",
  "narrow.position-missing": "Cet appareil ne donne pas de position. Vous pouvez taper une référence de carroyage.",
  "narrow.position-elsewhere": "Vous n’êtes dans aucun carré de cet atlas. C’est l’atlas entier qui sert à sa place.",
  "narrow.map": "Choisir sur une carte",
  "narrow.map-label":
    "Carte de l’atlas : choisissez un carré de 10 km avec un pointeur ; au clavier, tapez sa référence ci-dessus",
  "narrow.place-set": "Carré de 10 km {square}",
  "narrow.place-none": "Pas de lieu : c’est l’atlas entier qui sert.",
  "narrow.place-unknown":
    "« {text} » n’est pas une référence, à 10 km ou plus fine, d’un carroyage de cet atlas. En voici une : {example}.",
  "narrow.place-sea": "{square} n’a ni terre ni donnée. C’est l’atlas entier qui sert à sa place.",
  "narrow.when": "Quand",
  "narrow.when-field": "Date",
  "narrow.when-clear": "Ne pas donner de date",
  "narrow.when-none": "Pas de date : c’est l’année entière qui sert.",
  "narrow.caste": "Sexe ou caste",
  "narrow.unknown": "inconnu",
  "narrow.unseen": "pas vu",
  "narrow.untold": "pas dit",
  "narrow.more": "{n, plural, one {Une autre chose à dire} other {# autres choses à dire}}",
  "narrow.clear": "Recommencer",
  "narrow.link": "L’adresse de cette page contient ce que vous avez dit. Rien n’est envoyé.",
  "narrow.loading": "Chargement des tables…",
  "narrow.failed": "Les tables n’ont pas pu être chargées. Réessayez quand vous aurez une connexion.",
  "narrow.remain":
    "**{likely, plural, =0 {Aucun candidat} =1 {Un candidat} =2 {Deux candidats} =3 {Trois candidats} =4 {Quatre candidats} =5 {Cinq candidats} =6 {Six candidats} =7 {Sept candidats} =8 {Huit candidats} =9 {Neuf candidats} =10 {Dix candidats} other {# candidats}} sur {all, number}** {likely, plural, =0 {ne se détache} =1 {reste probable} other {restent probables}}{ahead, select, yes {, le premier loin devant} other {}}.",
  "narrow.nothing-told":
    "Dites une couleur, et la liste se raccourcit. D’ici là, elle suit ce qui est noté {place, select, yes {autour de ce carré} other {dans l’atlas entier}}{date, select, yes { à cette époque de l’année} other {}}.",
  "narrow.next":
    "Regardez maintenant : {segment, plural, =0 {**{part}**} one {**le 1er segment de l’abdomen** ({part})} other {**le {segment}e segment de l’abdomen** ({part})}}",
  "narrow.meaning": "alors {taxa}",
  "narrow.meaning-else": "alors quelque chose qui n’est pas décrit ici",
  "narrow.next-fails": "Cela ne dit rien de sûr de {taxa}.",
  "narrow.next-photograph": "Une photographie peut le montrer ({part}).",
  "narrow.next-specimen":
    "Chez certains d’entre eux, seul un spécimen sous la loupe le montre : notez plutôt le groupe.",
  "narrow.next-none": "**Rien d’autre dans les tables ne les distingue.**",
  "narrow.next-none-evidence": "Pour une donnée de {name} : {evidence}",
  "narrow.candidates": "Candidats, le plus probable d’abord",
  "narrow.others":
    "{n, plural, one {Un autre, à moins de 1 chance sur 20} other {Les # autres, chacun à moins de 1 chance sur 20}}",
  "narrow.odds":
    "{tenths, plural, =0 {moins de 1 chance sur 10} =1 {environ 1 chance sur 10} =10 {plus de 9 chances sur 10} other {environ # chances sur 10}}",
  "narrow.odds-far":
    "{of, plural, =1000000 {moins de 1 chance sur un million} other {environ 1 chance sur {of, number}}}",
  "narrow.compare": "distinguer de {name}",
  "narrow.stop-group": "**Vous pouvez vous arrêter là.** {group} est juste avec {odds}, et c’est une bonne donnée.",
  "narrow.stop-group-page": "À propos du groupe {group}",
  "narrow.stop-first": "**{name} : {odds}.** Ce qu’il faut pour une donnée : {evidence}",
  "narrow.not-group": "Ce peut aussi n’être aucun des {group} : {odds}.",
  "narrow.not-group-first": "**Ce peut n’être aucun des {group} :** {odds}.",
  "narrow.not-group-look": "Voir ceux que l’on prend pour eux",
  "narrow.reason-agree": "{n, plural, one {concorde : {list}} other {concordent : {list}}}",
  "narrow.reason-differs": "{part} : {state}, et non {expected}",
  "narrow.reason-varies": "{part} : variable",
  "narrow.reason-not-told": "{part} : la table ne le dit pas",
  "narrow.reason-caste": "{caste}, et non {said}",
  "narrow.reason-in-season": "en saison",
  "narrow.reason-in-season-caste": "en saison : {caste}",
  "narrow.reason-out-of-season": "hors saison : la plupart des données du {from} au {to}",
  "narrow.reason-here": "noté dans ce carré de 10 km en {year}",
  "narrow.reason-here-once": "noté dans ce carré de 10 km",
  "narrow.reason-nearest": "carré le plus proche à {km, number} km",
  "narrow.reason-none-near": "aucun carré à moins de {km, number} km",
  "narrow.stand-agrees": "concorde",
  "narrow.stand-against": "parle contre",
  "narrow.stand-unknown": "inconnu",
  "narrow.key":
    "Rien n’est écarté parce que ce n’est pas noté ici. Les chances viennent de ce qui est noté alentour, de la saison et des caractères ; <a>comment on les calcule</a>.",
  "narrow.truth":
    "Sur {sightings, number} observations inventées, décrites par le lieu, la date et {characters, plural, =2 {deux} =3 {trois} =4 {quatre} other {#}} caractères, le vrai taxon venait en tête dans {first} des cas et parmi les trois premiers dans {three} ; un faux venait en tête avec au moins 9 chances sur 10 dans {wrong}.",
  "narrow.truth-about":
    "Essayé sur de nouvelles sorties dans le pays inventé de la démonstration (graine {seed}), dont les données ne sont pas parmi les {records, number} qui ont fait les tables. Ce qu’une personne voit, confond et omet a été inventé à part de l’aide, et rien dans l’aide n’a été réglé dessus. Les vrais animaux ne sortent pas d’une table : attendez-vous à moins.",
  "narrow.truth-rows": "Parts des observations, selon ce qui était dit. Une sur vingt n’était pas un bourdon.",
  "narrow.truth-told": "Ce qui est dit",
  "narrow.truth-condition":
    "{n, plural, =0 {Aucun caractère} =2 {Deux caractères} =4 {Quatre caractères} other {# caractères}}{known, select, yes {, lieu, date} other {}}",
  "narrow.truth-first": "Vrai taxon en tête",
  "narrow.truth-or-group": "ou son groupe proposé",
  "narrow.truth-three": "Parmi les trois premiers",
  "narrow.truth-wrong-nine": "Un faux en tête avec 9 sur 10",
  "narrow.truth-wrong-seven": "avec 7 sur 10",
  "narrow.truth-tenths":
    "Les chances sont-elles ce qu’elles disent ? Sur tous les essais. Les groupes proposés contenaient le vrai taxon dans {right} des cas ; on leur donnait {said} en moyenne.",
  "narrow.truth-chance": "Chance du premier",
  "narrow.truth-tenth": "de {from} à {to} sur 10",
  "narrow.truth-runs": "Essais",
  "narrow.truth-said": "Chance moyenne dite",
  "narrow.truth-right": "Juste",
  "narrow.demonstration": "Texte écrit pour cette démonstration : à vérifier dans un guide d’identification à jour.",
  "narrow.methods": "Cerner l’espèce",
  "narrow.methods-rule":
    "L’aide pèse chaque taxon, dans chaque caste et chaque forme, selon la règle de Bayes : sa fréquence en ce lieu, multipliée par sa fréquence à cette époque, multipliée par la chance de chaque réponse. Rien ne reçoit jamais une chance nulle, et l’ordre des réponses ne change rien.",
  "narrow.methods-place":
    "La fréquence de rencontre d’un taxon est −ln(1 − f), où f est la part des visites ordinaires de la dernière période, à moins de {near, number} km, qui l’ont noté, les plus proches comptant davantage ; s’y ajoutent {pseudo, number} visites qui trouvent ce que trouve l’atlas entier. Sans lieu, f est la part dans l’atlas entier. Quand un groupe de taxons a plus de données que ses membres, ceux-ci sont relevés en proportion.",
  "narrow.methods-season":
    "La saison est la part des données du taxon dans un tiers de mois, rapportée à la part des visites de ce tiers, les tiers voisins comptant pour moitié, avec une donnée ajoutée ; les castes se la partagent comme les données qui en indiquent une. Les formes autres que l’habituelle ont ensemble une part sur dix.",
  "narrow.methods-outside":
    "Sur 100 animaux pris pour un membre du groupe, on compte que 8 sont l’un des sosies décrits hors du groupe, et 2 quelque chose que personne n’a décrit.",
  "narrow.methods-answers":
    "Une réponse est tenue pour fausse une fois sur 16 quand le caractère décide, une fois sur 6 quand il appuie, et deux fois sur 5 quand il trompe ; trois réponses fausses sur quatre nomment une couleur que l’on prend pour la vraie. Entre jaune et citron, ou rouge et orangé, une réponse sur quatre nomme l’autre nuance. Une partie variable est aussi souvent dans chacun de ses états ; quand la table ne dit rien, une réponse ne change rien. Les réponses comptent comme indépendantes. Ces parts ont été fixées d’après ce que l’on sait en général des pelages et des yeux, sans être ajustées à aucun essai.",
} as const satisfies WordsOf<typeof en>;
