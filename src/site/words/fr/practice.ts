import type { WordsOf } from "../catalogue.ts";
import type en from "../en/practice.ts";

export default {
  "practice.title": "S’exercer",
  "practice.lead":
    "Un insecte à la fois, dessiné d’après le même tableau que les comparaisons. Nommez-le aussi loin que ce qui est montré le permet : quand l’espèce ne peut pas être déterminée, le groupe est la bonne réponse.",
  "practice.noscript":
    "L’exercice demande des scripts, qui sont désactivés. La feuille à imprimer s’en passe : elle a des questions, et les réponses motivées.",
  "practice.sheet-link": "Feuille à imprimer, avec les réponses",
  "practice.start": "Commencer",
  "practice.which": "Lequel est-ce ?",
  "practice.shown": "{who}",
  "practice.also": "Vu aussi",
  "practice.length": "longueur {from, number}–{to, number} mm",
  "practice.fact": "{part} : {state}",
  "practice.drawing": "Un insecte dessiné, vu du dessus. {parts}.",
  "practice.answer": "Répondre",
  "practice.choose": "Choisissez d’abord un des noms.",
  "practice.next": "Suivant",
  "practice.right": "**Oui : {name}.**",
  "practice.right-group": "**Oui : {name}.** Ce qui est montré ne permet pas de déterminer l’espèce.",
  "practice.near": "**C’est vrai, et une bonne donnée.** Ce qui est montré permet d’aller plus loin : {name}.",
  "practice.more": "**C’est plus que ce qui est montré ne permet de trancher.** La réponse est : {name}.",
  "practice.wrong": "**C’est : {name}.**",
  "practice.was": "Le dessin suit : {name}.",
  "practice.beside": "À côté de : {name}",
  "practice.whole": "La comparaison entière",
  "practice.comes-back": "La question revient après {n, plural, one {une autre} other {# autres}}.",
  "practice.device":
    "Ce qui doit revenir reste sur cet appareil et n’est envoyé nulle part. {n, plural, =0 {Rien n’attend.} one {Un insecte attend de revenir.} other {# insectes attendent de revenir.}}",
  "practice.clear": "Oublier ce qui est gardé",
  "practice.cleared": "Oublié : rien n’est gardé sur cet appareil.",
  "practice.failed": "Les caractères n’ont pas pu être chargés. La feuille à imprimer s’en passe.",
  "practice.how": "Comment les questions reviennent",
  "practice.how-text":
    "Un insecte qui n’a pas été reconnu revient après 2 autres questions, puis après 5, puis après 12 ; ensuite il est laissé en paix jusqu’au tour suivant. Se rappeler à des distances croissantes fixe les noms plus longtemps que répéter aussitôt (Landauer et Bjork 1978, cité de mémoire). Rien n’est compté, et personne d’autre ne le voit.",
  "practice.text-note":
    "Dessins et texte faits pour cette démonstration : à vérifier dans un guide de détermination récent.",
  "practice.sheet-title": "Feuille d’exercice",
  "practice.sheet-lead":
    "Nommez chacun aussi loin que ce qui est montré le permet. Quand l’espèce ne peut pas être déterminée, écrivez le groupe. Dites quelle partie a décidé.",
  "practice.sheet-name": "Nom",
  "practice.sheet-part": "Ce qui décide",
  "practice.sheet-answers": "Réponses",
  "practice.sheet-number": "N°",
  "practice.sheet-reason": "Pourquoi",
  "practice.sheet-against": "Contre {name} : {reason}",
  "practice.sheet-print": "Imprimez cette page : les figures viennent d’abord, les réponses sur une page à part.",
  "practice.sheet-back": "S’exercer sur cet appareil",
} satisfies WordsOf<typeof en>;
