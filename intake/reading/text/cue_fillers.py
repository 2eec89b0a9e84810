"""Words that may stand between a cue and its figure, on its left: 'radius of about', 'stays at'."""

from __future__ import annotations

from .patterns import word_set

FILLER_LEFT = word_set(
    """of is the a an at with be was are will approx approximately about around ca circa roughly to
    on nominal nom ist von mit est de du del di da van es el la le il het measured measures
    measuring
    actual real true : = - ( ~ [ . ) required desired needed say maybe probably max min maximum
    minimum currently now being should also only just exactly stamped has needs der die das ungefähr
    environ aproximadamente ongeveer etwa rund zirka cirka unos circa here there over in mm inch
    inches | bis zur des bogens rohrs rohres biegung each
    total finished axis axe asse eje osi osy line hart fibre fibra neutre neutra neutrale faser
    middle mics mic'd
    mikes miked calipers gemessen mesuré misurato medido gemeten son sono sind zijn sont como
    máximo máx mín mínimo no tighter than least more less most smaller larger bigger mindestens
    höchstens maximal minimal minstens au moins plus maximum menos almeno under over below above ? m
    rond ronde round redondo redonda tondo rotondo runde rundes rundem seamless welded soudé saldato
    soldado geschweißtes nahtloses
    mittig comes works out reads always hat tiene heeft har
    à stay stays remain remains unchanged keep kept bleibt bleiben bei unverändert unveränderte
    reste restent resta restano rimane rimangono blijft blijven sigue siguen siendo queda quedan
    mantiene mantienen sempre toujours siempre steeds noch weiterhin
    mini maxi massimo mínima máxima minima massima minimaal maximaal
    value figure wert valeur valor valore waarde
    respectively jeweils respectivement respectivamente rispettivamente respectievelijk reihe nach
    dieser gleicher gleichen reihenfolge dans l'ordre ordre por orden nell'ordine ordine op volgorde
    going correct confirmed
    credo sia penso dovrebbe essere crois serait doit être creo sea pienso debe ser glaube denke
    have been should've ought supposed meant hätte sollen müssen aurait dû haber sido avrebbe
    dovuto moeten gemoeten
    curva coude cintre bocht tiene que ser debería must muss soll moet deve doit faire être
    wäre wären wär wärs seraient serían sarebbero zouden würde wird would
    sarà sarebbe sera serait será sería zou wordt immer überall
    beträgt bedraagt vaut vale mesure misura mide misst meet
    partout ich denk ik dacht think believe guess i'd assume reckon que qu'il che dat sollte sein"""
)
VALUES = word_set("value figure wert valeur valor valore waarde")
NEW_VALUE = word_set(
    "new updated revised corrected correct current see note please neuer neue neuen aktueller",
    "bitte nouvelle nouveau corrigée nuevo corregido nuovo corretto nieuwe aangepaste siehe voir",
    "ver vedi",
)
"""'Radius - please see new value 145'."""
