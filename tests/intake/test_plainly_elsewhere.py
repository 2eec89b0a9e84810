"""Tubes to be bent for the sender, tools to be put right under guarantee, how the shop posts and is
paid: what reads like a request and is none, and near misses that are one."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

from datetime import date

import pytest

from bendreply.intake.pasted import text_message
from bendreply.intake.pipeline import understand

NO_REQUEST = [
    "Our school is after 30 bike racks, bent from 48 x 3 galvanised tube, 150 radius. Can you make and deliver them by May?",
    "Do you make bent parts? We need 12 stair rails in 42.4 x 2 stainless with 100 radius, delivered to site. Price please.",
    "Looking for someone to supply 8 football goals in 60.3 x 3 tube, 200 radius corners.",
    "Il nous faudrait 40 cadres de table en tube 48 x 3, rayon 200. Pouvez-vous les fabriquer et les livrer avant avril ?",
    "Wir brauchen 40 Bankgestelle aus Rohr 48 x 3, Radius 200. Können Sie die fertigen und liefern?",
    "Necesitamos 15 marcos de banco en tubo 48 x 3, radio 200. ¿Los pueden fabricar antes de abril?",
    "Ci servono 20 telai per panchine in tubo 48 x 3, raggio 200. Potete produrli entro aprile?",
    "Wij zoeken 25 bankframes uit buis 48 x 3, radius 200. Kunnen jullie die maken en leveren?",
    "Somos almacenistas de tubo inoxidable: 38 x 1,5, 42,4 x 2, en AISI 316. Me gustaría presentarles nuestra tarifa. ¿Podría visitarles?",
    "Nous sommes négociants en tube inox soudé : 38 x 1,5, 42,4 x 2. J'aimerais vous présenter notre gamme. Puis-je passer vous voir ?",
    "Wij zijn voorraadhouder van gelaste rvs buis, 38 x 1,5 en 42,4 x 2. Graag stel ik u onze prijslijst voor. Mag ik langskomen?",
    "We have 40 pieces of 1.5 x .065 304 that need two bends each, 4.5 clr. Can we drop the tube off and have you bend it? Price per bend please.",
    "Could you bend 1.75 x .120 DOM into a main hoop for me, 6 inch clr? I don't have a bender. What would it cost?",
    "Könnt ihr uns Geländer biegen? Rohr 42,4 x 2, Radius 100, 12 Stück. Das Rohr würden wir anliefern. Was kostet eine Biegung?",
    "Biegen Sie auch im Lohn? 33,7 x 2, R 70, ca. 50 Bögen, Material stellen wir.",
    "Pouvez-vous cintrer des tubes pour nous ? 33,7 x 2, rayon 70, une trentaine de pièces, nous fournissons le tube. Quel prix par cintre ?",
    "¿Nos pueden curvar unos pasamanos? Tubo 42,4 x 2, radio 100, 20 piezas, nosotros ponemos el tubo. ¿Cuánto cuesta cada curva?",
    "Potete piegare dei tubi per noi? 42,4 x 2, raggio 100, 30 pezzi, il tubo lo portiamo noi. Quanto costa a piega?",
    "Kunnen jullie voor ons leuningen buigen? Buis 42,4 x 2, straal 100, 15 stuks, wij leveren de buis aan. Wat kost een bocht?",
    "Do you do bending work? 2 x .065 aluminum, 6 inch clr, ten pieces bent to 90. We supply the tube, you bend and we collect.",
    "looking for someone who can bend 6 pcs of 1.25 x .065 tube at 3.5 clr, i would bring the tube. how much per bend",
    "What would you charge per bend for 2.5 x .083 stainless exhaust, 3.75 clr, 12 bends, our material?",
    "Please quote for 25 handrails bent from 48.3 x 3.2, R 150, both ends 90 degrees, galvanised after. Delivered to site.",
    "I need three 90 degree bends made in 63.5 x 1.6 stainless, 95 clr. Do you make and ship bends?",
    "Need a roll bar bent up from 1.75 x .120, 6 clr. I have a drawing. Price?",
    "I was told you bend tube? I need 40 hoops, 1-3/8 x .065 galvanized, 12 foot across. If you don't bend yourselves maybe you know someone near here.",
    "Do you do tube bending? I need 30 arches in 1.66 OD galvanized, 14 ft wide.",
    "Could we move our visit from 7 to 8 July, 10:30? I bring the worn 76 mm mandrel along.",
    "We'll be near you on the 20th, would you have half an hour to show us how the mandrels are made?",
    "¿Podemos cambiar la visita al 8 de julio?",
    "Possiamo spostare la visita all'8 luglio?",
    "Kunnen we ons bezoek verzetten naar 8 juli?",
    "The 1.75 x .095 mandrel (5.25 CLR) we had from you in May has lost its chrome after two weeks. We want it replaced free of charge under warranty.",
    "Mandrel for 42,4 x 2, R 100, delivered in August: the cable has stretched and the balls rattle. We expect you to put it right at your cost.",
    "Der Dorn 42,4 x 2, R 100 von letzter Woche hat schon Riefen auf der zweiten Kugel. Das ist ein Garantiefall, bitte kümmern Sie sich darum.",
    "Le mandrin 42,4 x 2 R 100 livré en mai est rayé après 50 cintres. Je veux qu'il soit repris sous garantie.",
    "El mandril 42,4 x 2, R 100, que me vendieron está rayado a las 40 curvas. Quiero que lo arreglen en garantía, no comprar otro.",
    "L'anima 42,4 x 2 R 100 che ci avete fornito si è rigata dopo 40 pieghe. Vogliamo la riparazione in garanzia.",
    "De doorn 42,4 x 2 R 100 die jullie leverden zit na 40 bochten vol krassen. Ik wil dat het onder garantie wordt opgelost.",
    "The balls on my 2 x .065 came loose after 3 days. I need this fixed under guarantee, I won't buy a new one.",
    "Second ball on the mandrel you made us (1.5 x .083, 4.5 clr) is pitted already. I need you to take a look at it under the guarantee.",
    "Bank transfer sent this morning, please ship to the Channel Islands as agreed.",
    "Is it card or bank transfer for invoice 2231?",
    "The 1.5 x .065 mandrel on 4.5 clr you sent arrived bent, please replace it.",
    "Got the 1.5 x .065 mandrel on 4.5 clr yesterday, it arrived broken, replace it please.",
]  # fmt: skip
REQUESTS = [
    "We build chair frames from 25 x 2 tube, 75 radius. Need one to start. Can you make it?",
    "Need 2 for handrails, 42.4 x 2, 100 radius. Can you make them?",
    "We need to bend 40 bench frames from 48 x 3 tube, 200 radius. Can you make it?",
    "Wir möchten 40 Bankgestelle aus 48 x 3 biegen, Radius 200. Können Sie das machen?",
    "whats a mandrel go for, 2 inch dom, .120 wall. havent picked a die yet",
    "what are you getting for a mandrel, 2 x .120 dom, 6 clr",
    "whats the going rate on a mandrel for 2 x .120 on 6 clr",
    "Need a mandrel for 1.5 x .065 on 4.5 clr. Could I visit you next week with the tube?",
    "We bend rails for a customer: 42.4 x 2 stainless 316, 150 radius. What would you charge for a mandrel?",
    "Can you make a mandrel so we can bend 42.4 x 2, 150 radius for our customer? We deliver tube to site next month.",
    "Could you bend a test piece with the mandrel first? 42.4 x 2, 316, R 100. Quote one mandrel.",
    "Need mandrel for 1.5 x .065, 4.5 clr. Our bender makes 40 bends a day. What would you charge?",
    "What would you charge for 1.75 x .095 at 5.25 clr, 4130?",
    "I'll be bending handrail for the school, 1.5 x .120 on 6 clr. What do you charge for one?",
    "1.5 x .065 304 on 4.5 clr, 90 degree bends, 400 pieces a year. How much?",
    "Könnt ihr uns einen Dorn machen? Rohr 42,4 x 2, Radius 100. Wir biegen Geländer. Was kostet einer?",
    "Please price tooling to bend 48.3 x 3.2 handrails, R150, 25 rails with two 90 degree bends.",
    "we bring you the tube to try: 2 x .065, 6 clr. one mandrel please",
    "Our old mandrel for 2 x .065 on 4 clr is scored, need a new one. Price please?",
    "The mandrel you made in 2019 for 1.75 x .095, 5.25 clr is finally worn out. Need another, is there a guarantee on it?",
    "Quote one mandrel for 2 x .065, 4 clr. What guarantee do you give?",
    "We need a mandrel for 42.4 x 2, R100. The last one from another maker scored after 40 bends and they wouldn't honour the guarantee.",
    "I want a mandrel for 2 x .065, 4 clr, with warranty. Not happy with my current supplier.",
    "Can you bend 2 x .120 tube at 6 CLR without a wrinkle? Need one.",
    "Hi, could you do 1.5 x .065 at 4.5 clr for me? What would it cost?",
    "can you bend 1.25 x .049 at 2.5 clr? price",
    "Would 1.75 x .095 bend at 5.25 clr for me? Please quote.",
    "I have an old bender. Can you help me bend some rails, 1.5 x .120, 6 clr? What would one cost?",
    "1.5 x .065, 304, 4.5 clr. The rails get bent at our shop. How much?",
    "We need rails bent cleaner than now: 42.4 x 2, R100. Our machine flattens them. How much for one?",
    "Looking for one for 2.5 x .065 304, 3.75 clr; we get 40 pipes bent per day. Price?",
    "Quote please: 38.1 x 1.65, R 57, 316L. Customer's material.",
    "42,4 x 2, R 100, wir biegen Geländer für uns. Was kostet einer?",
    "price for 1.5 x .065 on 4.5 please, my last one came loose. Is there a guarantee?",
    "Need a new mandrel for 1.5 x .065, 4.5 clr; the old one (yours) has worn and is not under warranty.",
    "I won't pay more than 300. 1.5 x .065 on 4.5 clr mandrel, the old one is worn.",
    "One mandrel 1.5 x .065 4.5 clr. Current one is scored. Free of charge shipping would be nice.",
    "My mandrel is scored. Send me a new one, 1.5 x .065, 4.5 clr, in warranty or not I don't care, bill me.",
    "The tool for 1.5 x .065 on 4.5 clr broke, replace it. And the 1.75 x .095 on 5.25 clr one is worn, replace that as well.",
    "Ours for 1.5 x .065 on 4.5 clr is worn out, please replace it.",
    "1.5 x .065 on 4.5 clr. The mandrel needs replacing.",
    "Der Dorn für 38 x 1,5, R 57 ist verschlissen, bitte ersetzen.",
    "Le mandrin 38 x 1,5 R 57 est usé, merci de le remplacer.",
    "El mandril 38 x 1,5 R 57 está gastado, hay que reemplazarlo.",
    "L'anima per 38 x 1,5 R 57 è usurata, da sostituire.",
    "De doorn voor 38 x 1,5 R 57 is versleten, graag vervangen.",
]  # fmt: skip
QUESTIONS = [
    "Do you ship to Norway? And do we pay customs or is it in the price? I'll send sizes when I know.",
    "Can I pay by card or does it have to be a bank transfer? Also do you deliver to farms? Sizes will follow.",
    "Verschicken Sie auch nach Österreich? Und geht PayPal? Maße kommen dann.",
    "Vous livrez en Suisse ? La TVA est-elle déduite ? Mon mari vous enverra les cotes.",
    "¿Envían a las Islas Canarias? ¿Se paga con tarjeta o transferencia? Luego mando las medidas.",
    "Spedite in Svizzera? Si paga con carta o bonifico? Poi vi mando le misure.",
    "Leveren jullie ook in België? Kan ik met kaart betalen? De maten stuur ik later.",
    "Is VAT included in your prices and what does postage to Ireland come to?",
    "Would I have to pay up front? And do you send to the Isle of Man?",
    "how do i pay you, card or what? and could you post it to orkney",
]  # fmt: skip


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        *((text, "other") for text in NO_REQUEST),
        *((text, "sizes") for text in REQUESTS),
        *((text, "question") for text in QUESTIONS),
    ],
)
def test_kind(text: str, kind: str) -> None:
    found = understand(text_message(text, today=date(2026, 11, 26)))
    assert found.kind.value == kind, found.why_kind
