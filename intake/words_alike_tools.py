"""Tools, trade and rules: words and turns of phrase that mean alike.

See ``heard.py`` for how they are read. Written without accents, in small letters.
"""

from __future__ import annotations

ALIKE = """
mandrel: mandrell, mandrels, mandral, mandrils, mandrin, mandrins, mandril, mandriles, mandrino,
    mandrini, dorn, dorne, dorns, biegedorn, biegedorns, doorn, doornen, doorns, anima, anime,
    manderl, mandrle, mandrill, your tool, plug inside, rohrbiegedorn
ball: segmented, number of balls, balls off, chain of rings, articulated, articulee, articulado,
    articolato, articolata, flexible mandrel, gelenkdorn, kettendorn, linked mandrel, link mandrel,
    flexible, flexibel, gelenkig, kugelkette, scharnier, geleed, snodato, snodata, beads, multi
    ball, single ball, beads on the mandrel, balls, kugel, kugeln, bille, billes, bola, bolas,
    esfera, esferas, sfera, sfere, kogel, kogels, glieder, glied, segment, segments, link, links,
    rotule, rotules, palla, palle, gliedern, kogeltjes, linked, multiball, knuckle, knuckles,
    ballen
plug: rigid mandrel, rigid one, non flexible, starrer dorn, ungeteilter, vollmaterial, one solid,
    solid bar, rounded bar, plain bar, solid rod, plugs, plug type, solid, massiv, fester dorn,
    festem dorn, festdorn, fest, fester, fixe, fijo, macizo, fisso, fissa, vaste, rigid, starrer,
    starr, one piece, plain mandrel, simple mandrel, without balls, ohne kugeln, no balls, sans
    billes, sin bolas, senza sfere, zonder kogels, bullet, stopfen, massive, rigide, plain one,
    solid one, stopfendorn, rigido, massief, straight one, einfacher, ein einfacher, einfacher
    dorn, normal one, ordinary one
wiper: wipper, wiper blade, faltenglatters, wipers die, abstreifer, glattschuh, gratteur, wipers,
    wiper die, wiper dies, faltenglatter, faltengltter, anti plis, antipli, antiplis, lame anti
    plis, antigrinza, antiarrugas, anti arrugas, plooienstrijker, plooistrijker, wischer, tassello
    antigrinza, wipe die, wiperdie, lisseur, alisador, gladstrijker, raschiatore, wiping die,
    faltenglattung, racleur, wiper shoe
pressure die: follower bars, following die, nachlaufschiene, mitlaufschiene, reglettes, contre
    forme, drukbalk, druckbacke, guide bar, back shoe, guia, pressure dies, druckschiene,
    druckstuck, gleitschiene, reglette, porte outil de pression, dado de presion, mordaza de
    presion, matrice di pressione, slitta di pressione, drukschoen, follower, follower bar, follow
    bar, pressure bar, drukstuk, coulisse, slitta, contromatrice, pusher die, drukblok, contre
    matrice, corredera, regua, presse schiene, pressure tool, pressure slide
clamp: bite on, bite, clamp to bite, hold of, clamps, clamping, klemm, spann, klemmung, einspann,
    einspannen, einspannung, serrage, mordaza, morsa, morse, mors, klem, klemmen, spannbacke,
    klemmbacke, spannbacken, grip, grab, grip length, gripping, amarre, klemlengte, klemmlange,
    bloccaggio, spannlange, hold on to, inspannen, einspannlange, something to hold, clamp has
    something, para la mordaza
die: dies, former, formers, matrize, biegerolle, biegeform, galet, matriz, matrice, horma, buigmal,
    stempel, werkzeug, outil, herramienta, utensile, gereedschap, formrolle
bender: bending machine, biegemaschine, cintreuse, curvadora, dobladora, curvatrice, piegatubi,
    buigmachine, machine, maschine, macchina, maquina, machines, benders, tube bender, rotary draw
rod: mandrel bar, pull bar, stay rod, rods, stange, dornstange, zugstange, tige, tirant, barra,
    varilla, asta, stang, doornstang, trekstang, mandrel rod, draw bar, drawbar, pull rod, vastago,
    puller rod, stanga, tirante, mandrelrod
thread: thread size, gewindegrosse, filet, screwed on, screws in, connection thread, female thread,
    male thread, hole in the back, back end, shank, internal thread, innengewinde, threads,
    threaded, gewinde, filetage, filete, rosca, roscas, roscado, filetto, filettatura, filettato,
    draad, schroefdraad, screw, screws, screw on, screwed, unc, unf, npt, m16, m20, m24, vis,
    tapped, aufschrauben, schraubt, visser, enroscar, avvitare, schroeven, pitch
fit: compatible with, are your mandrels compatible, passt auf, attaches to, vale para, vale en, go
    on my, will it go on, passend, geeignet fur meine, auf meine maschine, sur ma machine, en mi
    maquina, sulla mia macchina, op mijn machine, para cualquier, per qualsiasi, pour toutes, fur
    alle maschinen, fit all, universal fit, hook onto, thread onto, go on a, go onto, slot in, mate
    with, mate up, suit a, suit our, work in a, work in our, fits on, montar, montare, monter, se
    monte, monteren, aanpassen, adaptan, adatta, coupled, accommodate, fits, fitting, passt,
    passen, compatible, kompatibel, compatibel, compatibile, convient, sirve para, va bene, past,
    adapte, adapt, attach, attached, attaches, connect, connects, connection, anschluss, raccord,
    attacco, aansluiting, conexion, mount, mounts, mounted, fixation, marry up, match, matches,
    goes on, hook up, interface, work with, work on, works with, works on, befestigt, fixe, se
    fixe, fissa, se fija, adaptor, adapter, montiert, zit vast, bevestigd, encaja, monta, suit my,
    work in my, use with, use it on, run on
position: supposed to stop, supposed to be, where to stop, starting point, tiene que entrar,
    entrar, entra, reinschieben, reinsteht, hineinragen, ragt, how far in, stop short, line up,
    lines up, lined up, einstelle, richtig ein, eingestellt, justiert, stick out, sticks out,
    sticking out, steht er, steht der, adelanto, adelantado, regolo, regolato, uitstekt, instel,
    stel ik, hoe ver, vooruit, weiter vor, weiter nach vorne, zuruck, zurucksetzen, en avant,
    depasse t il, hacia adelante, stand, stands, in front of, behind, come to rest, where on, poke
    out, poking out, poke, project, projects, stand proud, how proud, ahead of, back from, voor de,
    achter, gesetzt, gestellt, placer, mettre, situarse, colocarse, quedar, metto, mettere,
    posiziono, plaats, plaatsen, positionieren, justieren, adjusting, adjusted, adjust the mandrel,
    hinter, davor, avant la, apres la, oltre, mas alla, au dela, positions, positioned,
    positioning, placement, dornstellung, stellung, positionner, posicion, posizione, posizionare,
    positie, setting, settings, set, set up, setup, setting up, einstellen, einstellung, stelle,
    stellen, regler, reglage, regle, ajustar, ajuste, ajusto, colocar, coloco, pongo, regolare,
    regolazione, instellen, afstellen, zetten, forward, advance, advanced, avance, avancer,
    adelanta, adelantar, avanzare, avanzato, vorziehen, vor, vorstehen, hinausstehen, depasser,
    depasse, sobresalir, sporgere, sporge, uitsteken, protrude, ahead, beyond, past, sit, sits,
    locate, located, location, back off, too far, insert depth, depth, tiefe, profondeur,
    profundidad, profondita, diepte, overshoot, extend, extends, extension, forwards, advancement,
    timing, vorlauf, vorstand, uberstand, place, placed, push, reach, voorbij, steht, staan,
    steken, stick, wohin, sticking out enough, deve sporgere, exact position, with respect to
    tangent, how far should it stick
tangent: tangente, tangentenpunkt, tangency, tangent point, tangent line, tangents, punto tangente,
    punto di tangenza, raakpunt, raaklijn, tangentialpunkt, bend line, start of the bend, point of
    bend, tangencia, tangenza, pot
clearance: few thou smaller, thou smaller, thousandths smaller, kleiner dan, kleiner als, kleiner
    als die, mas pequeno que, plus petit que, piu piccolo di, piu piccolo del, hoeveel kleiner, wie
    viel kleiner, smaller than the tube, slide in, slides in, play between, how loose, luft
    zwischen, spiel zwischen, wie viel luft, hoeveel ruimte, ruimte, how tight a fit, close fit,
    undercut, freedom, slack, luftspalt, wiggle room, tolerance between, allowance, air,
    clearances, gap, gaps, play, spiel, dornspiel, luft, jeu, holgura, juego, gioco, speling,
    loose, loosely, loosen, sloppy, slop, snug, slip fit, undersize, undersized, under size,
    smaller than the bore, smaller than the id, thou under, thousandths under, under the id, under
    the bore, smaller than, toleranz zum, spielraum, tight fit, speelruimte, snug is snug, how
    snug, clearance to be kept
life: done for, mileage, mandrels a year, per year, a year does, hay que cambiar, worn beyond, how
    do i know when, cuantas curvas hay, ausgetauscht, austauschen, ersetzen, changer le mandrin,
    sostituire il, vervang ik, vervangen worden, gives up, give out, gives out, verschlissen,
    abgenutzt, verschleiss, abnutzung, hinuber, use up, gastado, gasta, gastan, consumato, consuma,
    consumano, versleten, afgeschreven, use s, s use, service intervals, how many feet, before you
    bin it, end of its life, end of life, hors d usage, per mandrel, normally last, hold out, good
    for, before it is scrap, before its scrap, give up, knackered, service interval, many pieces,
    useful life, rebuild interval, lasted, lasts us, durability, halt er, halt so, halt ein, gaat
    een, gaan ze, lifespan, life span, service life, wear out, wears out, wear, wears, worn, worn
    out, wearing, lebensdauer, standzeit, haltbarkeit, verschleisst, duree de vie, usure, use t il,
    vida util, dura, duran, desgasta, desgaste, aguanta, durata, durare, durano, vita utile, usura,
    regge, levensduur, slijtage, slijt, gaat mee, meegaan, last, lasts, lasting, halt, halten,
    haltbar, longevity, durable, expectancy, hold up, holds up, survive, how many bends, how many
    parts, how many cycles, how many pieces, how many hits, tient, tiennent, good for how, endure,
    replaced, replacing, replacement, used up, bogen halt, expire, lifetime, tool life, standtijd,
    wie viele bogen, wieviele bogen, combien de cintrages, cuantas curvas, cuantos dobleces, quante
    curve, hoeveel bochten, wear rate, going to last, duree, cuantos tubos, combien de coudes,
    combien de pieces, mee, toast, op, na hoeveel bochten, expected life, run it all day, burned
    out, burnt out, schluss
lubricant: bar soap, einolen, olen, einfetten, eingefettet, geolt, engraso, engrasar, engrase,
    lubrico, aceitar, aceito, oliare, ungere, ungo, grassa, inoliede, insmeren, smeren we,
    lubrifie, graisse t on, huiler, huile de, greasy, wet the, lubricating oil, schmierfett,
    kettenol, schmierol, neatsfoot, emulsion, neat oil, cutting fluid, drawing oil, bending oil,
    bending fluid, chain oil, engine oil, motor oil, motorol, ziehfett, biegefett, rapsol, huile de
    coupe, aceite de corte, olio da taglio, snijolie, cooking oil, ptfe, silicone, atf, gearbox
    oil, hydraulic oil, lanolin, bar of soap, washing up liquid, lubricated, lube, lubes, lubing,
    lubricants, lubricate, lubricating, lubrication, lubricacion, lubrica, oil, oils, oiled,
    oiling, ol, oel, huile, aceite, olio, olie, grease, greased, greasing, fett, fetten, graisse,
    graisser, grasa, grasso, ingrassare, vet, schmiermittel, schmierstoff, schmieren, schmiere,
    schmierung, geschmiert, lubrifiant, lubrifier, lubrification, lubricante, lubricar,
    lubrificante, lubrificare, lubrificazione, smeermiddel, smeren, smeer, gesmeerd, smering, soap,
    soapy, wax, paste, seife, savon, jabon, sapone, zeep, wd, wd40, tallow, coolant, slippery,
    slippy, drawing compound, dish soap, gel, squirt, spray, lard, vaseline, graphite, schmiert,
    lubricado, biegeol, ziehol, smeert, lubed, slather, sliding, normales motorol, keep it sliding,
    grade of lubricant, schmiert man, smear on
bronze: al bronze, alubronze, aluminiumbronze, bronzen dorn, aluminum bronze, alum bronze, bronze d
    aluminium, bronce de aluminio, bronzo di alluminio, bronce, bronzo, brons, ampco, bronzen,
    bronzedorn, aluminium bronze, alu bronze, material of construction
chrome: chromed, chrom, cromo, chroom, verchromt, hartverchromt, cromado, cromato, verchroomd,
    chrome plated, hard chrome, hardened steel, tool steel, chromiert, chrom plated, chromium,
    plated, coated, coating, beschichtet, beschichtung, revetement, recubrimiento, rivestimento,
    coatings, hardchrome
material: made out of, makeup, what are they made of, stahl oder, acier ou, acero o, acciaio o,
    staal of, materials, made of, made from, make them from, make it from, werkstoff, werkstoffe,
    matiere, matiere de, materiale, materiau, materiel, materiaal, metal, metals, stuff, aus was,
    surface, oberflache, surface finish, en quoi, de que esta hecho, di cosa, fatto di, fatti di,
    gemaakt van, waarvan gemaakt, hechos, make the mandrel of, make your mandrels of, metall,
    metaal, matriau, grade of steel, alloy is, material of construction, finish, what finish, which
    finish, de bronce o de acero
type: types, kind, kinds, sort, sorts, style, styles, arten, art, typ, typen, sorten, sorte, tipo,
    tipos, tipi, types de, soort, soorten, version, versions, variants, variety, varieties, range
    of mandrels, modeles, modelos, modelli, design, designs, construction, bauart, bauarten,
    ausfuhrung, uitvoering, uitvoeringen
price: rough idea of cost, idea of cost, idea of price, kame, was kame, kommt mich, a cuanto sale,
    cuanto sale, quanto vengono, prijskaartje, what kind of outlay, outlay, how much is mandrel,
    how much is a mandrel, how much for a, how much for one, how much for the mandrel, how much for
    mandrel, how much would a mandrel, how much is one, how much would one, how much are they, how
    much are these, how much do you charge, do you charge, how much does it cost, how much does
    one, how much do they, how much each, how much will it be, how much would it be, how much would
    that be, how much is it, how much would it, going rate, how much do you want, how much to make,
    how much to build, charge for a, charge for the, ce coute combien, c est combien, ca coute
    combien, quanto viene, cuanto vale, cuanto cuesta, que vale, what would i pay, what do i pay,
    what will it cost, precio de, a cuanto, a quanto, rough cost, ball park, ball park figure,
    price tag, was verlangen, was nehmen sie, rate card, investment, price wise, cost wise, costs
    me, cost me, prices, pricing, priced, cost, costs, costing, preis, preise, preislich, kosten,
    kostet, koste, prix, cout, coute, couter, tarif, precio, precios, cuesta, costaria, sale por,
    vale, prezzo, prezzi, costa, costo, costerebbe, viene, prijs, prijzen, kost, ballpark, how much
    money, what sort of money, much money, dollars, bucks, euros, damage, set me back, set us back,
    run me, run us, how pricey, afford, budget, paying, pay for a, pay for one, spend, combien ca,
    figure on paying, looking at for, rough idea of price, rough number, preisrahmen,
    preisvorstellung, kostenpunkt, prijsindicatie, indication de prix, richtprijs, richtpreis,
    price and time wise, wat gaat dat kosten, inform cost, cost price
leadtime: musste ich warten, muss ich warten, turn one around, turn it around, turn that around,
    wie lange musste ich, warten, how quick can u, how quick can you, how fast can you, attendre,
    esperar, aspettare, wachten, when can you have, when can you deliver, when can you ship, when
    could you ship, when could you deliver, when would it be ready, when will it be ready, when
    would it be done, when can i have it, when could i have it, when could i have one, when can i
    get, when would i get, when would i have, wann konnen sie, wann ist er, wann ist der, wann
    ware, wann bekomme, wann kann ich, quand pouvez vous, quand est ce que, cuando pueden, cuando
    podrian, cuando estaria, quando potete, quando sarebbe, wanneer kunt u, wanneer kunnen jullie,
    wanneer kan, on my bench, at my door, out the door, how many weeks out, lead times, time to
    make, time frame, timeframe, time scale, timescale, timeline, how long must i how long would i
    how long do i how long do we when can we expect, when should i expect, when can i expect, eta,
    bis ab wann lieferbar, in welcher zeit, vorlaufzeit, lieferfrist, pour dans quel delai, sous
    combien, en cuanto tiempo, para in quanto tempo, entro per termijn, binnen welke, hoeveel
    quante cuantas combien de wie viele shipping out, have it here, get it here, how quickly, lead
    time, leadtimes, turnaround, turn around, turnround, delivery, deliver, delivered, delivery
    time, lieferzeit, lieferzeiten, liefern, lieferung, lieferbar, liefertermin, delai, delais,
    livrer, livrez, livraison, plazo, plazos, entrega, entregar, entregan, tardan, tarda, tardaria,
    consegna, consegnare, consegnate, tempi di consegna, levertijd, leveren, levering, geleverd,
    how soon, how quick, how fast, ship, how many how many days, backlog, weeks out, days out, in
    my hands, pronto, dispatch, despatch, get here, by friday, how long to make, how long to get,
    how long does it take, how long would it take, how long will it take, how long do you take, how
    long until, how long till, how long before i, wie schnell, hoe snel, dauert, duurt, combien de
    temps pour, how long is the booked out, fastest, how long from order, delivery period, how far
    behind, far behind, delivery i mean, time wise, hoe lang duurt, duurt het, period of delivery,
    delivery term
measure: inner edge, how many places, verniers, prendo la misura, mic a, miked, measure up, se
    mide, misurato, mesure t on, gemeten, gemessen wird, how is it measured, wo wird gemessen, how
    s that done, how is that done, getting the radius, get its radius, want its radius, ausmisst,
    nachmesse, mesure au, prendo le misure, uitmeten, ultrasonic, getting at, get at, reading,
    readings, measuring up, size up, abmessen, ausmessen, aufmessen, opmeten, nameten, relever,
    verificar, rilevare, get a figure, take off, come up with, comes out, tell from, measured,
    measuring, measurement, measures, messen, misst, messe, gemessen, nachmessen, mesurer, mesure,
    mesurez, medir, mido, mide, medirlo, misurare, misuro, misura il, meten, meet, calipers,
    caliper, micrometer, schieblehre, messschieber, pied a coulisse, calibro, calibre pie de rey,
    pie de rey, schuifmaat, vernier, tape measure, gauge it, mic, mics, mike, determine, find out,
    work out, figure out, ermitteln, bestimmen, feststellen, determiner, determinar, determinare,
    bepalen, establish, template, get the radius, reverse engineer, taken, take it, tell what,
    prufen, verify, accurate, accurately, genau messen, nehmen mass, trace, herausfinden, connaitre
    le rayon, find that out, take tube dimensions, take the dimensions, dimensions correctly, find
    wall thickness, find the wall, easiest way to find, averiguar, scoprire, achterhalen,
    herausbekommen
calculate: by which i can get, get from, work back, rechnen, errechnet, errechnen, calculated,
    uitrekenen, turn a, conversion, umrechnen, calculation, calculates, compute, computed,
    berechnen, berechnet, berechnung, rechnet, ausrechnen, calcule, calculer, calcul, calcula,
    calcular, calculan, calcolare, calcola, calcolo, berekenen, bereken, berekend, formula,
    formule, formel, sum, sums, arithmetic, math, maths, work out, worked out, works out, work it
    out, figure, figured, figure it, arrive at, derive, get to, come up with, got to, equation,
    comes from, ratio, verhaltnis, rapport, relacion, rapporto, verhouding, divide, divided, turn
    into, convert, get that number, how do you get, determine, decide, determined, reken ik uit,
    reken uit, reken
legal: to code, bends to code, inspector asks, by fia, durch den tuv, nhra tech, druckgerate,
    druckgeraterichtlinie, in writing, permit, legit, kosher, requirements, requisitos, requisiti,
    exigences, eisen, anforderungen, homologa, sportgesetz, dmsb, kba, reglementaire, ce, road
    worthy, roadworthy, wettbewerb, autorise, autorises, autorizado, autorizzato, nach norm,
    regelconform, scrutineers, scrutinising, tech, inspected, inspectors, mot, cams, msa, msuk,
    dot, rated, rating, ratings, compliance, audit, specs of, sign off, signed off, stamp of
    approval, certs, cert, allowed in, permitted in, allowed under, sanctioning, zertifikate,
    prufung, prufer, bescheinigen, bescheinigung, tuv abnahme, abgenommen, passes tech, regel,
    regels, voorschriften, voldoet, voldoen, cumplen, cumple, cumplir, rispetta, rispettano,
    respecte, respectent, respecter, eingetragen, en 13480, b31, en 12952, controle technique, itv,
    revisione, homologuees, legally, erlaubt, legale, lawful, street legal, road legal, certified,
    certify, certifies, certificate, certificates, certification, certificado, certificato,
    certifie, zertifikat, zertifiziert, zertifizierung, zulassung, zugelassen, homologue,
    homologation, homologado, homologacion, omologato, omologazione, goedgekeurd, keuring,
    gecertificeerd, homologiert, comply, complies, compliant, conform, conforms, conforme, konform,
    conformes, meets, meet the, meet nhra, meet fia, pass, passes, approved, approval, approve,
    approves, accepted by, scrutineer, scrutineering, inspection, inspector, tech inspection, code,
    codes, norm, normen, norme, norma, normas, normativa, vorschrift, vorschriften, reglement,
    reglamento, regolamento, standard, standards, rules, rulebook, rule book, regulations, fia,
    nhra, sfi, scca, asme, tuv, apk, bauartgenehmigung, faa, ped, class, classification society,
    lloyds, dnv, iso, din, astm, api, insurance, liable, liability, guarantee, guaranteed, warrant,
    sanction, sanctioned, wabtec, mfg code, garantie, regelwerk, abnahme, pressure equipment, valt
    onder, confirms to, conforms to, conform to, get me through tech, through tech, volgens de
    norm, gonna pass, through inspection
cage: rolling cage, competition car, motor sport, rally, rally car, drift car, hydraulic lines,
    fuel lines, hydraulikleitung, kraftstoffleitung, power piping, boiler tube, boiler tubes, steam
    line, steam pipe, pressure vessel, heat exchanger, aerospace, engine mount, airplane, plane,
    racecar, rennsport, nascar, dragster, roll cage, rollcage, roll bar, rollbar, kafig,
    uberrollkafig, uberrollbugel, arceau, jaula, rolkooi, rollcages, hoop, chassis, aircraft,
    flugzeug, avion, aeronautico, vliegtuig, airframe, brake line, brake lines, bremsleitung, fuel
    line, hydraulic line, steam, dampf, vapeur, vapor, vapore, stoom, boiler, kessel, pressure
    pipe, pressure piping, druckleitung, druckleitungen, gas line, high pressure, druck, sous
    pression, a presion, in pressione, race car, racing, motorsport, stoomleiding, gasleitung,
    gasleiding, dampfleitung, conduite de vapeur, linea vapore, linea de vapor
"""
