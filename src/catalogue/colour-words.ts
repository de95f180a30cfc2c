import type { ColourCode } from "../graph/harness.ts";

/** A colour of IEC 60757, or one that the standard has no letters for ("beige") or that is no colour ("bare"). */
export type NamedColour = ColourCode | "none";

/**
 * The colour words of one language, without accents and in lower case. A word that ends in "-" is a stem and takes each of
 * the endings; ß is written ss. From memory, common practice.
 */
export type ColourLanguage = {
  readonly endings: string;
  readonly words: Readonly<Partial<Record<NamedColour, string>>>;
};

export const COLOUR_LANGUAGES = {
  english: {
    endings: "",
    words: {
      BK: "black",
      BN: "brown chocolate choc",
      RD: "red",
      OG: "orange",
      YE: "yellow",
      GN: "green",
      BU: "blue navy",
      VT: "violet purple lilac lavender",
      GY: "grey gray slate",
      WH: "white",
      PK: "pink rose",
      GD: "gold golden",
      TQ: "turquoise",
      SR: "silver",
      none: "beige tan cream ivory clear transparent natural bare uninsulated maroon salmon khaki olive",
    },
  },
  german: {
    endings: "e er es en em",
    words: {
      BK: "schwarz schwarz-",
      BN: "braun braun-",
      RD: "rot rot-",
      OG: "orange orangen orangenes",
      YE: "gelb gelb-",
      GN: "grun grun- gruen gruen-",
      BU: "blau blau-",
      VT: "violett violett- lila purpur",
      GY: "grau grau-",
      WH: "weiss weiss- weis",
      PK: "rosa pink",
      GD: "gold golden golden-",
      TQ: "turkis turkis- tuerkis",
      SR: "silber silbern silbern-",
      none: "beige elfenbein transparent farblos durchsichtig natur blank",
    },
  },
  french: {
    endings: "",
    words: {
      BK: "noir noire noirs noires",
      BN: "marron marrons brun brune bruns chocolat",
      RD: "rouge rouges",
      OG: "orange oranges",
      YE: "jaune jaunes",
      GN: "vert verte verts vertes",
      BU: "bleu bleue bleus bleues",
      VT: "violet violette violets mauve lilas pourpre",
      GY: "gris grise grises",
      WH: "blanc blanche blancs blanches",
      PK: "rose roses",
      GD: "dore doree",
      TQ: "turquoise",
      SR: "argent argente argentee",
      none: "beige creme ivoire incolore transparent transparente cristal saumon bordeaux",
    },
  },
  spanish: {
    endings: "o a os as",
    words: {
      BK: "negr-",
      BN: "marron marrones cafe castano pard-",
      RD: "roj-",
      OG: "naranja naranjas anaranjad-",
      YE: "amarill-",
      GN: "verde verdes",
      BU: "azul azules celeste",
      VT: "violeta morad- purpura malva lila",
      GY: "gris grises",
      WH: "blanc-",
      PK: "rosa rosad-",
      GD: "dorad- oro",
      TQ: "turquesa",
      SR: "plata platead-",
      none: "beis beige crema marfil transparente incolor- desnud-",
    },
  },
  italian: {
    endings: "o a i e",
    words: {
      BK: "ner-",
      BN: "marrone marroni bruno bruna",
      RD: "ross-",
      OG: "arancio arancione arancioni arancia",
      YE: "giall-",
      GN: "verde verdi",
      BU: "blu azzurr- celeste celesti",
      VT: "viola violetto lilla porpora",
      GY: "grigi- grigio grigia",
      WH: "bianc- bianchi bianche",
      PK: "rosa",
      GD: "oro dorat-",
      TQ: "turchese",
      SR: "argent- argentat-",
      none: "beige avorio crema trasparente incolore nudo nocciola",
    },
  },
  dutch: {
    endings: "",
    words: {
      BK: "zwart zwarte",
      BN: "bruin bruine",
      RD: "rood rode",
      OG: "oranje",
      YE: "geel gele",
      GN: "groen groene",
      BU: "blauw blauwe",
      VT: "paars paarse violet purper lila",
      GY: "grijs grijze",
      WH: "wit witte",
      PK: "roze rose",
      GD: "goud gouden",
      TQ: "turkoois turquoise",
      SR: "zilver zilveren",
      none: "beige creme transparant doorzichtig kleurloos blank",
    },
  },
  polish: {
    endings: "y a e o ym ego ej i im iego iej",
    words: {
      BK: "czarn-",
      BN: "brazow- brunatn-",
      RD: "czerwon-",
      OG: "pomaranczow-",
      YE: "zolt-",
      GN: "zielon-",
      BU: "niebiesk- granatow- blekitn- modr-",
      VT: "fioletow- purpurow- liliow-",
      GY: "szar- siw- popielat-",
      WH: "bial-",
      PK: "rozow-",
      GD: "zlot-",
      TQ: "turkusow-",
      SR: "srebrn-",
      none: "bez bezow- kremow- przezroczyst- bezbarwn-",
    },
  },
} as const satisfies Record<string, ColourLanguage>;

