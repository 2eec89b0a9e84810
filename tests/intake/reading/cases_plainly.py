"""Mails that name several sizes and plainly ask for one: that one is sure, the others are not.

Beside them near misses: words alike, and yet another size is asked for, or it can't be told which.
"""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from .support import inch, mm, row

PLAINLY_ASKED = [  # the size that is asked for; any other is doubted
    row("sold-in-june", "Morning. The 1.5 x .083 mandrel you sold us in June is still going strong. What I'm after now is one for 1.75 x .120, 5-1/2 CLR, DOM.\nRegards, Walt", inch("1.75", "0.12", "5.5")),
    row("always-done-dry", "Hi, we've always done 2 x .065 on our 8\" die dry and it comes out OK. A customer has brought us 2 x .049 304 for the same 8\" die and it wrinkles. Could you quote one mandrel for the .049?", inch("2", "0.049", "8")),
    row("brother-in-law", "My brother-in-law runs 1-5/8 x .095 with one of yours. I've got 1-3/8 x .065 4130, die is 4 inch center line. Please quote me one mandrel.", inch("1.375", "0.065", "4")),
    row("superseded", "We originally spec'd 1.25 x .049 on 3 CLR for this job. That has been superseded: tube is now 1.25 x .065, 3.5 CLR. Please quote one mandrel to the new numbers.", inch("1.25", "0.065", "3.5")),
    row("bought-on-the-forum", "Need a price on a mandrel for 3 x .065 304, CLR 4.5. I already bought the 2.5 x .065 one from somebody on the forum so skip that.", inch("3", "0.065", "4.5")),
    row("competitor", "Our competitor bends 38 x 1.5 on R 57 without trouble, apparently. We have 38 x 1.0 in aluminium, R 57 as well, and it collapses. Could you offer a mandrel for ours?", mm("38", "1", "57")),
    row("delivered-last-winter", "Hello, last winter you delivered a mandrel for 42.4 x 2.6 tube, R 85. Now the architect wants 48.3 x 2.6, R 100. Please send a quotation for that.", mm("48.3", "2.6", "100")),
    row("no-budget", "Just the 2.0 x .083 please, 6 CLR. The guys on second shift were asking about 2.5 x .083 too but there's no budget for it this year.", inch("2", "0.083", "6")),
    row("bisher-ohne-dorn", "Wir haben bisher 30 x 2 auf R 60 ohne Dorn gebogen, das ging. Jetzt hat der Kunde auf 30 x 1 umgestellt, Radius bleibt 60 Mitte. Bitte Angebot für einen Dorn.", mm("30", "1", "60")),
    row("im-fruehjahr-geliefert", "Der Dorn für 28 x 1,5, den Sie uns im Frühjahr geliefert haben, ist top. Für ein neues Projekt brauchen wir jetzt einen für 33,7 x 2, R 67 Mitte.", mm("33.7", "2", "67")),
    row("nachbarbetrieb", "Guten Tag, unser Nachbarbetrieb biegt 40 x 2 mit R 80 und ist zufrieden. Bei uns ist es 45 x 1,5, Edelstahl 1.4301, R 90 auf Mitte. Was kostet ein Dorn?", mm("45", "1.5", "90")),
    row("deja-sans-mandrin", "Nous cintrons déjà le 26,9 x 2 sur R 54 sans mandrin. Pour le 33,7 x 1,5 inox, rayon 68 à l'axe, il nous faut un mandrin : merci de chiffrer.", mm("33.7", "1.5", "68")),
    row("an-dernier", "L'an dernier vous nous avez fourni un mandrin pour 40 x 1,5. Cette fois il s'agit du 50 x 1,2, rayon 100 à l'axe. Prix et délai svp.", mm("50", "1.2", "100")),
    row("mon-collegue", "Mon collègue a déjà celui de 60,3 x 2. Moi je voudrais un mandrin pour tube 48,3 x 1,6, rayon à l'axe 96 mm.", mm("48.3", "1.6", "96")),
    row("mi-vecino", "Mi vecino usa 32 x 1,5 y no le hace falta mandril. Lo mío es 32 x 1, inox, radio medio 64. ¿Me podéis cotizar uno?", mm("32", "1", "64")),
    row("sempre-senza-anima", "Abbiamo sempre piegato il 35 x 2 senza anima, nessun problema. Adesso c'è un lavoro in 35 x 1,2, raggio 70 all'asse, e si schiaccia. Chiediamo offerta per un mandrino.", mm("35", "1.2", "70")),
    row("avete-fatto-a-marzo", "Il mandrino per il 25 x 1,5 che ci avete fatto a marzo lavora bene. Ora ce ne serve uno per il 30 x 1,5, raggio medio 60.", mm("30", "1.5", "60")),
    row("vroeger-zonder-doorn", "Vroeger bogen we 28 x 1,5 zonder doorn. De klant wil nu 28 x 1, straal 56 op hart, en dat knikt. Kunnen jullie een doorn aanbieden?", mm("28", "1", "56")),
    row("two-in-one-breath", "We run 1.25 x .065 and 1.5 x .065 every day, no mandrels, no drama. New job is 1.5 x .035 titanium, 4.5 CLR, and we can't hold it. One mandrel please.", inch("1.5", "0.035", "4.5")),
    row("thanks-for", "Thanks for the quick turnaround on the 2.25 x .065, it arrived Monday. Next one: 2.5 x .065, 304, CLR 3.75. Same finish. One off.", inch("2.5", "0.065", "3.75")),
    row("previous-owner", "In case it matters our bender was set up by the previous owner for 2 x .095. We only do 1.5 x .058 CDS, radius 4 inch to centre. How much for a mandrel?", inch("1.5", "0.058", "4")),
    row("old-line-new-line", "The sample you have (1.000 x .049) is from the old line. New line is 1.125 x .049, 304, 2.5 CLR. Please price a single mandrel for the new line.", inch("1.125", "0.049", "2.5")),
    row("plug-of-our-own", "Good afternoon,\nWe tried 44.5 x 1.5 with a plug we turned ourselves and that is good enough. 50.8 x 1.2 is another story: 304, CLR 76, it wrinkles every time. Kindly quote one mandrel for it.\nR. Ashdown", mm("50.8", "1.2", "76")),
    row("dave-next-door", "Dave next door says you did him a beauty for 1 1/4 x .095. Can you do me one for 1 1/2 x .120? Its ERW and the former is 5 inch clr", inch("1.5", "0.12", "5")),
    row("asked-last-week", "I know I asked for 2 x .120 last week. The chassis shop has since told me 1.75 x .120 is what the rule book wants, on a 6 CLR. So please quote that, one piece.", inch("1.75", "0.12", "6")),
    row("came-yesterday", "Hi! The mandrel for the 25.4 x 1.2 came yesterday, thank you. Could you now make us one for 31.8 x 1.2 (also 6061), R 64 centreline?", mm("31.8", "1.2", "64")),
    row("a-firm-that-uses", "Quoting a job against a firm that uses 60.3 x 2.9. We'd go with 60.3 x 2.0, S235, R 150 centreline. What would a mandrel for that be?", mm("60.3", "2", "150")),
    row("later-in-the-year", "One mandrel for 19.05 x 0.9, copper, R 38 to centre. Later in the year we may come back for 22.2 x 0.9 but ignore that for now.", mm("19.05", "0.9", "38")),
    row("quote-number", "You quoted us 1.375 x .049 under Q-3381 and we've placed that order. New enquiry: 1.75 x .049, 4130, 5.25 CLR, qty 1.", inch("1.75", "0.049", "5.25")),
    row("old-bike", "the old bike had 7/8 x .083 bars. these are 1 x .058 chromoly with 3.5 inch clr bends. how much is one mandrel", inch("1", "0.058", "3.5")),
    row("kaufen-wir-zu", "Wir kaufen 42,4 x 2 fertig gebogen zu. Selbst biegen wollen wir 48,3 x 2, R 97 Mitte, 1.4404. Bitte um Preis für 1 Dorn.", mm("48.3", "2", "97")),
    row("ein-bekannter", "Ein Bekannter hat bei Ihnen einen Dorn für 35 x 1,5 machen lassen. Ich bräuchte so einen für 38 x 1,5, Radius 76 Rohrmitte.", mm("38", "1.5", "76")),
    row("das-alte-modell", "Das alte Modell war 26,9 x 2,3. Das neue ist 33,7 x 2, Stahl, R 70 auf die Mitte. Dafür bitte einen Dorn anbieten.", mm("33.7", "2", "70")),
    row("ohne-probleme", "30 x 1,5 läuft bei uns ohne Probleme. Sorgen macht 40 x 1, R 80 Mitte, Alu: fällt zusammen. Bitte bieten Sie uns einen Dorn dafür an.", mm("40", "1", "80")),
    row("passe-bien", "Le 42,4 x 2 passe très bien sans rien. C'est le 42,4 x 1, rayon 85 à l'axe, qui plisse. Pourriez-vous nous faire un prix pour un mandrin ?", mm("42.4", "1", "85")),
    row("un-ami", "Un ami m'a montré son mandrin pour 22 x 1,5. Le mien serait pour du 25 x 1,5, rayon 62 à l'axe, alu. Combien pour un ?", mm("25", "1.5", "62")),
    row("hasta-ahora", "Hasta ahora hacíamos 30 x 2 sin mandril. El cliente ha cambiado a 30 x 1, radio al eje 60, y se arruga. Por favor, precio de un mandril.", mm("30", "1", "60")),
    row("sigue-bien", "El mandril de 25 x 1,5 que nos hicisteis sigue bien. Hace falta otro para 28 x 1,5, radio 56 al eje, aluminio.", mm("28", "1.5", "56")),
    row("prima-usava", "Il cliente prima usava il 40 x 2; adesso vuole il 40 x 1,5, raggio all'asse 80. Serve un mandrino, prezzo?", mm("40", "1.5", "80")),
    row("siamo-a-posto", "Per il 60,3 x 2 siamo a posto. Ci manca il mandrino per 76,1 x 2, raggio 150 all'asse, inox 304.", mm("76.1", "2", "150")),
    row("mijn-buurman", "Mijn buurman heeft er een voor 38 x 2. Ik zoek een doorn voor 32 x 1,5, straal 64 hart.", mm("32", "1.5", "64")),
    row("vorig-jaar", "Van de 48,3 x 2 hebben we er vorig jaar een gekocht. Deze keer gaat het om 60,3 x 2, radius 120 hart, RVS 304. Graag offerte.", mm("60.3", "2", "120")),
    row("current-production", "Current production is 1.25 x .120 and needs nothing inside. The lightweight version will be 1.25 x .049, CLR 3.75, 4130. Could we have a quotation for one mandrel for the lightweight version?", inch("1.25", "0.049", "3.75")),
    row("got-now", "I've been bending 5/8 x .049 on a hand bender, fine. Got 5/8 x .022 titanium now, 1.5 CLR. Can you make a mandrel?", inch("0.625", "0.022", "1.5")),
    row("enquiry-is-void", "Dear Sirs,\nPlease find below our requirement for one mandrel: tube 63.5 x 1.5, AISI 304, CLR 95.\nThe enquiry for 76.1 x 2 sent by our Mr Petrov on Monday is void.\nBest regards", mm("63.5", "1.5", "95")),
    row("aus-versehen", "Hallo zusammen, unser Azubi hat aus Versehen 28 x 2 auf R 56 angefragt. Richtig ist 28 x 1,5, R 56, Werkstoff 1.4307. Bitte 1 Dorn anbieten. Danke!", mm("28", "1.5", "56")),
    row("este-ano", "Buenas, el año pasado os compramos el de 42,4 x 2. Este año toca 48,3 x 2, radio 100 al eje, inox 316. Pasadme precio de un mandril.", mm("48.3", "2", "100")),
    row("pal-lends", "I've a pal who'll lend me the 1.5 x .065. It's the 1.25 x .065 at 3.75 CLR I'm stuck for. Can you make just the one?", inch("1.25", "0.065", "3.75")),
    row("was-fixing-to", "Howdy. Was fixing to order for 1-1/2 x .120 but the fella I build for switched me to 1-3/4 x .120. CLR stays 6 inches. So one mandrel for that.", inch("1.75", "0.12", "6")),
    row("premier-temps", "Nous avions demandé 50 x 2 dans un premier temps, mais le bureau d'études a retenu 54 x 2, rayon 108 à l'axe. Merci de coter un mandrin.", mm("54", "2", "108")),
    row("done-with", "We got burned by a cheap import mandrel for 2 x .065 so that one's done with. Looking to buy a proper one for 2.5 x .065, 3.75 CLR, 304.", inch("2.5", "0.065", "3.75")),
    row("ueberholt", "In der Zeichnung steht noch 38 x 2, das ist überholt. Gültig: 38 x 1,5, R 76 auf Mitte, S235. Bitte einen Dorn anbieten.", mm("38", "1.5", "76")),
    row("une-erreur", "Le plan parle encore de 45 x 2 ; c'est une erreur. Il faut un mandrin pour 42,4 x 2, rayon 85 à l'axe.", mm("42.4", "2", "85")),
    row("un-terzista", "Il 28 x 1,5 lo piega un terzista. Noi dobbiamo piegare 28 x 1, raggio medio 56, rame. Quanto costa un mandrino?", mm("28", "1", "56")),
    row("we-gebruiken-zand", "Voor de 60,3 x 2,9 gebruiken we zand. Dat werkt niet bij 60,3 x 2, radius 150 hart. Kunt u een doorn aanbieden?", mm("60.3", "2", "150")),
    row("expanding-into", "Our 38.1 x 1.2 line has been on your mandrels since 2015. Expanding into 44.5 x 1.2, R 89, 304. Please quote one.", mm("44.5", "1.2", "89")),
]  # fmt: skip

