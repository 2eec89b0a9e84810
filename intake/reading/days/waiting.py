"""Until when somebody can do without the mandrel, which is the day it is needed; and until when
somebody only waits, for tube, for an answer, which is not."""

from __future__ import annotations

from ..text.phrases import Words, phrases, word_set
from .words import TOOLS

_UNTIL = phrases(
    "until | till | til | up to | up until | bis | bis zum | bis zur",
    "bis ende | jusqu au | jusqu à",
    "jusqu en | jusque | hasta | hasta el | fino al | fino a | fino all",
    "sino al | tot | tot en met",
    "till den",
)
_SPARED = phrases(
    "live without | live w / o | do without | do w / o | manage without",
    "manage w / o | manage until",
    "manage till | get by | get along | hold out | hang on | survive | cope | go without | wait",
    "make do | sit tight | limp along | hold off",
    "ohne aus | ohne auskommen | ohne klar | warten | auskommen | überbrücken | ohne ihn | ohne",
    "durchhalten | aushalten",
    "attendre | m en passer | nous en passer | s en passer | tenir | patienter | nous débrouiller",
    "me débrouiller | se débrouiller | faire sans",
    "esperar | aguantar | apañarme | apañarnos | prescindir | arreglarme | arreglarnos | tirar sin",
    "aspettare | attendere | farne a meno | fare a meno | fare senza | andare avanti | resistere",
    "tirare avanti | wachten | zonder | vooruit | redden | uitzingen",
)
_ABLE = word_set(
    "can could able kann können könnten könnte kommen komme kommt peux",
    "peut pouvons pouvez pourrais",
    "pourrions puedo podemos puede podríamos podría posso possiamo può potrei potremmo kan kunnen",
    "zou zouden",
)
_GIVEN = phrases(
    "you have until | you have till | you ve got until | you ve got till | you got until",
    "you have up to | you have up until | sie haben bis | ihr habt bis | sie haben zeit bis",
    "ihr habt zeit bis | zeit bis | hat zeit bis | hätte zeit bis | vous avez jusqu",
    "tienen hasta | tenéis hasta | tiene hasta | tiene tiempo hasta | tienen tiempo hasta",
    "avete tempo fino | avete fino | c è tempo fino | u hebt tot | jullie hebben tot",
    "je hebt tot | heeft tijd tot | hebben tijd tot",
)
"""'You have until Nov 16': what is asked for in a clause of its own says so of a quotation."""
_WAITED_FOR = word_set("for auf pour por per op sur voor")
_WAITS = word_set(
    "wait waiting waits warte warten wartet attends attendons attend espero esperamos aspetto",
    "aspettiamo attendiamo wacht wachten",
)
_OTHER = word_set(
    "quote quotes quotation offer price prices answer reply bid numbers drawing po decision tender",
    "angebot angebote preis preise antwort zeichnung bestellung offre",
    "devis prix réponse plan oferta",
    "presupuesto precio respuesta plano offerta preventivo prezzo risposta disegno offerte prijs",
    "antwoord tekening to decide order",
)
_NEVER = word_set(
    "t not no cannot never nicht kein keinesfalls pas ne jamais nunca non mai niet geen hardly"
)
_TILL = word_set("bis until till hasta fino tot jusqu")
_AWAY_NEAR = 3
_AWAY = word_set(
    "urlaub ferien abwesend dienstreise vacation holiday holidays vacances congé congés absent",
    "vacaciones ausente ferie vacanza assente vakantie afwezig verlof",
)
"""'Ich bin bis 30.10. im Urlaub': the sender, not the mandrel."""
_ENDS = frozenset((".", "!", "?", "\n\n", ""))
_FAR = 12
_BEHIND = 6


def can_do_without_until(words: Words, start: int, end: int, stop: int) -> bool | None:
    """Whether the mandrel can be done without until the day at ``start:end``; False where
    somebody only waits until then, None where nothing is said of it. ``stop``: where the clause
    begins."""
    until = _before(words, start)
    if until < 0:
        return None
    begin = max(stop, start - _FAR)
    ahead = words.text[begin:until]
    behind = _behind(words, start, end)
    if "but" in ahead:
        ahead = ahead[ahead.index("but") + 1 :]  # "launch is Oct 30 but I can live without"
    around = {*ahead, *behind}
    if around & _AWAY:
        return False
    if around & _OTHER:
        return None
    if any(words.phrase(at, _GIVEN) for at in range(begin, until + 1)):
        return True
    places = [*range(until - len(ahead), until), *range(end, end + len(behind))]
    spared = any(words.phrase(at, _SPARED) for at in places)
    if not spared:
        return None
    if around & _ABLE and not around & _NEVER and not _waits_for_another(ahead, behind):
        return True
    return False if around & _WAITS else None


def _waits_for_another(ahead: tuple[str, ...], behind: tuple[str, ...]) -> bool:
    """'I can wait for the tube until Nov 16', 'bis 16.11. auf das Rohr'; not 'wait for it'."""
    for words in (ahead, behind[:5]):
        for at, word in enumerate(words):
            waits = words is not ahead or words[at - 1] in _WAITS
            if word in _WAITED_FOR and waits and not set(words[at + 1 : at + 3]) & TOOLS:
                return True
    return False


def _behind(words: Words, start: int, end: int) -> tuple[str, ...]:
    """The words of the sentence behind a day: in 'bis zum 16.11. warten' its point ends none."""
    if words.at(end - 1) != ".":
        return words.text[end : min(words.behind[start], end + _BEHIND)]
    rest = words.text[end : end + _BEHIND]
    ends = [at for at, word in enumerate(rest) if word in _ENDS]
    return rest[: ends[0]] if ends else rest


def _before(words: Words, start: int) -> int:
    """Where an 'until' begins that ends right before a day, or -1."""
    for used in (1, 2, 3):
        at = start - used
        if at >= 0 and words.phrase(at, _UNTIL) == used:
            return at
    return -1


def is_away_until(words: Words, start: int, end: int) -> bool:
    """'Ich bin bis 20. November im Urlaub', 'we are until the 20th on holiday'."""
    until = {words.at(start - 1), words.at(start - 2)} & _TILL
    return bool(until) and any(words.at(at) in _AWAY for at in words.after(end, _AWAY_NEAR))
