import { phrasesByMeaning } from "./phrases.ts";

/** Italian phrases and short forms that stand for several ideas at once. From memory, common practice. */
export const ITALIAN_PHRASES = phrasesByMeaning({
  "front left": "ant sx, sx ant, as., a sx, ant sin",
  "front left plus": "as+, as +",
  "front left minus": "as-, as -",
  "front right": "ant dx, dx ant, a dx, ant des",
  "front right plus": "ad+",
  "front right minus": "ad-",
  "rear left": "post sx, sx post, p sx, post sin",
  "rear left plus": "ps+",
  "rear left minus": "ps-",
  "rear right": "post dx, dx post, p dx, pd, post des",
  "constant plus":
    "positivo fisso, positivo diretto, positivo permanente, + fisso, + diretto, + permanente, positivo costante, positivo sempre",
  "ignition plus":
    "positivo sotto chiave, positivo sottochiave, + sotto chiave, + sottochiave, positivo chiave, + chiave, positivo quadro, + quadro, positivo sotto quadro, + sotto quadro, positivo accensione, positivo sottoquadro",
  "ignition feed":
    "alimentazione sotto chiave, alimentazione sottochiave, 12v sotto chiave, alimentazione quadro, corrente sotto chiave",
  "constant feed":
    "alimentazione fissa, alimentazione diretta, alimentazione permanente, corrente fissa, corrente diretta",
  "accessory plus": "positivo accessori, + accessori",
  "battery plus": "positivo batteria, + batteria",
  "battery minus": "negativo batteria, - batteria",
  "feed volts": "tensione alimentazione",
  "sensor feed": "alimentazione sensore, alimentazione sensori",
  "sensor ground": "massa sensore, massa sensori",
  "signal ground": "massa segnale, massa segnali",
  "second battery": "seconda batteria, 2a batteria, batteria 2",
  "leisure battery": "batteria servizi, batteria cellula, batteria servizi cellula",
  "house battery": "batteria servizio, batteria bordo",
  "auxiliary battery": "batteria ausiliaria, batteria supplementare, batteria secondaria",
  "charge lamp":
    "spia carica, spia alternatore, spia ricarica, lampada carica, spia generatore, spia carica batteria",
  "oil pressure lamp": "spia olio, spia pressione olio",
  "high beam lamp": "spia abbaglianti",
  "engine run": "motore acceso, motore moto",
  "stop engine": "spegnimento motore, arresto motore, stop motore, blocco motore",
  "ignition coil": "bobina accensione",
  starter: "motorino avviamento",
  "position lamp":
    "luce posizione, luci posizione, fanale posizione, fanali posizione, luci pos, luce pos, fanalino posizione",
  "parking lamp": "luce parcheggio, luci parcheggio, luci stazionamento, luce stazionamento",
  "tail lamp":
    "luce posteriore, luci posteriori, fanale posteriore, fanali posteriori, fanalino posteriore, fanalini posteriori, luce coda",
  "low beam":
    "anabbagliante, anabbaglianti, luci anabbaglianti, luce anabbagliante, fari anabbaglianti, anabb",
  "high beam":
    "abbagliante, abbaglianti, luci abbaglianti, luce abbagliante, fari abbaglianti, profondita luci, luci profondita, abb",
  "headlamp flash": "lampeggio abbaglianti, lampeggio fari, lampo luci, lampo fari",
  "daytime lamp": "luci diurne, luce diurna, luci marcia diurna",
  "third stop lamp": "terza luce stop, terzo stop, 3o stop, terza luce freno, 3a luce stop",
  "stop lamp": "luce arresto, luci arresto",
  "brake lamp": "luci freno, luce freno, luci freni",
  "brake pedal switch":
    "interruttore freno, interruttore stop, interruttore pedale freno, interruttore luci stop",
  "plate lamp": "luce targa, luci targa, illuminazione targa, lampada targa",
  "fog rear lamp":
    "retronebbia, retro nebbia, luce retronebbia, fendinebbia posteriore, fanale retronebbia, luci retronebbia, nebbia posteriore",
  "fog front lamp":
    "fendinebbia, fendinebbia anteriori, fari fendinebbia, faro fendinebbia, fendi nebbia, luci fendinebbia",
  "clearance lamp": "luci ingombro, luce ingombro, luci sagoma",
  "spot lamp":
    "faro profondita, fari profondita, faro supplementare, fari supplementari, faro ricerca, fari aggiuntivi",
  "work lamp":
    "faro lavoro, fari lavoro, luce lavoro, luci lavoro, faretto lavoro, fanale lavoro, faretti lavoro",
  beacon: "lampeggiante emergenza, faro rotante, luce rotante, faro girevole",
  "interior lamp":
    "luce interna, luci interne, luce abitacolo, illuminazione interna, illuminazione abitacolo, luci interni",
  "cabin lamp": "luce cabina, illuminazione cabina",
  "cargo lamp": "luce baule, luce bagagliaio, luce vano carico, luci vano carico, illuminazione vano carico",
  "warning lamp": "spia avaria, spia avviso",
  "illumination dash":
    "illuminazione cruscotto, illuminazione plancia, luci cruscotto, luce cruscotto, luci plancia",
  "illumination instrument":
    "illuminazione strumenti, luci strumenti, luce strumenti, illuminazione quadro, illuminazione quadro strumenti, luci quadro",
  hazard: "luci emergenza, quattro frecce",
  "indicator left": "freccia sx, frecce sx, indicatore sx",
  "indicator right": "freccia dx, frecce dx, indicatore dx",
  "reverse lamp": "luce retromarcia, luci retromarcia, faro retromarcia",
  "reverse gear": "retromarcia inserita, marcia indietro",
  "camera reverse": "telecamera retromarcia, telecamera posteriore, retrocamera, camera posteriore",
  "camera feed": "alimentazione telecamera, alimentazione camera, alimentazione retrocamera",
  "camera ground": "massa telecamera, negativo telecamera",
  "navigation lamp": "luci via, luci navigazione, fanali via, luce navigazione",
  "lamp port navigation":
    "luce via sinistra, fanale via sinistro, luce rossa via, fanale sinistra rosso, luce via sx",
  "lamp starboard navigation":
    "luce via dritta, luce via destra, fanale via destro, fanale via dritta, luce via dx",
  "stern lamp": "luce poppa, fanale poppa, fanale coronamento, luce coronamento",
  "masthead lamp": "luce testa albero, fanale testa albero, luce albero, testa albero, luce testa d'albero",
  "anchor lamp": "luce fonda, fanale fonda",
  "deck lamp": "luce coperta, luce pozzetto, luci pozzetto, luci coperta, luce ponte",
  "remote control": "telecomando, comando distanza, controllo remoto",
  "wired remote control": "telecomando filo, comando filare, comando cavo, telecomando cavo",
  "steering control": "comandi volante, comando volante, controlli volante",
  "steering key": "tasti volante, pulsanti volante, tasto volante",
  "key 1": "tasto 1, pulsante 1",
  "key 2": "tasto 2, pulsante 2",
  "amplifier turnon":
    "accensione amplificatore, comando amplificatore, accensione ampli, consenso amplificatore, attivazione amplificatore, accensione finale, comando accensione amplificatore",
  "antenna control": "comando antenna, consenso antenna, accensione antenna",
  "electric antenna": "antenna elettrica",
  "antenna amplifier": "amplificatore antenna",
  "fuel pump": "pompa carburante, pompa benzina, pompa gasolio",
  "fuel level": "livello carburante, livello benzina, livello gasolio",
  "fuel sender": "galleggiante carburante, galleggiante benzina, galleggiante serbatoio, sonda carburante",
  "fuel gauge": "indicatore carburante, indicatore benzina",
  "fuel reserve lamp": "spia riserva, spia riserva carburante, riserva carburante spia",
  "fuel reserve": "riserva carburante, riserva benzina",
  "oil pressure": "pressione olio, bulbo olio, pressostato olio, bulbo pressione olio",
  "oil temperature": "temperatura olio",
  "coolant temperature":
    "temperatura acqua, temp acqua, temperatura motore, temperatura liquido raffreddamento, temperatura refrigerante, bulbo temperatura acqua",
  "coolant level": "livello liquido raffreddamento, livello acqua motore, livello refrigerante",
  "outside temperature": "temperatura esterna, temperatura ambiente",
  "intake air temperature": "temperatura aria aspirata, temperatura aria aspirazione, temperatura aria",
  "manifold pressure": "pressione collettore, pressione aspirazione",
  "boost pressure": "pressione turbo, pressione sovralimentazione",
  "throttle position": "posizione farfalla, potenziometro farfalla",
  "crankshaft sensor": "sensore giri, sensore albero motore",
  "camshaft sensor": "sensore fase, sensore albero camme",
  "wheel speed": "velocita ruota",
  "door contact": "contatto porta, pulsante porta, contatto portiera, contatto porte, interruttore porta",
  "hood contact": "contatto cofano, pulsante cofano, interruttore cofano",
  "boot contact": "contatto baule, pulsante baule, contatto bagagliaio",
  "boot release": "apertura baule, apertura bagagliaio, apertura portellone, sblocco baule",
  "lock door":
    "chiusura porte, blocco porte, chiusura centralizzata chiude, chiusura centralizzata chiusura, chiusura centralizzata blocco, blocco portiere, chiudi porte",
  "unlock door":
    "apertura porte, sblocco porte, chiusura centralizzata apre, chiusura centralizzata apertura, chiusura centralizzata sblocco, sblocco portiere, apri porte",
  "central lock": "chiusura centralizzata",
  "heater rear screen":
    "lunotto termico, lunotto posteriore termico, lunotto riscaldato, sbrinatore lunotto, resistenza lunotto",
  "wiper rear": "tergilunotto, tergi lunotto, tergicristallo posteriore",
  "washer rear": "lavalunotto, lava lunotto, pompa lavalunotto",
  "wiper parking":
    "ritorno tergicristallo, fine corsa tergicristallo, ritorno automatico tergicristallo, finecorsa tergi",
  "low speed": "prima velocita, 1a velocita, velocita lenta, velocita bassa, velocita 1, bassa velocita",
  "high speed":
    "seconda velocita, 2a velocita, velocita veloce, velocita alta, velocita 2, alta velocita, velocita rapida",
  "auxiliary heater":
    "riscaldatore ausiliario, riscaldamento supplementare, riscaldatore autonomo, riscaldamento ausiliario, riscaldatore supplementare, riscaldatore stazionario, riscaldamento autonomo",
  "seat heater": "sedile riscaldato, sedili riscaldati, riscaldamento sedile, sedili riscaldabili",
  "mirror heater":
    "specchi riscaldati, specchio termico, sbrinamento specchi, specchietti riscaldati, specchi termici",
  "radiator fan": "elettroventola, elettroventola radiatore, ventola radiatore, ventola raffreddamento",
  blower:
    "ventola abitacolo, elettroventola abitacolo, ventilatore abitacolo, ventola riscaldamento, elettroventilatore abitacolo",
  "aircon compressor":
    "compressore clima, compressore aria condizionata, frizione compressore, compressore climatizzatore, giunto compressore",
  "bilge pump": "pompa sentina",
  "bilge float": "galleggiante sentina",
  "bilge alarm": "allarme sentina",
  "bilge blower":
    "aspiratore sentina, ventola sentina, aspiratore vano motore, ventilatore sentina, ventola vano motore",
  "float switch": "interruttore galleggiante",
  "depth sounder": "ecoscandaglio, scandaglio, profondimetro",
  "rudder position": "angolo timone, angolo barra, indicatore timone",
  "water pump": "pompa acqua, autoclave, pompa acqua dolce",
  "waste tank": "serbatoio acque grigie, serbatoio acque nere, serbatoio recupero, serbatoio acque reflue",
  "water tank": "serbatoio acqua, serbatoio acque chiare, serbatoio acqua potabile, serbatoio acqua dolce",
  "waste valve": "valvola acque grigie, valvola scarico, elettrovalvola acque grigie",
  "air compressor": "compressore aria",
  "trailer brake": "freno rimorchio, freni rimorchio",
  "electric brake": "freno elettrico, freni elettrici",
  "trailer sense": "rilevamento rimorchio, presenza rimorchio, rilevazione rimorchio",
  "lift axle": "asse sollevabile, assale sollevabile",
  "hour meter": "contaore",
  "seat switch": "interruttore sedile, microinterruttore sedile",
  "lighter socket": "presa accendisigari",
  "tip up": "ribaltabile su, cassone su",
  "tip down": "ribaltabile giu, cassone giu",
  "left up": "sinistro su, sx su, sinistra su",
  "right up": "destro su, dx su, destra su",
  "taillift up": "sponda su, sponda idraulica su, sponda montacarichi su, montacarichi su",
  "windlass up": "salpancora su, salpa ancora su",
  "trim up": "trim su",
  "window up": "alzacristallo su, alzavetro su, finestrino su, vetro su",
  "lift up": "sollevatore su",
  "speaker front left": "altoparlante as",
  navigation: "di via",
});