NOT_PLAINLY = [  # the only ODs in mm that may stand without a doubt
    row("worn-out-again", "You made us a mandrel for 1.5 x .083 on 4.5 CLR in June. It snapped. Need another. The 1.75 x .120 on 5.25 CLR is still fine.", "38.1"),
    row("same-again", "We now run 2 x .065 on 8 CLR. Last year you supplied one for 1.75 x .095, 5.25 CLR. Please send us the same again.", "44.45"),
    row("noch-einmal", "Wir haben jetzt 30 x 2 auf R 60. Voriges Jahr haben Sie uns einen Dorn für 25 x 1,5, R 50, geliefert. Bitte noch einmal denselben anbieten.", "25"),
    row("le-meme", "Nous cintrons maintenant le 30 x 2, rayon 60. L'an dernier vous avez fourni un mandrin pour 25 x 1,5, rayon 50 : merci de nous refaire le même.", "25"),
    row("need-one-for-that", "We picked up a new bender with a 1.5 x .065, 4.5 CLR die. My neighbor has your mandrel for 2 x .120, 6 CLR and I need one for that.", "50.8"),
    row("one-of-those", "Mine is 1.5 x .065, 4.5 CLR. My buddy has 2 x .120 on 6 CLR. How much for one of those?", "50.8"),
    row("he-wants-one", "My shop makes 1.5 x .065 bends on 4.5 CLR. My brother runs 2 x .120 on 6 CLR without a mandrel. He wants one now, can you quote?", "50.8"),
    row("asked-for-by-name", "We do 30 x 2 on R 60 fine. 42 x 3 on R 84 we bought outside so far. Please quote a mandrel for the 42 x 3.", "42"),
    row("the-thick-stuff", "We have bent 25.4 x 1.2 at R50 for years with no trouble. The client has now gone to 25.4 x 0.7, R50. Please quote one mandrel for the thick stuff.", ""),
    row("neither-is-mine", "My friend has 1.5 x .065 on 4.5 CLR, my neighbor 2 x .120 on 6 CLR. What would a mandrel for my tube cost? Drawing follows.", ""),
    row("both-told", "The 1.5 x .065, 4.5 CLR works fine. The 2 x .120, 6 CLR is covered. We need a mandrel for the tube on the attached drawing.", ""),
    row("beides-da", "30 x 2, R 60 läuft ohne Probleme. 40 x 2, R 80 haben wir schon. Bitte Angebot für einen Dorn laut Zeichnung.", ""),
    row("make-us-both", "Quote 1.5 x .065, 4.5 CLR. My friend has 2 x .120, 6 CLR, make us both a mandrel.", "38.1 50.8"),
    row("one-of-each", "You quoted 1.5 x .065, 4.5 CLR last week. Now we also want 2 x .120, 6 CLR. One mandrel of each.", "38.1 50.8"),
    row("do-later", "Please quote 1.75 x .095, 5.25 CLR. The 2 x .120, 6 CLR is fine. That one we might do later.", "44.45"),
    row("not-to-be-priced", "Please quote 1.75 x .095, 5.25 CLR. No need to price 2 x .120, 6 CLR.", "44.45"),
    row("fine-but-want-the-other", "I have a mandrel for 1.75 x .095, 5.25 CLR from you. It's fine, but I want one for 2 x .120, 6 CLR.", "50.8"),
    row("he-needs-it", "My neighbor runs 2 x .120 on 6 CLR and it goes oval, so he needs a mandrel. I run 1.75 x .095, 5.25 CLR fine.", "50.8"),
    row("not-fine-any-more", "Our 1.75 x .095, 5.25 CLR is not fine any more. The 2 x .120, 6 CLR never gave trouble. One mandrel please.", "44.45"),
    row("isnt-covered", "1.75 x .095, 5.25 CLR isn't covered. 2 x .120, 6 CLR is covered. Quote please.", "44.45"),
    row("have-none-for", "We don't have a mandrel for 1.75 x .095, 5.25 CLR. We already have one for 2 x .120, 6 CLR. Please quote.", "44.45"),
    row("back-to-the-first", "It used to be 1.75 x .095, 5.25 CLR, then 2 x .120, 6 CLR, and is back to the first. One mandrel please.", "44.45"),
    row("i-think-the-former", "First we said 1.75 x .095, 5.25 CLR, now the boss says 2 x .120, 6 CLR. I still think the former. Quote one mandrel.", ""),
    row("dropped-that-idea", "The customer was going to change to 2 x .120, 6 CLR but dropped that idea, so we stay with 1.75 x .095, 5.25 CLR. One mandrel please.", "44.45"),
    row("anothers-wall", "My friend runs 1-5/8 x .065 moly on a 5 CLR die. I have 1-3/4 DOM. Please quote me a mandrel.", "44.45"),
    row("proven-both-ways", "My friend runs 1.75 x .095 on 5.25 CLR. My neighbor runs 2 x .120 on 6 CLR. Please quote one mandrel.", ""),
    row("annule-et-attendra", "35 x 1,5 mm, rayon 70, est annulé. 42 x 2 mm, rayon 84, attendra. Prix pour un mandrin ?", ""),
    row("zwei-die-fehlen", "Für 35 x 1,5 mm, R 70 fehlt uns ein Dorn. Der für 42 x 2 mm, R 84 ist verschlissen, bitte noch einmal.", "35 42"),
    row("spare-for-the-owned", "We already have one for 1.75 x .095 on 5.25 CLR and want a spare. 2 x .120 on 6 CLR goes fine without.", "44.45"),
    row("either-will-do", "Last year it was 1.75 x .095, 5.25 CLR. The new job may be 2 x .120, 6 CLR. Quote a mandrel for either.", ""),
]  # fmt: skip

