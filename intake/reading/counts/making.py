"""Words by which a mandrel is asked to be made: 'could you make a mandrel', 'pencil me in for a
mandrel', 'könnt ihr einen Dorn drehen'."""

from __future__ import annotations

import re

from ..text.phrases import PhraseTable, phrases, word_set


def _joined(*texts: str) -> PhraseTable:
    """A table whose French phrases stand in it with their hyphens, too: 'faites-moi'."""
    joined = [
        re.sub(r"\b(\w+(?:ez|is|es|ait|on|il|ce)) (moi|nous|vous|il|on|ce)\b", r"\1-\2", text)
        for text in texts
    ]
    return phrases(*texts, *joined)


MIGHT = _joined(
    "might you | might you be able | would you be able | would you be willing | would you be up",
    "are you willing | are you up for | would you consider | would you mind | would you",
    "would it be possible | is it possible | would it be feasible | is there any chance",
    "any chance you | any chance of you | any chance of | is there a chance | is there any way",
    "any way you | do you reckon you | do you think you | reckon you could | reckon you can",
    "if you can | if you could | whether you can | whether you could | if you are able",
    "if you re able | if u can | if u could | if you d be able | if you would be able",
    "hope you can | hoping you can | hoping you could | hope you could | you guys able",
    "can someone | could someone | can somebody | could somebody | can you guys | could you guys",
    "can y all | could y all | can ya | could ya | you lot",
    "kannst | könntest | könnt | könnten | würden sie | würdet ihr | würdest du",
    "wäre es möglich | ist es möglich | wär es möglich | ist es machbar | wäre es machbar",
    "wären sie in der lage | sind sie in der lage | seid ihr in der lage | wärt ihr in der lage",
    "ob sie | ob ihr | ob du | lässt sich | ließe sich",
    "serait il possible | est il possible | est ce possible | est ce que vous pouvez",
    "est ce que vous pourriez | vous serait il possible | seriez vous | êtes vous en mesure",
    "vous seriez | si vous pouvez | si vous pourriez | vous pourriez | peut on | pourrait on",
    "sería posible | es posible | sería factible | serían capaces | seríais capaces",
    "son capaces | están en condiciones | estarían en condiciones | se puede | se podría",
    "podrían ustedes | puedes | podrías | podría | si pueden | si podrían | si podéis",
    "sarebbe possibile | è possibile | sareste in grado | siete in grado | sarebbe in grado",
    "è in grado | riuscite | riuscireste | potrebbe | potresti | puoi | si può | si potrebbe",
    "se potete | se potreste | ce la fate",
    "is het mogelijk | zou het mogelijk zijn | zijn jullie in staat | bent u in staat",
    "zouden jullie | zou u | zou je | of jullie | of u | lukt het | zien jullie kans",
)
"""Beside the plainer 'can you': with a verb of making these ask for a mandrel."""
MAKING = word_set(
    "make build machine turn produce manufacture fabricate supply create craft do provide furnish",
    "knock whip rustle fashion making building turning producing manufacturing supplying",
    "fabriquer faire réaliser produire usiner tourner fournir confectionner concevoir",
    "hacer fabricar producir realizar suministrar mecanizar tornear proporcionar",
    "fare produrre realizzare costruire fornire tornire lavorare fabbricare",
)
"""Between 'could you' and 'a mandrel'."""
MADE = word_set(
    "made built turned machined produced manufactured supplied",
    "machen herstellen herzustellen fertigen anfertigen anzufertigen bauen drehen liefern",
    "produzieren konstruieren zaubern gemacht gefertigt angefertigt hergestellt gebaut bekommen",
    "maken fabriceren produceren vervaardigen leveren draaien gemaakt geleverd",
)
"""Behind the mandrel: 'have a mandrel made', 'könnten Sie einen Dorn fertigen'."""
CAN = word_set("can could might kann könnte kan")
STATED = phrases("you can | you could | vous pouvez | vous pourriez")
HOPED = word_set(
    "if whether hope hoping think thinking reckon wonder wondering wondered guess suppose trust",
    "si espère demande pense",
)
"""Before 'you can' these make a request of it; alone it is one only as a question."""
ADVISED = word_set("recommend suggest advise need empfehlen recommander recomendar consigliare")
BEFORE_A_SIZE = word_set("du de di tubing steel stainless stahlrohr edelstahlrohr inox acero ø")
IN_GENERAL = word_set(
    "how what which who where why when ever smallest largest biggest tightest thinnest anybody",
    "wie welche welcher welchen wer womit warum wozu jemals",
    "comment quel quelle quels quelles quoi pourquoi jamais",
    "cómo qué cuál quién porqué jamás cosa quale quali chi perché mai",
    "hoe wat welke wie waarom ooit",
)
"""Before 'can you make a mandrel' these ask how, or which: no mandrel is asked for."""
FOR_SEVERAL = word_set(
    "both either all several various adjusts adjustable adjust beide beiden mehrere alle",
    "verstellbar tous plusieurs réglable ambos ambas varios todos ajustable entrambi entrambe",
    "vari tutti regolabile allebei meerdere alle verstelbaar",
)
"""Behind 'a mandrel' these ask whether one serves for all."""
BOOKED = _joined(
    "pencil me in for | pencil us in for | put me down for | put us down for | sign me up for",
    "sign us up for | count me in for | count us in for | mark me down for | mark us down for",
    "book me in for | book us in for | slot me in for | slot us in for | squeeze me in for",
    "squeeze us in for | reserve me | reserve us | ring me up for | write me up for",
    "let s do | let s go with | let us do | let us go with | let s have",
    "let s get | we ll go with",
    "i ll go with | go ahead and make | go ahead and build | could do with | can do with",
    "could really use | would love | d love | would appreciate | d appreciate | love to have",
    "please build | please turn | please machine | please produce | please manufacture",
    "please do | please supply | please provide | please knock up | have you make",
    "macht mir | macht uns | mach mir | mach uns | baut mir | baut uns | bau mir | bau uns",
    "fertigt mir | fertigt uns | fertigen sie | dreht mir | dreht uns | dreh mir | dreh uns",
    "schickt mir | schickt uns | schick mir | schick uns | liefert mir | liefert uns",
    "merkt mich für | merken sie mich für | merkt uns für | merken sie uns für | notiert mir",
    "notieren sie mir | notieren sie uns | tragt mich für | tragen sie mich für | trag mich für",
    "plant mir | plant uns | reserviert mir | reserviert uns | reservieren sie",
    "faites moi | faites nous | fabriquez moi | fabriquez nous | envoyez moi | envoyez nous",
    "réservez moi | réservez nous | notez moi | notez nous | mettez moi | mettez nous",
    "inscrivez moi pour | inscrivez nous pour | fais moi | fais nous | préparez moi",
    "préparez nous | comptez moi pour",
    "háganme | háganos | hágame | hazme | hacedme | hacednos | haznos | fabríquenme",
    "fabríquennos | apúntenme | apúntennos | apúntame | apuntadme | anótenme | anótennos",
    "resérvenme | resérvennos | resérvame | mándenme | mándennos | mándame | prepárenme",
    "prepárennos | envíenme | envíennos",
    "fatemi | fateci | fammi | facci | mi faccia | ci faccia | segnatemi | segnateci",
    "mettetemi in lista per | metteteci in lista per | prenotatemi | prenotateci | mandatemi",
    "mandateci | speditemi | spediteci | preparatemi | preparateci | costruitemi | costruiteci",
    "maak mij | maak me | maak ons | maken jullie mij | maken jullie ons | noteer mij voor",
    "noteer me voor | noteer ons voor | noteer voor mij | noteer voor ons | reserveer",
    "stuur mij | stuur me | stuur ons | zet mij op de lijst voor | zet me op de lijst voor",
    "zet ons op de lijst voor | zet mij maar op voor | schrijf mij op voor | schrijf me op voor",
)
"""Right before 'a mandrel' these ask for it, or book it."""
MINE = phrases(
    "mine needs to be | mine need to be | mine has to be | mine must be | mine should be",
    "mine would be | mine will be | mine d be | mine ll be | mine would have to be | mine is to be",
    "mine would need to be | mine wants to be | make mine | i need mine | i want mine",
    "i d need mine | i d like mine | i d want mine | ours needs to be | ours has to be",
    "ours must be | ours should be | ours would be | ours will be | ours d be | make ours",
    "we need ours | we want ours | we d need ours | we d like ours",
    "meiner muss | meiner müsste | meiner sollte | meiner soll | meiner wäre | meinen brauche ich",
    "meinen bräuchte ich | unserer muss | unserer müsste | unserer sollte | unserer soll",
    "unserer wäre | unseren brauchen wir | unseren bräuchten wir",
    "le mien doit être | le mien devrait être | le mien serait | le mien devra être",
    "il me faut le mien | le nôtre doit être | le nôtre devrait être | le nôtre serait",
    "le nôtre devra être | il nous faut le nôtre",
    "el mío tiene que ser | el mío debe ser | el mío sería | el mío debería ser",
    "el mío ha de ser | el mío lo necesito | el nuestro tiene que ser | el nuestro debe ser",
    "el nuestro sería | el nuestro debería ser | el nuestro ha de ser",
    "el nuestro lo necesitamos",
    "il mio deve essere | il mio dovrebbe essere | il mio sarebbe | il mio mi serve",
    "il nostro deve essere | il nostro dovrebbe essere | il nostro sarebbe | il nostro ci serve",
    "de mijne moet | de mijne zou | de mijne wordt | die van mij moet | die van mij zou",
    "die van ons moet | die van ons zou | de onze moet | de onze zou",
)
"""'My friend got a mandrel off you. Mine needs to be for 28 x 1.5': one is asked for."""
