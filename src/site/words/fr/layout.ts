import type { WordsOf } from "../catalogue.ts";
import type en from "../en/layout.ts";

export default {
  "layout.skip": "Aller au contenu",
  "layout.main": "Menu principal",
  "layout.languages": "Langues",
  "layout.species": "Espèces",
  "layout.tell-apart": "Distinguer",
  "layout.practice": "S’exercer",
  "layout.squares": "Carrés",
  "layout.regions": "Régions",
  "layout.coverage": "Couverture",
  "layout.methods": "Méthodes",
  "layout.downloads": "Téléchargements",
  "layout.invented": "Données inventées.",
  "layout.edition": "{title}, édition {edition}, {date}.",
  "layout.type": "Caractères : Brygada 1918 et Source Sans 3, <a>licence SIL Open Font</a>.",
  "layout.data": "Données : <a>{licence}</a>.",
  "layout.own-host": "Rien sur cette page ne vient d’un autre hôte.",
  "layout.wrong": "Une erreur ? <a>{contact}</a>",
  "layout.part-english": "Certaines parties de cette page ne sont pas encore traduites ; elles sont en anglais.",
  "layout.invented-notice":
    "Les espèces sont réelles ; le programme, les lieux des données et les personnes ne le sont pas.",
  "layout.account-language": "Cette fiche est en {language}.",
  "layout.page-language": "Cette page est en {language}.",
  "layout.printed-foot": "{title}, édition {edition}.",
  "layout.thanks": "Remerciements",
  "layout.thanks-to": "Aux personnes dont les données sont utilisées ici, par ordre alphabétique : {names}.",
} satisfies WordsOf<typeof en>;
