/** German wordings of charts that have one meaning, by function. From memory, common practice. */
export const GERMAN_SURE = `
constant-feed: Dauerplus | Klemme 30 | Dauerstrom 12V | Batterie + | Stromversorgung (Dauerplus) | Dauerplus Anhänger 12V | Radio Dauerstrom | Uhr / Speicher
ignition-feed: Kl. 15
switched-feed: geschaltetes Plus | S-Kontakt | Schaltplus (Radio) | Radio geschaltet
ground: Masse | Fahrzeugmasse | Minus | Batterieminus
illumination: Beleuchtung | Instrumentenbeleuchtung | Bel.
reverse: Rückfahrscheinwerfer | Rueckfahrsignal | Rückfahrlicht Signal
stop-lamp: Bremslicht | Bremsleuchten
stop-lamp-high: Dritte Bremsleuchte
indicator-left: Blinker links | Anhänger Blinker links
indicator-right: Fahrtrichtungsanzeiger rechts | Blinkleuchte re.
tail-left: Schlusslicht links | Linkes Rücklicht | Begrenzungsleuchte links
tail-right: Rechte Schlussleuchte | Standlicht rechts
plate-lamp: Kennzeichenbeleuchtung | Nummernschildleuchte
fog-rear: Nebelschlußleuchte | NSL | Nebelschlussleuchte Anhänger
fog-front: Nebelscheinwerfer
low-beam: Abblendlicht
main-beam: Fernlicht
headlamp-flash: Lichthupe
daytime-lamp: Tagfahrlicht
hazard: Warnblinkschalter
work-lamp: Arbeitsscheinwerfer hinten
beacon: Rundumkennleuchte
interior-lamp: Innenraumbeleuchtung | Kofferraumbeleuchtung | Innenleuchte
speaker-front-left-plus: Lautsprecher vorne links + | VL+ | Frontlautsprecher links +
speaker-rear-right-minus: LS HR - | Lautsprecher hinten rechts minus
speaker-front-right-minus: LSP VR (-)
line-rear-left-signal: Vorverstärkerausgang hinten links
amplifier-turn-on: Verstärker Einschaltsignal | Steuerleitung Endstufe | Einschaltleitung Verstärker | Remote-Leitung Endstufe
antenna-power: elektrische Antenne | Antennensteuerung | Motorantenne | Antennenverstärker 12V
mute: Telefon-Stummschaltung
parking-brake: Handbremse | Feststellbremse Schalter
speed: Geschwindigkeitssignal | GALA | Tachosignal
tachometer: Drehzahlsignal
steering-key-1: Lenkradtaste 1
steering-key-ground: Lenkradfernbedienung Masse
microphone-plus: Mikrofon +
door-switch: Türkontakt | Türkontaktschalter Fahrerseite
door-unlock: ZV Entriegeln
window-left-up: Fensterheber links hoch
wiper-low: Scheibenwischer Stufe 1
wiper-high: Wischer Stufe 2
washer: Wischwasserpumpe
horn: Hupe
alarm-siren: Alarmsirene
oil-pressure: Öldruckschalter
coolant-temperature: Kühlmitteltemperatur
fuel-level: Tankgeber
outside-temperature: Aussentemperaturfühler
alternator-lamp: Lichtmaschine D+ | Ladekontrolle | Lichtmaschine Erregung
starter-signal: Anlasser Kl. 50 | Anlasser Magnetschalter
glow-plug: Vorglühen
fuel-pump: Kraftstoffpumpe
cooling-fan: Kühlerlüfter
blower: Gebläse
heater-control: Standheizung
seat-heater: Sitzheizung
rear-screen-heater: Heckscheibenheizung
compressor-clutch: Klimakompressor
trailer-charge: Ladeleitung Plus | Ladeplus Anhängerbatterie
trailer-present: Anhängererkennung
ground-lamps: Masse für Stromkreis 1-8
ground-constant: Masse für Pin 9
ground-switched: Masse Ladeleitung
trailer-brake: Anhängerbremse
second-battery-feed: Zweitbatterie + | Aufbaubatterie
refrigerator-feed: Kühlschrank
camera-ground: Rückfahrkamera Masse
camera-power: Kamera Versorgung | Versorgung Kamera 12V
video-signal: Videosignal
can-high: CAN-High | CAN-Bus High
second-can-low: Komfort-CAN Low
tail-lift-up: Ladebordwand heben | LBW heben
tail-lift-down: Hubladebühne senken
winch-feed: Seilwinde +
port-light: Backbordlicht
anchor-light: Ankerlicht
bilge-pump: Bilgepumpe
bilge-float: Schwimmerschalter Bilge
not-used: nicht belegt | frei | n.b. | reserviert | Reserve
ignition-cut: Wegfahrsperre
power-take-off: Zapfwelle
hour-meter: Betriebsstundenzähler
k-line: K-Leitung
power-socket-feed: Zigarettenanzünder
water-level: Frischwassertank Füllstand
waste-level: Abwassertank Geber
speaker-subwoofer-plus: Subwoofer Ausgang +
can-low: CAN L
microphone-minus: Mikrofon Masse
marker-lamps: Seitenmarkierungsleuchten
stop-turn-right: Bremslicht rechts
rain-light-sensor: Regensensor
wiper-park: Wischermotor Endstellung
wiper-rear: Heckwischer
alternator-output: Generator B+
seat-switch: Sitzkontaktschalter
tipper-up: Kipper heben
tipper-down: Kippen senken
line-rear-right-signal: Cinch hinten rechts
gps-antenna: GPS-Antenne
parking-sensor: Parksensor hinten
`;

/** German wordings that may mean more than one function, by one that must be among them. */
export const GERMAN_OPEN = `
ignition-feed: Zündplus | Zuendungsplus | Zündungsplus abgesichert
reverse: RFS
antenna-signal: Dachantenne
power-socket-feed: Bordsteckdose
`;
