/** Polish wordings of charts that have one meaning, by function. From memory, common practice. */
export const POLISH_SURE = `
constant-feed: stały plus | Zasilanie stałe +12V | Akumulator + | stałe zasilanie radia | zasilanie z akumulatora
switched-feed: zasilanie ACC
ground: masa | Minus | minus akumulatora
illumination: Podświetlenie | Podświetlenie deski rozdzielczej | Oświetlenie | Oświetlenie tablicy rozdzielczej | Podświetlenie radia
reverse: Światło cofania | Bieg wsteczny | Sygnał biegu wstecznego
stop-lamp: Światło stop | Światła hamowania | Światło hamowania przyczepy
stop-lamp-high: Trzecie światło stop
indicator-left: Kierunkowskaz lewy | Migacz lewy | Kierunkowskazy lewe
indicator-right: Kierunkowskaz prawy
tail-left: Światło pozycyjne lewe | Lewa lampa tylna
tail-right: Prawe światło pozycyjne
plate-lamp: Oświetlenie tablicy rejestracyjnej
fog-rear: Światło przeciwmgielne tylne
fog-front: Światła przeciwmgłowe przednie
low-beam: Światła mijania
main-beam: Światła drogowe
hazard: Światła awaryjne
daytime-lamp: Światła do jazdy dziennej
work-lamp: Lampa robocza tylna
beacon: Lampa ostrzegawcza (kogut)
interior-lamp: Oświetlenie wnętrza
speaker-front-left-plus: Głośnik lewy przód + | gł. LP +
speaker-rear-right-minus: Głośnik prawy tylny - | PT-
speaker-front-right-minus: Głośnik przedni prawy minus
line-rear-left-signal: Wyjście liniowe tył lewy
amplifier-turn-on: Włączanie wzmacniacza | Sterowanie wzmacniaczem | Remote wzmacniacza
antenna-power: Antena elektryczna | Zasilanie anteny | Sterowanie anteną
mute: Wyciszenie telefonu
parking-brake: Hamulec ręczny | Sygnał z hamulca ręcznego
speed: Sygnał prędkości | Czujnik prędkości
tachometer: Obrotomierz
steering-key-1: Sterowanie z kierownicy 1
steering-key-ground: Przyciski kierownicy masa
microphone-plus: Mikrofon +
door-switch: Krańcówka drzwi
door-lock: Centralny zamek zamykanie | Zamykanie drzwi
door-unlock: Centralny zamek otwieranie
window-left-up: Szyba lewa góra | Podnośnik szyby lewej góra
window-right-down: Szyba prawa dół
wiper-low: Wycieraczki I bieg
wiper-rear: Wycieraczka tylna
washer: Spryskiwacz
horn: Klakson | Sygnał dźwiękowy
alarm-siren: Syrena alarmu
oil-pressure: Ciśnienie oleju | Kontrolka ciśnienia oleju
coolant-temperature: Czujnik temperatury płynu chłodzącego
fuel-level: Poziom paliwa
fuel-low: Rezerwa paliwa
outside-temperature: Temperatura zewnętrzna
alternator-lamp: Kontrolka ładowania | Alternator D+
starter-signal: Rozrusznik
glow-plug: Świece żarowe
fuel-pump: Pompa paliwa | Przekaźnik pompy paliwa
cooling-fan: Wentylator chłodnicy
blower: Dmuchawa
heater-control: Ogrzewanie postojowe
seat-heater: Podgrzewanie fotela
rear-screen-heater: Ogrzewanie tylnej szyby
compressor-clutch: Sprężarka klimatyzacji
trailer-charge: Ładowanie akumulatora przyczepy
ground-constant: Masa dla 9
ground-switched: Masa (styk 10)
trailer-brake: Hamulec elektryczny przyczepy
second-battery-feed: Drugi akumulator
refrigerator-feed: Lodówka
camera-ground: Kamera cofania masa
camera-power: Zasilanie kamery
video-signal: Wideo | Kamera cofania - obraz
can-high: CAN wysoki
tail-lift-up: Winda załadowcza góra
tail-lift-down: Opuszczanie windy załadowczej
winch-feed: Wyciągarka zasilanie
port-light: Światło lewej burty
starboard-light: Światło prawej burty
stern-light: Światło rufowe
anchor-light: Światło kotwiczne
masthead-light: Światło masztowe
bilge-pump: Pompa zęzowa
bilge-float: Wyłącznik pływakowy
water-pump: Pompa wody
waste-level: Zbiornik wody szarej poziom
not-used: nieużywany | nie podłączony | wolny | brak | zarezerwowany | brak połączenia | rezerwa
ignition-cut: Immobilizer
hour-meter: Licznik motogodzin
power-socket-feed: Gniazdo zapalniczki
speaker-rear-left-minus: Głośnik tylny lewy (-)
line-front-right-signal: Wyjście RCA przód prawy
microphone-minus: Mikrofon -
injector: Wtryskiwacz
marker-lamps: Światła boczne obrysowe
mirror-heater: Ogrzewanie lusterek
hydraulic-pump: Pompa hydrauliczna
tipper-up: Wywrotka góra
`;

/** Polish wordings that may mean more than one function, by one that must be among them. */
export const POLISH_OPEN = `
ignition-feed: plus po zapłonie | Plus po stacyjce | Plus ze stacyjki | zasilanie po stacyjce
ignition-coil: Cewka zapłonowa
ground-lamps: Masa oświetlenia
`;
