import { remembering } from "../remember.ts";
import { fold, squeeze } from "./fold.ts";

/** What a column of a chart holds. `text` is kept as it is; `connector` names the housing that a label belongs to. */
export type ChartColumn =
  | "label"
  | "function"
  | "colour"
  | "tracer"
  | "size"
  | "current"
  | "fuse"
  | "direction"
  | "connector"
  | "text";

/**
 * Words that charts put over their columns, in English, German, French, Spanish, Italian, Dutch and Polish, without
 * accents (common practice, no source). Where a head has words of several, the first of this list counts.
 */
const WORDS: readonly (readonly [ChartColumn, string])[] = [
  [
    "tracer",
    "tracer stripe zweitfarbe kennfarbe streifen streifenfarbe ringfarbe ring lisere filet bande raya franja traza riga striscia streep streepkleur pasek",
  ],
  [
    "fuse",
    "fuse fuses fusing sicherung sicherungen absicherung fusible fusibles fusibile zekering bezpiecznik",
  ],
  [
    "size",
    "size gauge guage awg mm mm2 mm² qmm mmq csa area sqmm sq section sect cross querschnitt quers ga gge swg seccion secc calibre sezione sez doorsnede przekroj diametre diameter",
  ],
  [
    "direction",
    "direction dir i/o io in/out input/output e/a ein/aus e/s i/u in/uit we/wy richtung sens direccion direzione kierunek signalrichtung",
  ],
  [
    "colour",
    "color colour colors colours colouring col clr farbe farben fa farbcode couleur couleurs coul teinte colores colore colori kleur kleuren kleurcode kolor kolory barwa",
  ],
  [
    "current",
    "current amps amp ampere amperes amperage rating load strom belastung stromstarke courant intensite corriente intensidad amperaje corrente assorbimento stroom prad natezenie",
  ],
  [
    "function",
    "function functions signal signals use purpose description desc designation assignment usage service duty circuit polarity channel funktion funktionen signale beschreibung bezeichnung belegung verwendung zweck stromkreis bedeutung aufgabe benennung polaritat fonction fonctions signaux affectation utilisation libelle polarite funcion funciones senal descripcion uso designacion circuito asignacion denominacion polaridad funzione funzioni segnale descrizione utilizzo denominazione polarita functie functies signaal omschrijving beschrijving gebruik bestemming polariteit funkcja funkcje sygnal opis przeznaczenie obwod nazwa zastosowanie what wat was quoi cosa verbraucher consommateur consumidor utenza verbruiker odbiornik",
  ],
  [
    "label",
    "pin pins pin# # tag tags flag flags core cores stud studs cavity cavities cav contact contacts kontakt kontakte kammer pinnr pin-nr kontaktnr polnr broche broches borne bornes voie voies alveole repere contacto patilla polo contatto contatti piedino cavita cavidad styk styki wyprowadzenie pool contactnr pos position positie posicion posizione pozycja steckplatz stift label platz plot way ways item lp terminal term klemme klemmen kl morsetto klem zacisk aansluiting via pol poles pole",
  ],
  [
    "connector",
    "connector plug housing socket block stecker steckverbinder steckdose buchse kupplung connecteur fiche prise boitier conector enchufe connettore spina presa stekker zlacze wtyczka gniazdo",
  ],
  [
    "text",
    "remark remarks note notes comment comments bemerkung bemerkungen hinweis anmerkung kommentar remarque remarques commentaire observation observations nota notas observaciones observacion osservazioni opmerking opmerkingen uwagi uwaga rem opm bem obs ckt from to goes destination source nach von ziel herkunft vers destinazione voltage volts spannung tension tensione spanning napiecie level type part info",
  ],
];
/** Words that stand beside the others and decide nothing. */
const BESIDE = new Set(
  "no nr num number nummer numero numer n° nº wire wires lead leads cable cables conductor insulation base main code name names signalname ader adern leitung kabel litze fil fils hilo cavo cavi filo fili draad draden draht aders przewod przewodu zyla zyly kabla the of de du des del della di la le les el het van der die das au en a b max nominal abbr abbreviation id und and".split(
    " ",
  ),
);
/** German and Dutch write the two words as one. */
const ENDINGS: readonly (readonly [ChartColumn, RegExp])[] = [
  ["colour", /(?:farbe|farben|kleur|kleuren|farbcode|kleurcode)$/],
  ["size", /(?:querschnitt|doorsnede)$/],
  ["fuse", /(?:sicherung|zekering)$/],
  ["current", /(?:strom|stroom)$/],
  ["function", /(?:bezeichnung|belegung|funktion|functie|omschrijving|beschreibung|name|naam)$/],
  ["label", /(?:nummer|nr)$/],
];