export type LanguageName = keyof typeof COLOUR_LANGUAGES;

/**
 * Short words that stand for one colour in every custom and are safe beside other words in a line.
 * From memory, common practice.
 */
export const SHORT_COLOURS: Readonly<Partial<Record<NamedColour, string>>> = {
  BK: "blk blck blak schwz czarn",
  BN: "brn bwn brwn",
  RD: "redd",
  OG: "orrange orng orn org oran aranc naranj pomar",
  YE: "yel ylw yell yelo ylo amar gial zolt",
  GN: "grn gren gree ziel",
  BU: "blu azz nieb",
  VT: "pur purpel vio viol vlt ppl purp purpl prpl fiol",
  GY: "gry grig szar",
  WH: "wht whit wite blanco",
  PK: "pnk",
  TQ: "turq",
  SR: "silv slvr",
};

/** Short words that are colours in a colour column only: in a line they mean other things as well. From memory. */
export const COLUMN_SHORT_COLOURS: Readonly<Partial<Record<NamedColour, string>>> = {
  BK: "sch schw swz ner noi blac zwa zwt",
  BN: "mar marr braun brz braz bru bro bruin",
  RD: "roj rge rou rood czerw",
  OG: "ora aran nar pom",
  YE: "gel gia jne jau ama gee",
  GN: "gru ver vrt verd groe",
  BU: "azu ble",
  VT: "prp paa fio mor",
  GY: "gri gra",
  WH: "whi wei wss bco blc bia bialy wit",
  PK: "roz",
  GD: "gld gol",
  TQ: "tur trq",
  SR: "sil slv",
  none: "bge clr trans",
};

/** Words for a lighter or darker colour. IEC 60757 has none, so they go; the chart's own text keeps them. */
export const SHADE_WORDS =
  "light lt lgt lite dark dk drk pale deep bright sky lime royal medium hell helle heller dunkel dunkle dkl clair claire fonce foncee ciel claro clara oscuro oscura chiaro chiara scuro scura licht donker jasny jasna jasno ciemny ciemna ciemno";

/** Shade words that stand after the colour ("azul claro"). */
export const SHADES_AFTER =
  "clair claire fonce foncee ciel claro clara oscuro oscura chiaro chiara scuro scura";

/** Shades that are written in one word with the colour: "hellblau", "donkergroen", "jasnoniebieski", "ltgrn". */
export const SHADE_PREFIXES = "hell dunkel himmel licht donker jasno ciemno light dark lt dk sky";

/** Words for the second colour of a lead. */
export const STRIPE_WORDS =
  "stripe stripes striped strip tracer trace trcr trc str streifen strich kennfaden kennstreifen kennfarbe kennring ringel gestreift rayure rayures raye rayee lisere filet bande trait raya rayas franja linea lista rayado rayada rigato rigata riga striscia strisce banda filetto streep strepen streepje gestreept paskiem pasek paski paskami paska";

/** Words between the first colour and the second. */
export const WITH_WORDS =
  "with mit avec con met ze ein einem eine un une una uno a an the of de di a z w wih";

/** Words for "and". Green and yellow together are the one code GNYE of IEC 60757. */
export const AND_WORDS = "and und et y e ed en i";

/** The colour before these words is the tracer: "black stripe on yellow". */
export const ON_WORDS = "on auf sur sobre su op na over";

/** The colour after these words is the base. */
export const BASE_WORDS = "base ground basis grundfarbe fond fondo main";

/** Words that say that there is a choice, so that no colour is certain. */
export const OR_WORDS = "or oder ou o of lub";

/** Words beside a colour that say nothing about it. */
export const COLOUR_NOISE =
  "wire wires lead leads cable cavo cavi fil cable kabel draht ader leitung hilo filo draad przewod conductor colour color colours farbe couleur colore kleur kolor solid plain uni mm qmm mmq awg ga gauge sq";

/** Ordinary words that are one letter from a colour word and no misspelling of it. */
export const NO_MISSPELLINGS =
  "block blocks blown bland blend blade write range ranger prise pairs parts state plate slave later rough route noise noises stary grade grape grace brake brace greet greed crown brows brawn bronze while whine whole posse radio rosen violent orang gross groan grown queen screen serve verse verso verte blind blank gelle relay rotor clean cleat";
