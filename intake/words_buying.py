"""Words by which a customer shows that he means to buy, or that he only asks. House judgement."""

from __future__ import annotations

import re

from .late import Late

BUYING = """
    i'll take | we'll take | i will take | we will take | want to buy | wants to buy | like to buy |
    ready to buy | looking to buy |
    want to order | like to order | ready to order | place an order |
    placing an order | please order | our order | purchase order | to purchase | po number | po no |
    p.o. | how do i pay | how can i pay | how do i order | how can i order | credit card | invoice |
    proforma | pro forma | ship it | ship them | ship to | in a hurry | urgent | urgently | asap |
    as soon as possible | machine is down | need it by | need them by | needed by |
    bestellen | bestellung | kaufen | auftrag erteilen | dringend | eilig | so bald wie möglich |
    commander | passer commande | bon de commande | acheter | au plus vite |
    comprar | hacer un pedido | pedido de compra | urgente | lo antes posible |
    ordinare | acquistare | kopen | bestelling | zo snel mogelijk | beställa | zamówić
"""
ASKING = """
    just asking | only asking | just curious | just wondering | out of curiosity | just pricing |
    just a price | ballpark | ball park | rough price | rough idea | budget price | budgetary |
    budget figure | no rush | not in a hurry | not ready to buy | not ready to order |
    thinking about | might need | maybe later | some day | someday | for next year |
    nur mal fragen | nur eine anfrage | unverbindlich | richtpreis | preisvorstellung | keine eile |
    sans engagement | prix indicatif | sin compromiso | precio orientativo | vrijblijvend
"""


def _pattern(phrases: str) -> Late:
    spelled = (
        r"\s+".join(map(re.escape, phrase.split()))
        for phrase in phrases.split("|")
        if phrase.strip()
    )
    return Late([rf"(?<!\w)(?:{one})(?!\w)" for one in spelled])


_BUYING, _ASKING = _pattern(BUYING), _pattern(ASKING)


def means_to_buy(text: str) -> bool | None:
    """What the customer's own words say: True to buy, False only to ask, None nothing of it."""
    text = text.replace("’", "'")
    if _ASKING.search(text):
        return False
    return True if _BUYING.search(text) else None
