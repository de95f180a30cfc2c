/** Dutch wordings of charts that have one meaning, by function. From memory, common practice. */
export const DUTCH_SURE = `
constant-feed: constante plus | Vaste voeding 12V | Accu + | Permanente plus | Accu plus (vast)
switched-feed: Geschakelde plus | accessoirestand
ground: Massa | Aarde
illumination: Dashboardverlichting | Verlichting | Verlichting dashboard
reverse: Achteruitrijlicht | Achteruitrijsignaal
stop-lamp: Remlicht | Remlichten
stop-lamp-high: Derde remlicht
indicator-left: Knipperlicht links
indicator-right: Richtingaanwijzer rechts | Knipperlichten rechts
tail-left: Achterlicht links | Stadslicht links
tail-right: Rechter achterlicht | Achterlicht rechts + kenteken
plate-lamp: Kentekenverlichting
fog-rear: Mistachterlicht
fog-front: Mistlampen voor
low-beam: Dimlicht
main-beam: Grootlicht
hazard: Alarmlichten | Alarmlichten schakelaar
work-lamp: Werklamp achter
beacon: Zwaailamp
daytime-lamp: Dagrijverlichting
interior-lamp: Binnenverlichting
speaker-front-left-plus: Luidspreker linksvoor + | LV+
speaker-rear-right-minus: Luidspreker rechtsachter - | RA-
speaker-rear-left-plus: LA+
speaker-front-right-plus: Speaker rechts voor plus
line-rear-right-signal: Lijnuitgang rechtsachter
amplifier-turn-on: Versterker aansturing | Inschakelsignaal versterker | Versterker inschakelen (remote)
antenna-power: Elektrische antenne | Antenneversterker | Antennesturing | Antenne sturing
mute: Telefoon mute
parking-brake: Handrem | Handremschakelaar
speed: Snelheidssignaal
tachometer: Toerental | Toerentalsignaal
steering-key-1: Stuurbediening 1
steering-key-ground: Stuurknoppen massa
microphone-minus: Microfoon -
door-switch: Deurcontact
door-lock: Centrale vergrendeling sluiten | Deur vergrendelen
door-unlock: Portier ontgrendelen
window-left-up: Raam links omhoog
window-right-down: Ruit rechts omlaag | Raambediening rechts omlaag
wiper-low: Ruitenwisser langzaam
wiper-interval: Ruitenwisser interval
washer: Ruitensproeierpomp
horn: Claxon
alarm-siren: Alarmsirene
oil-pressure: Oliedruk | Oliedrukschakelaar
coolant-temperature: Koelvloeistoftemperatuur | Temperatuur koelwater
fuel-level: Brandstofvlotter | Brandstofmeter
outside-temperature: Buitentemperatuur
alternator-lamp: Dynamo D+ | Laadstroomlampje
starter-signal: Startmotor
glow-plug: Voorgloeien
fuel-pump: Brandstofpomp
cooling-fan: Koelventilator
blower: Kachelventilator
heater-control: Standkachel
seat-heater: Stoelverwarming
rear-screen-heater: Achterruitverwarming
trailer-charge: Laadleiding | Laadspanning aanhanger
ground-constant: Massa voor 9
ground-switched: Massa voor 10
ground-lamps: Massa 1-8
trailer-brake: Aanhangerrem
second-battery-feed: Tweede accu | Huishoudaccu +
refrigerator-feed: Koelkast | Stroomvoorziening koelkast
camera-ground: Camera massa
camera-power: Achteruitrijcamera voeding
video-signal: Videosignaal | Achteruitrijcamera video
can-high: CAN hoog
tail-lift-up: Laadklep omhoog
tail-lift-down: Laadklep zakken
winch-feed: Lier voeding
port-light: Boordlicht bakboord
starboard-light: Boordlicht stuurboord
stern-light: Heklicht
masthead-light: Toplicht
anchor-light: Ankerlicht
bilge-pump: Bilgepomp
bilge-float: Vlotterschakelaar bilge
water-pump: Drinkwaterpomp
waste-level: Vuilwatertank niveau
windlass-up: Ankerlier op
not-used: niet gebruikt | niet aangesloten | vrij | gereserveerd
ignition-cut: Startonderbreker
power-take-off: Aftakas
hour-meter: Urenteller
power-socket-feed: Sigarettenaansteker
speaker-rear-left-minus: luidspreker achter links min
speaker-rear-right-plus: LS RA +
bonnet-switch: Motorkapschakelaar
wiper-high: Ruitenwissers snel
marker-lamps: Zijmarkeringslichten
tipper-up: Kiepbak omhoog
steering-key-2: Stuurwielknoppen 2
line-front-left-signal: Lijnuitgang linksvoor
anti-lock-feed: ABS voeding aanhanger
`;

/** Dutch wordings that may mean more than one function, by one that must be among them. */
export const DUTCH_OPEN = `
ignition-feed: contactplus | Plus na contact | Spanning na contact | + na contact
illumination: Dimmer verlichting
ignition-coil: Bobine
ground-lamps: Massa verlichting
`;
