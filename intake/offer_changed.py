"""Our quotation that is to be changed: 'make it 2 instead of 1, tube as quoted'. It asks for the
size in its new form, though the words on what stays are those of an answer to an offer."""

from __future__ import annotations

from .late import Late
from .said_words import said_words

_IN = r"(?:[^.?!\n]|\.\d)"
_CHANGED = Late(
    (
        r"\b(?:change|amend|alter|make|revise|update|switch)\b(?! sure)"
        + _IN
        + r"{0,60}\b(?:instead"
        r" of|rather than|in place of)\b"
        + _IN
        + r"{0,12}(?:\d|\bone\b|\btwo\b|\bthree\b|\bthe \w)",
        r"\b(?:ändern|ändert|machen|mach|geändert)\b"
        + _IN
        + r"{0,60}\b(?:statt|anstatt|anstelle)\b"
        r"|\b(?:statt|anstatt|anstelle)\b" + _IN + r"{0,60}\b(?:ändern|ändert)\b",
        r"\b(?:chang|modifi|mett|pass)\w*\b" + _IN + r"{0,60}\bau lieu d",
        r"\b(?:cambi|modific|pon|pas)\w*\b" + _IN + r"{0,60}\ben (?:vez|lugar) de\b",
        r"\b(?:cambi|modific|mett|porta)\w*\b" + _IN + r"{0,60}\b(?:invece di|anziché|al posto di)",
        r"\b(?:wijzig|verander|maak)\w*\b" + _IN + r"{0,60}\b(?:in plaats van|i\.p\.v\.)",
    )
)
_OF_OUR_OFFER = Late(
    (
        r"\b(?:quot(?:e|ed|ation)|offer(?:ed)?|proposal)\b|\bangebot\w*|\bangeboten\b|\bdevis\b"
        r"|\boffre\b|\b(?:oferta|cotización|presupuesto|ofertad[oa])\b|\b(?:offerta|preventivo)\b"
        r"|\bofferte\b",
    )
)
_ORDERED = Late(
    (
        r"\b(?:order|po|p\.o\.|bestellung|auftrag|commande|pedido|ordine|bestelling|invoice"
        r"|rechnung)\s?(?:no\.?|nr\.?|number|#|:)*\s?[a-z]{0,4}[-/]?\d{2,}"
        r"|\b(?:my|our|the|this|that) (?:order|po)\b|\binvoice\b|\bshipped\b|\bdelivered\b",
    )
)


def changes_our_offer(text: str) -> str:
    """Why the words ask for what we offered in another form, or ''; an order in hand is none."""
    changed = _CHANGED.search(text)
    if changed is None or not _OF_OUR_OFFER.search(text) or _ORDERED.search(text):
        return ""
    return f'changes our offer ("{said_words(changed)}")'
