/** Spanish wordings of charts that have one meaning, by function. From memory, common practice. */
export const SPANISH_SURE = `
constant-feed: Positivo permanente | Alimentación constante 12V | Batería + | +12V directo | Corriente 12V permanente
switched-feed: Accesorios | ACC
ground: Masa | Tierra | Negativo | Tierra chasis
illumination: Iluminación | Iluminación del tablero
reverse: Luz de marcha atrás | Reversa
stop-lamp: Luz de freno | Luces de freno | Stop | Remolque luz de freno
stop-lamp-high: Tercera luz de freno
indicator-left: Intermitente izquierdo | Direccional izq. | Giro izquierdo
indicator-right: Luz de giro derecha
tail-left: Posición izquierda | Piloto trasero izquierdo
tail-right: Luz de posición derecha
plate-lamp: Luz de matrícula | Luz patente
fog-rear: Antiniebla trasera
fog-front: Faros antiniebla delanteros
low-beam: Luz de cruce | Luces bajas
main-beam: Luz de carretera | Luces largas | Luces altas
hazard: Luces de emergencia
headlamp-flash: Ráfagas
daytime-lamp: Luz diurna
work-lamp: Faro de trabajo trasero
beacon: Rotativo
interior-lamp: Luz interior
speaker-front-left-plus: Altavoz delantero izquierdo + | Parlante DI+
speaker-rear-right-minus: Altavoz trasero derecho - | TD -
speaker-front-right-plus: Alt. del. dcho. +
line-rear-left-signal: Salida de línea trasera izquierda
amplifier-turn-on: Encendido amplificador | Remoto amplificador | Remote encendido amplificador
antenna-power: Antena eléctrica | Alimentación de antena | Control de antena
mute: Silenciador teléfono
parking-brake: Freno de mano | Freno de estacionamiento | Freno de parqueo
speed: Señal de velocidad | Velocidad del vehículo
tachometer: Cuentarrevoluciones | Tacómetro
steering-key-1: Mandos del volante 1
steering-key-ground: Masa mandos volante
microphone-plus: Micrófono +
door-switch: Contacto de puerta | Puerta abierta
door-lock: Cierre centralizado cerrar | Seguros de puertas cerrar
door-unlock: Apertura de puertas
window-left-up: Elevalunas izquierdo subir
window-right-down: Ventanilla derecha bajar | Elevavidrios derecho bajar
wiper-low: Limpiaparabrisas velocidad lenta
wiper-rear: Limpiaparabrisas trasero
washer: Bomba lavaparabrisas
horn: Claxon | Bocina
alarm-siren: Sirena de alarma
oil-pressure: Presión de aceite | Bulbo de aceite
coolant-temperature: Temperatura de agua | Bulbo de temperatura
fuel-level: Nivel de combustible | Aforador de combustible | Nivel de nafta
outside-temperature: Temperatura exterior
alternator-lamp: Testigo de carga | Alternador D+
starter-signal: Motor de arranque
glow-plug: Calentadores
fuel-pump: Bomba de combustible
cooling-fan: Electroventilador
blower: Ventilador habitáculo
heater-control: Calefacción estacionaria
seat-heater: Asiento calefactable
rear-screen-heater: Luneta térmica | Desempañador
compressor-clutch: Compresor aire acondicionado
trailer-charge: Carga batería remolque | Carga batería auxiliar
ground-constant: Masa para 9
ground-lamps: Masa luces
trailer-brake: Freno eléctrico remolque
second-battery-feed: Segunda batería | Batería de servicio | Batería de servicios +
refrigerator-feed: Nevera
camera-ground: Masa cámara
camera-power: Alimentación cámara marcha atrás
video-signal: Señal de vídeo | Cámara reversa video
can-high: CAN alto
tail-lift-up: Plataforma elevadora subir
tail-lift-down: Trampilla elevadora bajar
winch-feed: Alimentación cabrestante
port-light: Luz de babor
starboard-light: Luz de estribor
stern-light: Luz de alcance
anchor-light: Luz de fondeo
masthead-light: Luz de tope
bilge-pump: Bomba de sentina | Bomba de achique
bilge-float: Flotador sentina
water-pump: Bomba de agua
waste-level: Nivel aguas grises
not-used: sin uso | no conectado | libre | reservado
ignition-cut: Inmovilizador | Parada de motor
power-take-off: Toma de fuerza
hour-meter: Cuentahoras
power-socket-feed: Mechero
windlass-up: Molinete subir
speaker-rear-left-plus: Bocina trasera izquierda +
line-front-right-signal: Salida RCA delantera derecha
microphone-minus: Micrófono -
steering-key-2: Mando volante 2
navigation-lights: Luces de navegación
marker-lamps: Luz de gálibo
`;

/** Spanish wordings that may mean more than one function, by one that must be among them. */
export const SPANISH_OPEN = `
ignition-feed: Positivo de contacto | Positivo bajo llave | Corriente ignición
`;
