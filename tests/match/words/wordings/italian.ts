/** Italian wordings of charts that have one meaning, by function. From memory, common practice. */
export const ITALIAN_SURE = `
constant-feed: Positivo fisso | Positivo diretto batteria | +12V permanente | Batteria + | Alimentazione permanente
switched-feed: Accessori | Alimentazione commutata
ground: Massa | Massa telaio | Negativo | Massa rimorchio
illumination: Illuminazione | Illuminazione strumenti | Luci cruscotto | + luci
reverse: Luce retromarcia | Retromarcia | Faro retromarcia
stop-lamp: Luci stop | Stop
stop-lamp-high: Terza luce stop
indicator-left: Freccia sinistra
indicator-right: Freccia dx | Indicatore di direzione destro
tail-left: Luce di posizione sinistra | Fanale posteriore sinistro | Luci posizione sx
tail-right: Posizione destra
plate-lamp: Luce targa
fog-rear: Retronebbia | Retronebbia rimorchio
fog-front: Fendinebbia
low-beam: Anabbaglianti
main-beam: Abbaglianti
hazard: Luci di emergenza
headlamp-flash: Lampeggio abbaglianti
daytime-lamp: Luci diurne
work-lamp: Faro da lavoro posteriore
beacon: Lampeggiante | Girofaro
interior-lamp: Plafoniera
speaker-front-left-plus: Altoparlante anteriore sinistro + | AS+
speaker-rear-right-minus: Altoparlante posteriore destro - | PD -
speaker-front-right-plus: Alt. ant. dx +
speaker-rear-left-minus: Cassa post. sx -
line-rear-left-signal: Uscita linea posteriore sinistra
amplifier-turn-on: Accensione amplificatore | Comando amplificatore | Remote amplificatore
antenna-power: Antenna elettrica | Alimentazione antenna | Comando antenna
mute: Mute telefono
parking-brake: Freno a mano | Freno di stazionamento
speed: Segnale velocità | Velocità veicolo
tachometer: Contagiri
steering-key-1: Comandi al volante 1
steering-key-ground: Massa comandi volante
microphone-minus: Microfono -
door-switch: Contatto porta
door-lock: Chiusura porte
door-unlock: Apertura porte | Chiusura centralizzata apre
window-left-up: Alzacristallo sinistro su
window-right-down: Alzavetro destro giù
wiper-low: Tergicristallo prima velocità
wiper-rear: Tergilunotto
washer: Pompa lavavetri
horn: Clacson | Avvisatore acustico
alarm-siren: Sirena allarme
oil-pressure: Pressione olio | Bulbo olio
coolant-temperature: Temperatura acqua
fuel-level: Livello carburante | Galleggiante carburante
fuel-low: Spia riserva carburante
outside-temperature: Temperatura esterna
alternator-lamp: Spia carica batteria | Alternatore D+
starter-signal: Motorino d'avviamento
glow-plug: Candelette
fuel-pump: Pompa carburante
cooling-fan: Elettroventola | Ventola radiatore
blower: Ventola abitacolo
heater-control: Riscaldatore ausiliario
seat-heater: Sedili riscaldati
rear-screen-heater: Lunotto termico
compressor-clutch: Compressore clima
trailer-charge: Carica batteria rimorchio
ground-constant: Massa per 9
ground-lamps: Massa luci
trailer-brake: Freno elettrico rimorchio
second-battery-feed: Batteria servizi | Seconda batteria
refrigerator-feed: Frigorifero | Alimentazione frigo
camera-ground: Massa telecamera
camera-power: Alimentazione telecamera
video-signal: Segnale video
can-high: CAN alta
tail-lift-up: Sponda idraulica su
tail-lift-down: Sponda montacarichi giù
winch-feed: Alimentazione verricello
stern-light: Luce di poppa
anchor-light: Luce di fonda
masthead-light: Luce testa d'albero
navigation-lights: Luci di via
bilge-pump: Pompa di sentina
bilge-float: Galleggiante sentina
water-pump: Pompa acqua
waste-level: Livello acque grigie
not-used: non usato | libero | non collegato | riservato
ignition-cut: Antiavviamento | Spegnimento motore
power-take-off: Presa di forza
hour-meter: Contaore
power-socket-feed: Accendisigari | Presa 12V
windlass-up: Salpancora su
speaker-front-left-minus: Anteriore sinistro -
line-front-right-signal: Uscita preamplificata anteriore destra
horn-switch: Pulsante clacson
waste-valve: Elettrovalvola acque grigie
`;

/** Italian wordings that may mean more than one function, by one that must be among them. */
export const ITALIAN_OPEN = `
ignition-feed: Positivo sotto chiave | + sottochiave
illumination: Luci
video-signal: Segnale retromarcia telecamera
stop-lamp: Interruttore stop
`;
