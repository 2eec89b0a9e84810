"""What is asked of a thing, in words and turns of phrase that mean alike.

See ``heard.py`` for how they are read. Written without accents, in small letters.
"""

from __future__ import annotations

ALIKE = """
what: wat s, what re, wats, wat is, was sind, was genau, que tipo, quelle sorte, que clase, welk
    soort, welche art, tell me which, tell us which, what type of, was ist, qu est ce que, qu est
    ce qu, qu est ce, c est quoi, que es, que son, cos e, che cos e, que significan, wat, wot,
    whats, what s, which, welk, cosa, quali, cual, cuales, quoi, quel, quelle, quels, quelles,
    welche, welcher, welches, welchen, welchem, qual, quale, che tipo, qual e, was fur, wat voor,
    was fur ein, what all
mean: as in what, in what sense, si intende, intende per, s entend par, gemeint, meint, heisst das,
    bedoelen, bedoeld, bedoelt, wat houdt, was sagt, que representa, representa, stands, signifies,
    signify, begriff, term, terme, termino, termine, definizione, definicion, definitie, what is
    meant, what exactly is, ce que c est, meaning, stand for, stands for, stand, quiere decir, veut
    dire, vuol dire, versteht, verstehen, bedeuten, signification, significado, significato,
    betekenis, bedeutung, definition of, defined, refer to, refers to, denote, describe, interpret,
    entender, intend, s entend, s intende, se entiende, steht, staat voor, represent, represents,
    sinn, translate, in plain english
explain: no idea, have no idea, what on earth, enlighten me, never know what, explain the term,
    what this is, erklaren, erlautern, put simply, make sense of, get my head around, verstehe
    nicht, worry, should i worry, care about, put into words, walk me through, in simple words, in
    plain words, layman, help me understand, never heard of, not familiar, unfamiliar, first time i
    hear, first time i see, nobody can tell, no one can tell, can tell me what, dumb question,
    stupid question, qu est ce que ca, was soll das, explanation, erklarung, expliquer, expliquez,
    explicar, explica, expliquen, spiegare, spiegate, spiega, uitleggen, uitleg, clarify, clear up,
    enlighten, tell me about, new to me, never heard, never came across, what the heck, what the
    hell, no clue, scratching my head, kindly clarify, please clarify, clarify the, kindly explain
how much: combien, cuanto, cuanta, quanto, quanta, hoeveel, wieviel, wie viel, wie stark, what
    amount, by what amount, what sort of amount, de combien, how big a, how large a
how many: combien, cuantos, hoeveel, wieviel, wie viel, quanti, quantas, wie viele, wieviele,
    cuantas, quante, what number of, number of, anzahl, nombre de, numero de, numero di, aantal,
    count, zahl
how long: wie lang, wie lange, hoe lang, hoelang, cuanto tiempo, quanto tempo, combien de temps,
    what length, que longueur, quelle longueur, que longitud, que largo, che lunghezza, quanto
    lungo, quanto lunga, length of, how short, cuanto mide de largo, lange der, longueur
how often: wie oft, combien de fois, cada cuanto, ogni quanto, hoe vaak, how frequently
how far: wie weit, hoe ver, how deep, wie tief, hoe diep, how far forward, jusqu ou, hasta donde,
    fino a dove, how far in, how far out
how thick: wie dick, hoe dik, quelle epaisseur, que espesor, que grosor, che spessore, what
    thickness, how heavy a wall
how thin: wie dunn, hoe dun, how light, how skinny, how fine
how tight: smallest centre line, smallest center line, se puede cerrar, hasta donde se puede,
    cerrar el radio, how tight will, bend tighter, tighter bends, bends tighter, as tight as, tight
    as i dare, how tight a radius, wie klein, welcher radius, welchen radius, quel rayon, que
    radio, che raggio, welke straal, what radius, which radius, how far down, wie weit runter, hoe
    klein, wie eng, hoe krap, hoe strak, how small a radius, how sharp, how small a bend, how close
    a radius, how short a radius, how tightly, quanto stretto, how little radius, how low
why: wots up, what gives, what have i set wrong, set wrong, am i doing to, are we doing to, what is
    off, what s off, whats off, up with, lauft da schief, schief, lauft falsch, wrong with, woran
    kann, wie kommt das, wie kommt es, cosa c e che non va, que falla, qu est ce qui ne va pas, wat
    gaat er mis, mis, what explains, behind this, hoe kan het, was kann das sein, why s, why is it,
    what happened, what causes it, what happens, what did i do wrong, what have i done wrong, wo
    kommt, wo kommen, woher, woran, is going on, going on, weswegen, aus welchem grund, was mache
    ich falsch, was machen wir falsch, falsch gemacht, qu est ce qui cause, que estoy haciendo mal,
    sto sbagliando, wat doe ik fout, cosa provoca, que provoca, cosa causa, provoque, pour quelle
    raison, por que razon, per quale motivo, what could be the, what might be, warum, wieso,
    weshalb, pourquoi, por que, porque, perche, waarom, how come, woher kommt, woher kommen, woran
    liegt, d ou vient, d ou viennent, a que se debe, come mai, da cosa dipende, da che dipende,
    waardoor, hoe komt, wodurch, what causes, what is causing, causing, cause, causes, caused,
    ursache, causa, cause de, oorzaak, reason, grund, raison, razon, motivo, reden, what makes,
    what s making, what is making, due to what, a cosa e dovuto, doing wrong, doin wrong, what s
    going on, whats going on, where does it come from, where do they come from, de donde, culprit,
    explains, responsible for, what is wrong, whats wrong, what s wrong, falsch, blame, to blame,
    root cause, went wrong, go wrong, goes wrong, que hacemos mal, sbagliamo, sbagliando, where s
    that coming from, coming from, come from, comes from, source of, behind it
stop: wots up, what s up with, what gives, wat doe ik eraan, eraan, was mache ich, was machen wir
    dagegen, comment l eviter, se evita, come si evita, que hago para, how do i prevent, what can
    be done, can be done, where do we look, where do i look, get around, get round, sort it, sort
    this, any cure, how do i sort, cures, rimediare, risolvere, resolver, arreglar, solucionar,
    corregir, corriger, resoudre, regler le probleme, oplossen, losen, in den griff, abhilfe,
    abhelfen, what helps, do anything about, do something about, put right, straighten out, correct
    it, look into, how do i get, what should i do, what can i do, what do i do, what do we do,
    where do i start, where do we start, where should i look, how can i get, que puedo hacer, qu
    est ce que je peux faire, cosa posso fare, wat kan ik doen, was kann ich tun, was kann man tun,
    was hilft, comment faire, come posso, como puedo, hoe kan ik, stay away, loswerden,
    wegbekommen, vorbeugen, se debarrasser, remedio, rimedio, adjust, look at first, prevent,
    avoid, cure, remedy, get rid of, rid of, keep from, keep it from, vermeiden, verhindern,
    vermeide, vermeidet, verhindere, beheben, abstellen, gegen, eviter, evite, empecher, evitar,
    evito, evitarlo, quitar, eliminar, impedir, evitare, evita, eliminare, impedire, voorkomen,
    voorkom, verhelpen, tegengaan, supprimer, eliminate, combat, fight, sort out, do about, to do
    about, fix, fixed, fixes, solve, solution, losung, solucion, soluzione, oplossing, reduce,
    help, hilft, helfen, helpt, trick, clean up, clear up, against, minimise, minimize, keep the
    tube, keep it, keep them, troubleshoot, stamp out, banish, kriege ich weg, weg, go away, less,
    weniger, tun, machen, unternehmen, dagegen, any idea, any ideas, ideas, tips, tip, advice,
    suggestion, suggestions, hints, que hago, que hacemos, que faire, cosa fare, was tun, wat te
    doen, suggest, reason please, kindly suggest remedy, suggest the solution, any fix, how come
    and how, voorkom ik
necessary: needed, required, requisite, notig, noetig, erforderlich, notwendig, nodig, necesario,
    necesaria, necessaire, necessario, necessaria, vereist, noodzakelijk, mandatory, compulsory,
    obligatory, obligatoire, obligatorio, indispensable, indispensabile, imprescindible,
    unnecessary, overkill, essential, called for, worth having, worth it, neccesary, neccessary,
    necesary, benotigt, verplicht, advisable, unbedingt, pour de bon, a must, justified, warranted,
    superfluous, uberflussig, required or not, needed or not
need: worth fitting, worth buying, worth using, worth the money, worth the, lohnt, lohnt sich, vale
    la pena, vaut la peine, conviene mettere, loont, is it worth, plain necessary, hard necessary,
    save ourselves, spare ourselves, do any good, add anything, gain anything, bring anything,
    etwas bringt, bringt das was, brauchen wir, brauche ich, tocca, want one, do you want, required
    at all, vonnoten, hebben we nodig, would i want, am i going to need, go for, obligated, insist,
    essential, any need, no way around, have to, has to, must i, must we, do i want, do we want,
    required, compulsory, mandatory, obligatory, obligatoire, obligatorio, verplicht,
    indispensable, imprescindible, indispensabile, necessary, necessity, notig, noetig, benotigt,
    notwendig, erforderlich, zwingend, unbedingt, brauch, brauchen, brauche, braucht, braucht s,
    bedarf, necessaire, il faut, faut il, faudrait, faudra, faut, besoin, hace falta, hacen falta,
    necesita, necesitan, necesitamos, occorre, occorrono, serve, servono, bisogna, bisogno, ci
    vuole, noodzakelijk, vereist, nodig, neccessary, neccesary, call for, calls for, worth having,
    worth it, worth, point in, point of having, any point, benefit from, overkill, must have, gotta
    have, needed, crucial, called for, justify, justified, warrant, have got to, got to have,
    unavoidable, musn t, ought to have, should i have, should we have
skip: leave off, left off, go without, save ourselves the, save myself the, sparen wir uns, sparen,
    can we drop, not use, not using, never used, nie benutzt, weggelassen, lasse ich weg, dejar
    fuera, dispensarnos, economiser, risparmiare, besparen, gaan zonder, ohne auskommen, ohne geht,
    auch ohne, support of any kind, with nothing, get away w o, bypass, do away with, spare myself,
    leave away, dispense with, instead of a mandrel, without any, unsupported, naked, ohne
    innendorn, support inside, internal support, nix drin, without, w o, wo a, do without, get by
    without, get away without, get away with no, leave out, leave it out, left out, left it out,
    leaving out, leave the, omit, ditch, forgo, drop the, manage without, ohne, sans, sin, senza,
    zonder, auskommen, weglassen, verzichten, se passer, prescindir, fare a meno, weglaten, has no,
    have no, no mandrel, no wiper, empty, hollow, leer, vide, vacio, vuoto, leeg, nothing inside,
    no internal support, without anything inside, nothing in it, free bend, freehand, bare, kein,
    keine, keinen, pas de, geen, a vuoto, a vide, en vacio, nothing inside it, without anything in
    it, save myself, nada dentro, rien dedans, niente dentro, niets erin, skipping
can: survived, hold out for, hin, kommen wir, auskommen wir, get me by, get by with, do this job,
    do the job, tolere, tolerar, comfortable, feel comfortable, be happy with, acceptable amount,
    darf, durfen, zulassig, admissible, zulassige, gotchas, any gotchas, any hope, hope of, chance
    of, any chance, bendable, biegbar, kaltbiegen, machbar, realisierbar, asking too much, too much
    to ask, nuts, out of the question, pull off, pull it off, get it to, is there a way,
    hinbekommen, hinkriegen, schaffbar, realisable, envisageable, viable, conseguir, fattibile,
    lukt, lukken, doenlijk, kaltumformbar, within reach, ask too much, up to, managed, capable,
    could, kann, kannst, konnen, konnt, konnte, konnten, peut, peux, pouvez, pourrait, on peut,
    puede, pueden, puedo, podemos, podria, se puede, puo, posso, possiamo, potete, si puo, si
    possono, kan, kunnen, kunt, kun, possible, moglich, geht, posible, possibile, mogelijk, gaat,
    feasible, doable, faisable, factible, haalbaar, able to, ok, okay, alright, all right, fine,
    allowed, acceptable, erlaubt, permis, permitido, permesso, toegestaan, advisable, work, works,
    funktioniert, klappt, marche, funciona, funziona, werkt, lasst, lassen, lsst, manage, safe,
    safely, good enough, enough, sufficient, suffice, reicht, ausreichend, suffit, suffisant,
    suficiente, basta, sufficiente, voldoende, genoeg, any problem, a problem, an issue, problem,
    issue, trouble, wise, sensible, risky, bad idea, good idea, a mistake, hurt, crazy, achievable,
    realistic, realistically, achieve, get away with, take, cope, handle, survive, survives,
    attempt, good, fit for, tolerate, is suitable for, can be used, possible or not, se cintre t
    il, daft to try, worth trying, am i dreaming, dreaming, no go, a no go
should: soll, sollte, sollen, sollten, devrait, doit, dois, debe, deberia, deve, dovrei, dovrebbe,
    moet, moeten, muss, mussen, musste, zou, would you, recommend, recommended, empfehlen,
    empfehlt, empfohlen, conseillez, conseiller, recommandez, recomiendan, recomienda, aconsejan,
    consigliate, consiglia, raccomandate, raadt u, raden jullie, aanraden, adviseert, adviseren,
    advise, advised, prefer, preferred, prefers, suggest, suggested, better, best, besser, beste,
    besten, mieux, meilleur, meilleure, mejor, meglio, migliore, beter, ideal, optimal, suitable,
    suits, suit, geeignet, adapte, adecuado, adatto, geschikt, correct, right one, ought, wise
    choice, take for, go for, nehmen, nimmt, nehme, go with, pick, choose, choice, choisir, elegir,
    scegliere, kiezen, wahlen, ratsam, sinnvoll, conviene, vaut, favour, favor, is suitable, kindly
    suggest, kindly advise, kindly inform, shall be used, to be used, to be applied, ist geeignet,
    convient il
two: zwei, deux, dos, due, twee, both, beide, beiden, ambos, entrambi, entrambe, les deux, los dos,
    several, mehrere, plusieurs, varios, varias, diversi, diverse, meerdere, multiple, three, drei,
    trois, tres, tre, drie, couple of, pair of
one: once the, once, one mandrel enough, keep the mandrel, ein dorn, single, ein und derselbe, ein
    und denselben, un seul, une seule, un solo, una sola, uno solo, einen einzigen, einziger,
    einzige, een enkele, just one, only one, unico, unica, un unico, seul, seule, solo uno, ein
    einziger, sola, una sola bola, single one, just the one
other: go from, from 2 mm to, to 1 5, two dies, get two, weitere, andere radien, anderen radius,
    auch auf dem, auch auf den, auf dem anderen, another one, swap over, three, drei, trois, tres,
    tre, drie, going from, moving to, move to, later, next job, too small, alternative, umsteigen,
    wechseln, wechsel, gewechselt, changer, change de, cambiar, cambio, cambiare, veranderen,
    wisselen, another, ander, andere, anderen, anderer, anderes, anders, autre, autres, otro, otra,
    otros, otras, altro, altra, altri, altre, different, differing, verschiedene, verschiedenen,
    unterschiedliche, differents, differentes, distintos, distintas, diferentes, diversi, diverse,
    verschillende, verscheidene, second, zweiten, second one, next size, change, changes, changed,
    switch, swap, go between, interchangeable, universal, change over, varies, vary, tighter radius
    later, change to, later radius, another radius, buy again
also: as well, too, auch, aussi, tambien, anche, ook, egalement, equally, besides, additionally
same: match, matches, that match, same as, gleiche dorn, selbe, selben, vom gleichen, also for, do
    for, use it for, use it on, same one, still use, also usable, usable, works for both, do both,
    cover both, cover, both with, off the same, off one, off a, reused, work for, denselben,
    demselben, derselbe, dieselbe, gleichen, gleiche, meme, mismo, misma, stesso, stessa, dezelfde,
    hetzelfde, zelfde, identical, alike, interchange, equal, equals, equivalent, gleich, shared,
    share, common, reuse, re use, egal, igual, uguale, gelijk, one and the same
difference: same thing, confusing, what makes, matter, makes a difference, unterschied,
    unterschiede, unterscheiden, differ, differs, differently, diff, versus, vs, compared, compare,
    diferencia, diferencias, differenza, differenze, verschil, verschillen, distinguish,
    distinction, tell apart, apart, se distingue, confuse, confused, gegenuber, rispetto, thicker
    or thinner, what do the balls do, that a straight one, pros and cons, pros, cons, advantages,
    advantage, disadvantages, drawbacks, benefits, vorteile, nachteile, avantages, ventajas,
    vantaggi, voordelen
send: need off me, need off us, from our side, off me, from my side, from our end, from my end, let
    you have, vous faut il, vous faut, von uns, de nous, de nosotros, da noi, van ons, von mir, de
    moi, de mi, da me, van mij, you be needing, liefern mussen, aanreiken, list, put in the
    request, hand over, include in, provide, give you, tell you, include, supply you, mitteilen,
    schicken, senden, ubermitteln, angeben, envoyer, fournir, donner, transmettre, communiquer,
    enviar, mandar, pasar, dar, inviare, mandare, fornire, sturen, doorgeven, opsturen, aanleveren,
    put in, get together, you need from me, you need from us, need from me, need from us, need to
    know, want to know, ask for, wissen, savoir, saber, sapere, weten, require from
data: medidas os, what to give, what to give you, os tengo que pasar, pasar, datos os, alles
    nennen, nennen, put in, be in my, fill in, i tell you, angeben, mitgeben, mussen wir ihnen,
    cotes dois je, what sizes, wat moet ik opgeven, opgeven, indicare, indicarvi, indiquer,
    indicarles, precisar, precisare, preciser, list of the particulars, list of particulars, list
    of what, checklist, what info, what all, which dimensions, info do you, spec sheet, pieces of
    information, everything you need, all you need, kenngrossen, abmessungen, cotes, cotas, quote
    necessarie, afmetingen, kenmerken, things do you need, details, detail, information, info,
    infos, dimensions, measurements, particulars, specs, spec, specifications, angaben, daten,
    informationen, masse, donnees, informations, renseignements, datos, informacion, medidas, dati,
    informazioni, misure, gegevens, informatie, maten, figures, numbers, parameters, facts,
    drawing, zeichnung, plan, plano, disegno, tekening, input, elements, indications, all details,
    numbers you want, what numbers, details are required
quote: in my rfq, rfqs, in the rfq, enquiries, preisanfrage, angebotsanfrage, offerteaanvraag,
    getting a quote, go about getting, price one up, price it up, price up, price it, price one,
    price a job, price me, get a price, make me an offer, price for you, put a price, einen preis,
    ein angebot, un prix, un precio, un prezzo, een prijs, quote me, to make one, make me one,
    build me one, build one, ask for a price, bid, estimate from you, quotation, quotes, offer,
    offers, angebot, angebots, offre, devis, oferta, presupuesto, cotizar, cotizacion, preventivo,
    offerta, offerte, enquiry, inquiry, rfq, anfrage, demande, consulta, richiesta, aanvraag,
    proposal, cotisation, ordering, order, bestellung, bestellen, commander, commande, pedir,
    pedido, encargar, ordinare, ordine, bestelling, quoting, chiffrer, quotare, enquire
apart: ship to, do you ship, can you ship it to, do you deliver, deliver to, deliver in, livrez
    vous, livrez vous en, liefern sie nach, liefern sie auch, liefern sie in, versenden sie, envian
    a, hacen envios, spedite, spedite anche, leveren jullie, levert u in, send it in, send it back,
    sent back, give it back, fix it for us, you fix it, bend allowance, k factor, cut length,
    developed length, setback, per foot, per metre, per meter, per pound, per kilo, per hour, per
    second, per minute, how heavy, take orders by, order number, order no, my order, our order,
    bend them for us, bend it for us, bend for us, bend some, bend pieces, 3d model, step file, cad
    model, cad file, x ray, weld titanium, weld 6061, weld it, weld the tube, weld after, weld on,
    do i weld, can i weld, can you weld, you weld, welding after, to weld, form hot, formed hot,
    hot bending, hot bend, hot forming, heat the tube, bend conduit, bend rebar, angle iron, flat
    bar, roll bender, ring roller, minimum order, stronger than, how strong, strength of, density
    of, weight of, melting point, colour is, spare ball, spare balls, single balls, replacement
    ball, replacement balls, bend die made, links made, die made, how hard, surface roughness,
    rough surface, where made, made in, come from originally, country of origin, quality
    certificate, mill certificate for, ce marking, ce mark, iso 9001, iso 14001, as9100, on the
    shelf, price list, price break, bulk price, quantity discount, trade discount, payment terms,
    pay by, pay with, credit terms, sales tax, phone number, call you, visit you, come by, stop by,
    drop in, open on, opening times, opening hours, business hours, work for you, job at, who owns,
    how old is your, years in business, how many employees, take on, trade show, thread die, thread
    tap, holes in, cut square, saw cut, square metre, square feet, square inch, square foot, safety
    glasses, sand fill, fill with sand, pack with sand, how do i store, store it, storage of, keep
    from rusting, powder coating, powder coat, paint it, painted, before painting, dispose of, food
    safe, shelf life, hold the price, price hold, valid until, cancel, change my order, change the
    order, delivery address, lost in transit, damaged in transit, arrived damaged, wrong part,
    wrong one, missing from, which machine, what machine, welche maschine, quelle machine, que
    maquina, quale macchina, welke machine, best machine, best bender, which bender, what bender,
    who invented, who makes, who made, how do i align, align, aligned, ausrichten, richte,
    spannbacke aus, length of the mandrel, how long is the mandrel, how long is the ball, longueur
    du mandrin, lange des dorns, longitud del mandril, lunghezza del mandrino, lengte van de doorn,
    per day, 4 stroke, two stroke, hydraulic oil, gearbox oil, grow in length, flow loss, pressure
    drop, weaker than, harden the tube, work hardening, work harden, magnetic, company profile,
    reference list, references, bank details, bank account, advance payment, having agent, agent
    in, invented, job work, invent, biggest tube, largest tube, longest tube, maximum length,
    freeze, with water, app for, spreadsheet, different part number, recycle, who repairs, quien
    repara, wer repariert, qui repare, chi ripara, wie repareert, peso del, poids du, gewicht des,
    gewicht van, peso de, weigh, come hardened, hardness of, how do you hold, reground, re ground,
    retract, retracted, retraction, extraction, is hollow, mandrel hollow, purge, gas for, scrap
    rate, spiral, helix, coil, rotate between, bolt torque, tolerance on, tolerances of, tightest
    tolerance, rockwell, vickers, brinell, ce kennzeichnung, rohs, reach compliant, certificate of
    origin, origin certificate, pallet, drop ship, dropship, consignment, invoice to, bill to,
    billed, invoiced
"""