const ROLE_OF = new Map<string, ChartColumn>();
for (const [role, words] of WORDS)
  for (const word of words.split(" ")) ROLE_OF.set(word, ROLE_OF.get(word) ?? role);
const ORDER = WORDS.map(([role]) => role);

/** What a head says of its column; `null` where it holds a word that no head has. */
export const readHead: (cell: string) => ChartColumn | null = remembering((cell) => {
  const bare = squeeze(fold(cell)).replace(/[.:*]+(?=\s|$)/g, "");
  if (bare === "" || bare.length > 48) return null;
  const whole = ROLE_OF.get(bare);
  if (whole) return whole;
  // "Colour 2", "2nd colour": the tracer. Another figure is no head.
  const second = /(?:^|\s)(?:2nd|second(?:ary|e)?|2|zweite|tweede|deuxieme)(?:\s|$)/;
  const words = bare
    .replace(/[([{][^)\]}]*[)\]}]?/g, " ")
    .replace(second, " ")
    .split(/[^\w#²°/]+|\/(?=\w{3})/)
    .filter(Boolean);
  const found = new Set<ChartColumn>();
  let beside = 0;
  for (const word of words) {
    const role = ROLE_OF.get(word) ?? ENDINGS.find(([, ending]) => ending.test(word))?.[0];
    if (role) found.add(role);
    else if (BESIDE.has(word)) beside++;
    else return null;
  }
  if (found.size === 0) {
    if (/(?:mm²|mm2|awg)/.test(bare)) return "size";
    if (words.length > 0 && beside === words.length)
      return /^(?:no|nr|num|number|nummer|numero|numer|n°|nº)$/.test(words[0]!) ? "label" : "text";
    return null;
  }
  const role = ORDER.find((known) => found.has(known))!;
  if (!second.test(bare)) return role;
  return role === "colour" || role === "tracer" ? "tracer" : null;
});

/** The columns that a row of heads names; `null` where the row is none. */
export function readHeads(cells: readonly string[]): readonly ChartColumn[] | null {
  let known = 0;
  let filled = 0;
  const roles = cells.map((cell): ChartColumn => {
    if (cell === "") return "text";
    filled++;
    const role = readHead(cell);
    if (role) known++;
    return role ?? "text";
  });
  if (known === 0 || known * 2 < filled || (known === 1 && (filled === 1 || filled > 2))) return null;
  // A head that nobody knows holds no figures; a row of a chart does.
  const strange = cells.some((cell) => cell !== "" && readHead(cell) === null && /\d/.test(cell));
  if (strange || !roles.some((role) => role !== "text")) return null;
  return roles;
}

/** A line of heads that nothing separates: "Pin Colour Function". */
export function isHeadLine(text: string): boolean {
  const words = squeeze(text).split(" ");
  if (words.length < 2 || words.length > 12) return false;
  if (/\d/.test(text)) return false;
  const roles = new Set<ChartColumn>();
  let strange = 0;
  for (const word of words) {
    const role = readHead(word);
    if (!role) strange++;
    else if (role !== "text") roles.add(role);
  }
  if (strange * 3 > words.length) return false;
  return roles.size >= 2;
}

/** Heads such as "Wire" or "Name", which say nothing of what stands below. */
export function isVagueHead(cell: string): boolean {
  const words = squeeze(fold(cell))
    .split(/[^\w]+/)
    .filter(Boolean);
  return words.every((word) => BESIDE.has(word)) && readHead(cell) === "text";
}

/** Heads over labels that name something else on other charts; the column's contents decide. */
export function isDoubtfulLabelHead(cell: string): boolean {
  return /^(?:terminals?|klemmen?|kl|bornes?|morsetto|klem|zacisk|item|lp|no|nr|number|nummer|numero|numer|n°|nº|pos|position|positie|posicion|posizione|pozycja|wire no|circuit no)\.?$/.test(
    squeeze(fold(cell)).replace(/\.$/, ""),
  );
}
