"""A parcel that was another customer's: it names what is in it, and asks for nothing new.

'The parcel that came today isn't ours. It has a mandrel in it marked 50.8 x 1.65 R101.6.'
"""

from __future__ import annotations

from .late import Late

_BOX = r"(?:parcel|package|packet|box|crate|shipment|delivery|consignment|carton)"
_PARCEL = rf"(?:{_BOX}|mandrel)"
_NOT_OURS = Late(
    (
        rf"\b{_PARCEL}\b(?:[^.?!\n]|\.\d){{0,60}}\b(?:isn['’]?t|is not|wasn['’]?t|was not|not)"
        r" (?:ours|mine|for (?:us|me)|meant for (?:us|me)|our order)\b",
        r"\b(?:wrong|some(?:one|body) else['’]?s|another (?:customer|company)['’]s"
        rf"|other people['’]s) {_BOX}\b",
        rf"\b{_PARCEL}\b(?:[^.?!\n]|\.\d){{0,40}}\b(?:belongs to|(?:was|is) (?:meant|addressed|"
        r"intended|labelled|labeled)? ?(?:for|to)) (?:some(?:one|body) else|another)\b",
        r"\b(?:falsche[sn]?|fremdes) (?:paket|lieferung|sendung|kiste|päckchen)\b"
        r"|\b(?:paket|lieferung|sendung|kiste)\b[^.?!\n]{0,60}\b(?:nicht für uns|nicht unser\w*"
        r"|gehört uns nicht|für jemand anderen)\b",
        r"\bcolis\b[^.?!\n]{0,60}\bn['’](?:est|était) pas (?:à nous|pour nous|le nôtre)\b"
        r"|\b(?:mauvais colis|colis d['’]un autre (?:client)?)",
        r"\b(?:paquete|envío|bulto)\b[^.?!\n]{0,60}\bno (?:es|era) (?:nuestro|para nosotros)\b"
        r"|\b(?:paquete|envío) equivocado\b",
        r"\b(?:pacco|collo|spedizione)\b[^.?!\n]{0,60}\bnon (?:è|era) (?:nostr[oa]|per noi|il"
        r" nostro)\b|\b(?:pacco|collo) sbagliato\b",
        r"\b(?:pakket|zending|doos)\b[^.?!\n]{0,60}\bniet (?:van ons|voor ons)\b"
        r"|\bverkeerde? (?:pakket|zending)\b",
    )
)
_WISH = Late(
    (
        r"\b(?:i|we)(?:'d| would| do| also)* (?:need|require|order)\b|\bquot(?:e|ation)\b"
        r"|\bpric(?:e|ing)\b|\bhow much\b|\bwhat would\b|\balso (?:need|want|like)\b",
        r"\b(?:brauch\w+|benötig\w+|angebot|anbieten|was kostet|preis)\b",
        r"\b(?:devis|besoin|chiffr\w+|prix)\b|\b(?:presupuesto|cotiz\w+|necesit\w+|precio)\b",
        r"\b(?:preventivo|serve|servono|prezzo|vorre\w+)\b|\b(?:offerte|nodig|prijs)\b",
    )
)


def wrong_parcel(text: str) -> str:
    """Why a message that names a size tells of another's parcel; '' where it may ask for one."""
    said = _NOT_OURS.search(text)
    if said is None or _WISH.search(text):
        return ""
    return f'a parcel that was somebody else\'s ("{" ".join(said.group().split())}")'
