"""Words of a repeat order: every dimension is in an earlier one.

Data only, in the shop's usual languages; matched without regard to case.
"""

from __future__ import annotations

REPEATS = (
    r"\b(?:re-?order|same (?:again|as (?:last|before|previous|the last|my last|our last|always|"
    r"usual|in|po|order)|one (?:again|as)|mandrels? (?:again|as)|order (?:again|as)|thing "
    r"again))\b",
    r"\b(?:repeat|re)[- ]?order\b|^reorder\b|\brepeat (?:of )?(?:our|my|the|last|po|order)\b|"
    r"(?<!not )\banother (?:one |two |three |four |set |pair |\d )?(?:of (?:those|these|your"
    r"|the (?:same|ones?|mandrels?)|what (?:we|i) (?:had|got|bought|ordered|took|have))"
    r"|(?:one )?(?:just )?like (?:the )?(?:last|before|one)|the same)\b|\b(?:two|"
    r"three|\d|few|couple) more (?:of|like|the same|please|mandrels?)\b|\bone more (?:of|"
    r"like|mandrel|please|the same)\b|\bas per (?:our )?(?:last|previous) (?:order|po)\b",
    r"\brepeat of (?:what|that|it|order|po)\b|\b(?:run|make|do|build)(?: me| us)? (?:a repeat|"
    r"another (?:one )?(?:like|as) (?:on|in|for|the|our|my|it))\b|\b(?:bestellen|nachbestell\w*)"
    r"[^.?\n]{0,12}\bwie\b|\bmême chose que (?:sur|dans|pour)\b|\blo mismo que (?:en|del)\b|"
    r"\bstess[oa] \w+ (?:del|dell[ao]|che)\b|\bhetzelfde als (?:op|bij|in)\b",
    r"\bwie (?:beim letzten mal|letztes mal|gehabt|immer|zuletzt|bei der letzten)\b|"
    r"\bdas gleiche (?:noch ?mal|nochmal|wieder|wie)|\bnoch ?(?:ein)?mal (?:die|den|"
    r"das)? ?(?:gleiche|selbe|\d)|\bnachbestell|"
    r"\bnoch ?(?:ein)?mal (?:einen|zwei|drei|vier) \w{0,10}dorne? wie\b|"
    r"\bnoch (?:einen|ein|zwei|drei|vier|\d) (?:von (?:den|denen|diesen)"
    r"|(?:solche\w*|\w{0,10}dorne?|stück) wie)\b",
    r"\bcomme (?:la dernière fois|d'habitude|la fois précédente|la précédente)|"
    r"\bidentiques? (?:au|à la|aux) (?:précédente?s?|derni)|\b(?:le|la) même (?:que|"
    r"commande)|(?<!est-ce )(?<!c'est )\bla même (?:chose)|\bmême commande\b|"
    r"\b(?:encore|autres?|à nouveau|refaire|de nouveau) (?:une?|deux|trois|quatre|\d) (?:autres )?"
    r"(?:mandrins? )?(?:comme|identiques?|de ceux)\b|\b(?:deux|trois|quatre|\d) autres "
    r"(?:mandrins )?(?:comme|identiques)\b",
    r"\b(?:igual|lo mismo|el mismo|los mismos) que (?:la última|el último|la vez|siempre|"
    r"el anterior)|\brepetir (?:el|nuestro) pedido|\botro igual\b|"
    r"\b(?:otro|otros (?:dos|tres|cuatro|\d)|(?:dos|tres|cuatro|\d) más) (?:mandril(?:es)? )?"
    r"(?:como (?:el|los|la vez)|iguales|de los (?:que|mismos))\b",
    r"\bcome (?:l'ultima volta|la volta scorsa|al solito|l'ultimo ordine)|"
    r"\blo stesso (?:dell'ultima|di prima|mandrino)|\buno uguale\b|"
    r"\b(?:un altro|altri (?:due|tre|quattro|\d)|(?:ancora|di nuovo) (?:uno?|due|tre|\d)) "
    r"(?:mandrin[oi] )?(?:come (?:quell[oi]|la|l')|ugual[ei]|di quelli)",
    r"\b(?:zelfde|hetzelfde|idem) als (?:vorige|de vorige|laatst|altijd|de laatste)|"
    r"\bnog (?:een|twee|drie|\d) (?:van )?(?:dezelfde|zulke|die)\b|"
    r"\bnog (?:een|twee|drie|vier|\d) (?:\w{0,4}doorn(?:en)? )?(?:krijgen |hebben )?zoals\b|"
    r"\bto samo co (?:ostatnio|"
    r"poprzednio)|\bsamma som (?:sist|förra)",
)  # fmt: skip
