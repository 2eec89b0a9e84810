"""Who speaks in a pasted chat, by what each line is headed with; data only.

Matched without regard to case, in the shop's usual languages.
"""

from __future__ import annotations

# The shop's side, wherever in the label: 'Agent', 'Kim (sales)', 'Support team'.
SHOP = (
    r"\b(?:agents?|support|sales|operator|assistant|representative|rep|advisor|adviser|shop|vendor"
    r"|supplier|seller|help ?desk|service desk|customer service|staff|bot|chatbot|specialist|"
    r"tooling (?:team|desk))\b",
    r"\b(?:berater(?:in)?|kundenberater(?:in)?|mitarbeiter(?:in)?|vertrieb|verkauf|verkäufer(?:in)?|"
    r"kundendienst|kundenservice|lieferant|anbieter|innendienst)\b",
    r"\b(?:conseill(?:er|ère)|vend(?:eur|euse)|agente?s?|service client|assistance|commercial|"
    r"fournisseur|opérat(?:eur|rice))\b",
    r"\b(?:asesora?|ventas|soporte|vendedora?|operadora?|proveedor|atención al cliente|"
    r"comercial)\b",
    r"\b(?:operat(?:ore|rice)|assistenza|vendite|vendit(?:ore|rice)|fornitore|consulente|"
    r"servizio clienti|commerciale)\b",
    r"\b(?:medewerk(?:er|ster)|verkoop|verkoper|adviseur|klantenservice|leverancier|"
    r"binnendienst)\b",
)

# The customer's side, as the whole label; of these the shop's program says who is a customer.
CUSTOMER = (
    r"(?:customer|visitor|client|guest|buyer|caller|end user)",
    r"(?:kundin|kunde|besucher(?:in)?|gast|käufer(?:in)?|interessent(?:in)?)",
    r"(?:client(?:e)?|visiteur|acheteur|visitante|comprador|visitatore|ospite|invitado)",
    r"(?:klant|bezoeker|gast|koper)",
)
MYSELF = (r"(?:me|myself|i|us|we|ich|wir|moi|nous|yo|nosotros|io|noi|ik|wij)",)

# The one or the other, by who sits opposite: 'Customer: / You:', 'You: / Agent:'.
YOU = (r"(?:you|sie|du|ihr|vous|toi|usted|ustedes|tú|lei|voi|tu|u|jij|jullie)",)

# What only who sells would say, in a chat whose lines bear two names.
SELLS = (
    r"\b(?:how|what) (?:can|may) (?:i|we) (?:help|do for you)\b|\bwe (?:stock|carry|keep|offer|can "
    r"(?:make|offer|do|supply|quote|ship)|could (?:make|offer|do|supply|quote|ship)|(?:have|'ve "
    r"got)[^.?!\n]{0,50}\b(?:in stock|on the shelf|ready to ship))\b"
    r"|\byou(?:'ll| will| should) (?:have|get|receive) (?:a|the|our|your) (?:quote|price|offer)\b"
    r"|\b(?:we|i|someone)(?:'ll| will) (?:quote|e-?mail you|send you|get back)\b"
    r"|\bhow many (?:do|would|will) you (?:need|want|like)\b|\bour (?:lead time|price|standard)\b",
    r"\bwie kann ich (?:ihnen )?helfen\b|\bwir (?:haben[^.?!\n]{0,40}(?:auf lager|vorrätig)|führen|"
    r"könn(?:en|t)en|bieten)\b|\bangebot (?:kommt|folgt)\b|"
    r"\bwie ?viele (?:brauchen|benötigen) sie\b",
    r"\b(?:comment|en quoi) puis-je vous\b|\bnous (?:avons[^.?!\n]{0,40}en stock|pouvons|pourrions|"
    r"proposons)\b|\b(?:votre|notre|le) devis (?:suit|arrive|part)\b|\bdevis (?:ce jour|demain)\b|"
    r"\bcombien (?:en|vous) (?:voulez|faut)\b",
    r"\b(?:en qué|cómo) puedo ayudar|\b(?:tenemos[^.?!\n]{0,40}en (?:stock|almacén)|podemos "
    r"(?:hacer|ofrecer)|le (?:enviamos|mandamos) (?:la|una) oferta)\b|\bcuántos necesita\b",
    r"\bcome posso aiutar|\b(?:abbiamo[^.?!\n]{0,40}(?:a magazzino|in stock|disponibil\w)|possiamo "
    r"(?:fare|offrire|fornire)|(?:le|vi) mandiamo (?:l'|un')offerta)\b|"
    r"\bquanti (?:ne )?(?:le )?serv",
    r"\b(?:waarmee|hoe) kan ik (?:u |je )?helpen\b|\b(?:we|wij) (?:hebben[^.?!\n]{0,40}op voorraad|"
    r"kunnen|bieden)\b|\bofferte (?:volgt|komt)\b|\bhoeveel (?:heeft u|wilt u|heb je)\b",
)

# An answer that takes up what the shop's line said rather than saying it anew.
POINTS = (
    r"\b(?:yes|yep|yeah|yup|right|correct|exactly|that(?:'s| is)? (?:the |right|it|one|works|fits|"
    r"would)|that one|those|the (?:first|second|third|last|latter|former|other) one|perfect|"
    r"sounds good|both)\b",
    r"\b(?:ja|genau|richtig|stimmt|passt|der|den|das|dieser|diesen|beide|(?:den|der|die) "
    r"(?:erste|zweite|letzte)n?)\b[^\n]{0,30}$",
    r"\b(?:oui|exact(?:ement)?|c'est (?:ça|cela|bon)|celui-(?:là|ci)|le (?:premier|second|"
    r"deuxième)|parfait|cela convient)\b",
    r"\b(?:sí|exacto|correcto|ese|este|el (?:primero|segundo)|perfecto|me sirve)\b",
    r"\b(?:sì|si|esatto|giusto|quello|questo|il (?:primo|secondo)|perfetto|va bene)\b",
    r"\b(?:klopt|precies|die|deze|de (?:eerste|tweede)|prima|past)\b",
)
