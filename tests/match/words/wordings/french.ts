/** French wordings of charts that have one meaning, by function. From memory, common practice. */
export const FRENCH_SURE = `
constant-feed: + permanent | Plus permanent 12V | + BAT | Alimentation permanente | +12V batterie | Alim radio permanente
switched-feed: + ACC | Accessoires | Alimentation commutée
ground: Masse | Masse châssis
illumination: Éclairage | Éclairage tableau de bord | ECL | + éclairage
reverse: Feu de recul | Marche arrière | Feux de recul | Signal marche arrière
stop-lamp: Feu stop | Feux de stop | stop | Feux stop remorque
stop-lamp-high: Troisième feu stop
indicator-left: Clignotant gauche | Indicateur de direction gauche
indicator-right: Clignotant droit
tail-left: Feu de position gauche | Feu arrière gauche | Feux de position AV/AR gauche
tail-right: Feu de position arrière droit
tail-lamps: Veilleuses
plate-lamp: Éclairage de plaque | Éclairage plaque d'immatriculation
fog-rear: Feu antibrouillard arrière | Feux de brouillard arrière
fog-front: Phares antibrouillard avant
low-beam: Feux de croisement
main-beam: Feux de route | Témoin feux de route
hazard: Feux de détresse
headlamp-flash: Appel de phares
daytime-lamp: Feux de jour
work-lamp: Phare de travail
beacon: Gyrophare
interior-lamp: Plafonnier | Éclairage intérieur
speaker-front-left-plus: Haut-parleur avant gauche + | Sortie HP avant gauche +
speaker-front-right-minus: HP AVD -
speaker-rear-right-minus: HP arrière droit (-)
speaker-rear-left-plus: HP AR G +
line-rear-left-signal: Sortie ligne arrière gauche
amplifier-turn-on: Commande ampli | Commande amplificateur | Commande d'amplificateur (remote) | Commande de mise en marche ampli
antenna-power: Antenne électrique | Alimentation antenne | Commande d'antenne
mute: Mute téléphone
parking-brake: Frein à main | Frein de stationnement | Contact frein à main
speed: Signal de vitesse | Vitesse véhicule
tachometer: Compte-tours | Régime moteur
steering-key-1: Commandes au volant 1
steering-key-ground: Masse commande au volant
microphone-plus: Micro + | Entrée micro
door-switch: Contact de porte
door-lock: Verrouillage des portes
door-unlock: Déverrouillage centralisé
window-left-up: Lève-vitre gauche montée
window-right-down: Lève-vitre droit descente
wiper-low: Essuie-glace petite vitesse
wiper-rear: Essuie-glace arrière
washer: Pompe lave-glace
horn: Klaxon
alarm-siren: Sirène d'alarme
oil-pressure: Pression d'huile
coolant-temperature: Température d'eau
fuel-level: Jauge à carburant
outside-temperature: Température extérieure
alternator-lamp: Témoin de charge | Alternateur D+
starter-signal: Démarreur
glow-plug: Bougies de préchauffage
fuel-pump: Pompe à essence
cooling-fan: Ventilateur radiateur
blower: Pulseur d'air
heater-control: Chauffage additionnel
seat-heater: Siège chauffant
rear-screen-heater: Lunette arrière chauffante
compressor-clutch: Compresseur de climatisation
trailer-charge: Charge batterie remorque | Charge batterie auxiliaire
ground-constant: Masse pour 9
ground-lamps: Masse feux
trailer-brake: Frein électrique remorque
second-battery-feed: Batterie auxiliaire | Batterie de service
refrigerator-feed: Réfrigérateur
camera-ground: Masse caméra
camera-power: Alimentation caméra de recul
video-signal: Signal vidéo
can-high: CAN haut
tail-lift-up: Hayon élévateur montée
tail-lift-down: Hayon élévateur descente
winch-feed: Alimentation treuil
port-light: Feu bâbord
starboard-light: Feu tribord
stern-light: Feu de poupe
anchor-light: Feu de mouillage
masthead-light: Feu de tête de mât
bilge-pump: Pompe de cale
bilge-float: Flotteur de cale
water-pump: Pompe à eau | Pompe eau douce
waste-level: Niveau eaux usées
not-used: non utilisé | non connecté | libre | réservé | non branché
ignition-cut: Antidémarrage | Arrêt moteur
power-take-off: Prise de force
hour-meter: Horamètre
power-socket-feed: Allume-cigare
windlass-up: Guindeau montée
speaker-front-left-minus: hp av g -
marker-lamps: Feu de gabarit
water-level: Capteur de niveau d'eau
navigation-lights: Feux de navigation
`;

/** French wordings that may mean more than one function, by one that must be among them. */
export const FRENCH_OPEN = `
ignition-feed: + après contact | +APC | Alim. radio après contact
ground: MAS
dimmer-return: Variateur d'éclairage
video-signal: Caméra de recul signal
line-subwoofer-signal: Sortie subwoofer
`;