OF_ANOTHER = [  # fields that are not this size's own by its words: named beside the other one only
    row("anothers-radius", "We always bent 38 x 1.5 on R 57 without a mandrel. Now a customer wants 42 x 1.2. Please quote one mandrel.", "42", "clr"),
    row("anothers-wall", "My neighbor runs 1-5/8 x .083 without a mandrel. I have 1-3/4 DOM on a 6 CLR die and want to buy a mandrel.", "44.45", "wall"),
    row("anothers-material", "Our stainless 2 x .065 on 8 CLR bends fine. I need one mandrel for 1.75 x .120, 6 CLR.", "44.45", "material"),
    row("titane-d-avant", "L'an dernier vous avez fourni un mandrin pour 35 x 1,5 en titane, rayon 70. Il nous faut un mandrin pour 42 x 2, rayon 84.", "42", "material"),
]  # fmt: skip

SHARED = [  # the same words with a 'same' in them: no doubt
    row("same-die", "We always bent 38 x 1.5 on R 57 without a mandrel. Now a customer wants 38 x 1.2 on the same die, R 57. Please quote one mandrel.", "38", "clr"),
    row("same-steel", "Our 304 2 x .065 on 8 CLR bends fine. I need one mandrel for 1.75 x .049, 6 CLR, same material.", "44.45", "material"),
]  # fmt: skip
