"""What is bent, and how it comes out: words and turns of phrase that mean alike.

See ``heard.py`` for how they are read. Written without accents, in small letters.
"""

from __future__ import annotations

ALIKE = """
tube: tubing, tubes, rohr, rohre, rohren, rohres, rohrs, tubo, tubi, tubos, buis, buizen, tubular,
    profilo
bend: bends, bent, bending, biege, biegen, biegt, biegst, gebogen, gebogene, bogen, bogens,
    biegung, kurve, cintrer, cintrage, cintrages, cintre, cintres, cintree, coude, coudes, courbe,
    courbure, curva, curvas, curvar, curvado, curvo, curvamos, curvare, curvatura, curve, curvato,
    curviamo, piega, piegare, piegatura, piegato, doblar, doblarlo, doblez, doblado, doblamos,
    dobla, codo, buigen, buig, bocht, bochten, elbow, elbows, arc, krummung, bender bends, u bend,
    rundbogen
wall: wand, wande, wandstarke, wandstarken, wanddicke, wanddicken, wandung, paroi, parois,
    epaisseur, epaisseurs, pared, paredes, espesor, espesores, parete, pareti, spessore, spessori,
    wanddikte, wanddiktes, walls, thickness, grosor, material thickness, gauge wall, dikte
thin: flimsy, too flimsy, weakest, bendunn, fein, feiner, dunnwandiger, thin as, asottigliato, wall
    so thin, papery, paper thin, tissue, minces, delgadas, sottili, thinner, thinned, thinning,
    thins, dunn, dunner, dunne, dunnwandig, mince, fin, fine wall, fino, fina, delgado, delgada,
    sottile, dun, dunwandig, light, lighter, skinny, thinwall, thinnest, dunnste, schwacher,
    amincit, amincissement, adelgaza, adelgazamiento, assottiglia, assottigliamento, verdunning,
    verjungung, schwachung, thinwalled, feeble, weak, 020 wall
thick: thicker, heavy, heavier, dick, dicker, dicke, dickwandig, epais, epaisse, grueso, gruesa,
    spesso, spessa, dik, dikke, dikker, heavywall, dikwandig, stark, starke
left: verliert man, after bending wall, starting wall, which starting wall, end up with, thickness
    do i end up, dicke bleibt, bleibt ubrig, schwacher, schwachen, weniger wand, lose much, metal
    lost, lost metal, wall go away, eats, eat, eat up, verzehrt, quanto spessore resta, cuanta
    pared, combien d epaisseur, hoeveel wand, left over, remaining wall, residual, restwand,
    restwandstarke, restwanddicke, noch ubrig, reduced, reducing, thinner after, thinned out, after
    forming, reduction of thickness, thickness reduction, perte, perdita, perdida, wandreduktion,
    afname, diminution, disminucion, diminuzione, wall loss, walls out, remaining, remain, remains,
    verbleibt, verbleibende, bleibt, ubrig, bleiben, reste, restante, resta, restera, queda,
    quedara, rimane, rimarra, rimanente, blijft, blijft over, over na, afterwards, after bending,
    after the bend, nach dem biegen, apres cintrage, despues de doblar, despues de curvar, dopo la
    curvatura, na het buigen, finish up, finished wall, lose, loses, loss, lost, perd, pierde,
    perde, verliest, verliere, verlies, verlieren, reduction, reduce, abnahme, shrink, reduces
outside: outer, extrados, aussen, aussenseite, aussenbogen, exterieur, exterior, fuera, esterno,
    esterna, estradosso, buiten, buitenkant, buitenzijde, buitenbocht, back of the bend, outside
    radius, back wall, heel, outer radius, external, por fuera, rucken
inside: inner, intrados, innen, innenseite, innenbogen, interieur, interior, dentro, interno,
    interna, intradosso, binnen, binnenkant, binnenzijde, binnenbocht, throat, internally, bore
    side, dedans, all interno, inside radius, drinnen, internal, belly, intern
middle: center, centre, mitte, rohrmitte, milieu, axe, eje, centro, mezzo, asse, midden, hart,
    center of, hartlijn, mittellinie, centerline, centreline, center line, neutral fibre, fibre
    neutre, neutral axis, neutrale faser, fibra neutra, mezzeria, neutral line, neutral
radius: radii, radiuses, radien, rayon, rayons, radio, radios, raggio, raggi, straal, stralen, clr,
    centerline radius, centreline radius, biegeradius, biegeradien, buigstraal, buigradius, rad,
    krappe
smallest: thinnest wall, lower limit, mindeste, geringste, geringster, niedrigste, hasta que, fino
    a che, jusqu a quel, bis zu welcher, bis zu welchem, tot welke, least wall, allerkleinste,
    kleinstem, en el minimo, minimale straal, most compact, compact, least radius, snuggest,
    smallest possible, no smaller than, absolute minimum, how far down, as far down, minimum, min,
    mindest, minimal, minimale, minimaler, minimalen, minimum radius, minimo, minima, minimi,
    tightest, sharpest, closest, kleinste, kleinster, kleinsten, kleinstmoglich, kleinstmogliche,
    engste, engsten, plus petit, plus serre, le plus petit, mas pequeno, mas cerrado, menor, piu
    piccolo, piu stretto, piu stretta, krapste, least, shortest, lowest, as small as, as tight as,
    mini, mindestens, kurzeste, plus court, mas corto, piu corto, kortste, thinnest, lightest,
    dunnste, dunnsten, plus mince, plus fine, mas fino, mas delgada, mas delgado, piu sottile,
    dunnst, skinniest, limits, limit, grenze, limite, limites, limiti, grens, cut off, cutoff, as
    low as, how low, minimum bending radius, how small, as small as the, how small can
tight: tightly, sharp, eng, enge, enger, serre, serree, cerrado, cerrada, stretto, stretta, krap,
    krappe, small, kleine, kleiner, klein, petit, pequeno, piccolo, tighter, smaller, scharf,
    serrer
straight: length do i have to leave, leave on the end, how close may they be, close may they,
    abstand mussen, far apart, gerade, gerades, geraden, droit, droite, recto, recta, rectos,
    tramo, dritto, rettilineo, tratto, recht, rechte, flat length, leg, legs, schenkel, tail,
    tails, jambe, pata, lato, been, lead in, stub, straight bit, straight length, geradenlange,
    apart, abstand, distance, distancia, distanza, afstand, straights, spacing, room, tangent
    length, parte recta, minimum straight length, straight at the end
between: close together, two bogen, zwei bogen, zwei boegen, deux cintres, dos curvas, due curve,
    twee bochten, two 90s, two bends, zwischen, entre, tra, tussen, next to each other, back to
    back, in a row, compound, after another, one after, nebeneinander, hintereinander, follow, from
    one bend, second bend, next bend, consecutive
wrinkle: little ridges, ridges appear, ridges on the inside, ridges, rimpelen, crinkle every,
    corrugated roof, wirft wellen, wirft es wellen, wellblechartig, rippen, fait des vagues,
    bourrelets interieurs, arrugan, si raggrinza, raggrinzito, raggrinzisce, crespe, rimpeling,
    ribbel, geribbelde, plooivorming, gewellt, accordion like, rumpled, ruffled, runzeln, runzelig,
    geknittert, welle, rides, rugosites, rugoso, ondulato, ondulado, ondeado, golven, golvend,
    geribbeld, gerimpeld, plooit, rimpelt, frunce, fruncido, corrugates, ribbed, ribbing, wave,
    wrinkles, wrinkled, wrinkling, wrinkly, falte, falten, faltig, faltenbildung, wellen, wellig,
    plis, pli, plisse, ondule, ondulations, vagues, arruga, arrugas, arrugado, ondas, grinza,
    grinze, pieghe, onde, plooi, plooien, rimpel, rimpels, ripple, ripples, rippling, rippled,
    waves, wavy, buckle, buckles, buckling, crinkle, crinkles, crinkled, pucker, puckers,
    puckering, washboard, corrugation, corrugations, corrugated, accordion, ridges inside, gathers,
    bunches, bunching, concertina, stauchfalten, wellblech, se arruga, se pliega, faltet, knitter,
    golfjes, crease, creases, creasing, bumpy inside, wrinkel, wrinkels, fronces, fluting, ruffles,
    rippels, ribbels, ondulazioni, ribs, ondulaciones, caterpillar, michelin, michelin man,
    raupenartig, like a slinky, slinky, inside looks like, gaufre
kink: chafe, squashed beer can, beer can, chafa, se chafa, flachgedruckt, in on itself, drinking
    straw, straw, lauft zusammen, dichtfallen, klappt zusammen, klappt ein, einbeult, beult ein,
    schacciato, s affaissent, aplastan, aplastados, piegano, si piega su se stesso, dichtgeknepen,
    knickt ein, knick ein, flattening out, flat spots, flat on the, flatter, collapsed, goes in,
    eingefallene, eingeknickte, loses its shape, loses its round shape, lose its shape, goes out of
    shape, mushed, mashed, kinky, buckled flat, hourglass, se ecrase, affaisse, s affaisse,
    abgeflacht, abflacht, hundido, se hunde, cede, cedendo, ingezakt, deuk, deuken, smashed,
    folded, folded over, caved in, dellt, delle, eingedellt, eingedruckt, se aplana, aplana, s
    ecrase, ammaccato, knickstelle, kinks, kinked, kinking, knickt, knicken, geknickt, einknicken,
    knick, eingeknickt, knikt, knik, knikken, flatten, flattens, flattened, flattening, goes flat,
    going flat, go flat, went flat, come flat, flat, flach, platt, plat, ecrase, ecrasement, s
    aplatit, aplatit, aplati, aplatissement, plie, pince, aplasta, aplastado, aplastamiento, se
    dobla, schiaccia, schiacciato, schiacciamento, schiacciata, appiattisce, appiattito, ammacca,
    collapse, collapses, collapsing, collassa, cave in, caves in, caved, caving, crush, crushes,
    crushed, squash, squashed, squashes, squashing, fold over, folds, folding, fold, fallt ein,
    zusammen, fallt zusammen, einfallt, eingefallen, squished, squish, dent, dents, dented,
    flatspot, crumple, crumples, crumpled, pinch, pinches, pinched, pinching, implode,
    plattgedruckt, ingedeukt, platgedrukt, sucks in, sink in, sinks in, inzakken, zakt in, colapsa,
    pancake, pancakes, pinches shut, pinch shut, shut, getting flattened, closes up
crack: snapped, fractures, fractured, fracturing, se parte, partirse, parta, tears out, back side
    tears, reisst ein, eingerissen, reissen ein, einreissen, anreissen, anriss, haarrisse,
    haarriss, fissurations, microfissures, hairline, gives way, cracks, cracked, cracking, split,
    splits, splitting, reisst, reissen, riss, risse, gerissen, aufreissen, aufreisst, fissure,
    fissures, fissurer, fend, se fend, craque, agrieta, grieta, grietas, raja, rajar, crepa, crepe,
    scheurt, scheuren, scheur, tear, tears, tearing, tore, torn, rip, rips, ripped, rupture,
    ruptures, fracture, barst, barsten, bersten, platzt, platzen, burst, bursts, bursting, cricca,
    cricche, spacca, spaccare, ripping, let go, lets go, letting go, eclate, dechire, fissurent,
    agrietan, crepano, rissig, getting cracked, opens up like a zipper, zipper, strappa, strappi,
    si strappa, shatter, shatters, shattering, shattered, se dechire, opens up on the outside, open
    up on the outside
break: lost two balls, lost a ball, lost one ball, balls off the, keeps losing, perdu une bille,
    casse toujours, immer an derselben stelle, reissen mir, reissen immer, abgerissen, reisst ab,
    snapping off, torn, torn cable, cable torn, torn link, abbrechen, bricht mir, arrachent,
    arrachees, s arrachent, se arrancan, se sueltan, se parte, parten, si staccano, si spezza,
    spezzano, breken af, afbreken, stuk, kapotte, detruit, destroying, destroys, losing balls,
    breaks, broke, broken, breaking, bricht, brechen, gebrochen, abgebrochen, casse, casser,
    cassent, cassees, rompe, rompen, rompere, rompono, roto, rotas, rotto, rotte, breekt, breken,
    gebroken, afgebroken, snap, snapped, snaps, snapping, sheared, shear, shears, came off, fell
    off, come off, comes off, broke off, breaks off, reissen ab, abreissen, kaputt, kapot, failed,
    fails, bust, busted, pop off, popped off, coming off, falls off, let go again, lets go again,
    killing them, killing my mandrels, let go
outround: roundness, ovalisation tolere, amount of ovality, quanto oval, how round, round will it,
    still be round, wie rund, hoe rond, combien ovale, ovalizacion, ovaliza, runder, oval ist, se
    ovala, ovalado, ovalada, ovalaser, ovalizza il, staat rond, rundlauf, out of true, flattening
    tolerance, ovaled, roundness tolerance, rundheit, kreisrund, oval werden, oval wird, oval gets,
    redondez, rotondita, rondheid, circularite, ovalise t il, forma redonda, perfect circle, squash
    out of round, shape of the section, ovality, oval, ovalness, ovalitat, unrund, unrundheit,
    ovalisation, ovalise, ovaliser, ovalidad, ovalizado, ovalizzazione, ovalizza, ovalita,
    ovaliteit, onrond, onrondheid, out of round, out of roundness, out round, egg, egg shaped,
    egging, egg shape, deviation from round, not round, stay round, stays round, still round,
    remain round, remains round, rund bleibt, bleibt rund, rund bleiben, reste rond, redondo, resta
    tondo, rimane tondo, rond blijven, blijft rond, eiformig, elliptical, ellipse, elliptic,
    distortion, distort, distorts, distorted, cross section, circular, circularity, perfectly
    round, keep its round, round enough, lose its round, unrunde, oval shape, egged, ovalised,
    ovalized, ovaal, ovale, as round, some egg, ovality percentage
scratch: grabbing, grabs, grab, welds itself, weld itself, welding itself, leaving grooves,
    grooves, rigatura, rigature, solchi, rigata, strie, rigature interne, rieferung, schrammen,
    gegriffen, festfressen, festgefressen, adheres, adhere, adhesion, aluminium pickup, gripped, se
    raya, rayada, gratte, griffe, galla, gripea, agarra, agarrotado, beschadigingen, krast,
    scratches, scratched, scratching, scratchy, kratzer, zerkratzt, verkratzt, riefen, riefe,
    rayures, rayure, raye, rayes, raya, rayas, rayado, graffi, graffio, graffia, graffiato, rigato,
    righe, krassen, kras, bekrast, score, scores, scored, scoring, score marks, gouge, gouges,
    gouging, galling, gall, galls, galled, frisst, fressen, gefressen, fresser, grippage, grippe,
    gripper, gripado, gripa, grippa, grippaggio, vreet, vreten, vastvreten, invreten, pick up,
    picks up, picking up, pickup, sticks, sticking, klebt, anhaftung, aufschweissung, colle,
    accroche, pega, se pega, incolla, attacca, kleeft, plakt, drag marks, drag lines, marks inside,
    tool marks, builds up, build up, building up, smear, smears, seize, seizes, seizing, stuck,
    grooves inside, tram lines, tramlines, striations, streaks, arana, aranazos, marring, striemen,
    griffures, scuff, scuffs, scuffing, scoremarks, scuffed, cold weld, rayados, estrias, surcos,
    marcas, marques, macken, material transfer, loading up, krasjes, kerven, rifle barrel, rifled,
    rifling, lines inside, scratch marks, scored up, stick to the, sticks to the, sticking to the,
    stuck to the
hump: bult, ausbuchtung, verdickung, buckeling, lip, protubrance, rilievo, sporgenza, resalte,
    rebord, richel, rand, knick nach aussen, pimples, swelled, raised ring, ring on the outside,
    raised, knob, step, hill, camel, high ring, pimple, ridge, blister, ausbeulung, ausbeult,
    hocker, boursouflure, abultamiento, bernoccolo, bobbels, bulging out, swollen, humps, bump,
    bumps, bulge, bulges, bulging, lump, lumps, swelling, swells, swell, buckel, beule, bosse,
    bulto, joroba, protuberancia, gobba, bozza, rigonfiamento, bobbel, high spot, ridge at the end,
    renflement, bourrelet, step at the end, knubbel, erhebung, raised spot, raised area, high
    point, knot at the end, wulst, gonfiore, speed bump, verdikking, hubbel, abombamiento,
    projection, protrusion, si forma una, projecting
springback: opening up after, further do i go, true 45, true 90, uberbiegt, let it off the die, off
    the die, after unloading, unloading, unload, becomes 88, comes down to, drops back, zugeben,
    geben wir zu, uberbogen, nachgeben, nachfedern, restore, ritornano, torna indietro, torna,
    vuelve atras, vuelve, ressort, fait ressort, teruggaat, terugspringen, springt zuruck, springt
    terug, add degrees, bend over, opened up, springs, sprang, springy, lands on, land on, end up
    at, ends up at, come out at, comes out at, comes off at, unbend, unbends, loses degrees, loses
    a few degrees, loses, few degrees short, short of 90, more than 90 degrees, backs off, back off
    after, retour de, relache, s ouvre, se abre, si apre, opent zich, geht auf, offnet sich,
    surangle, degrees extra, degrees over, bend past, further bend, angle extra, spring back,
    springs back, sprang back, springing back, springs open, spring open, opens up, opens, opening
    up, open up, open a bit, opens a bit, relax, relaxes, relaxing, comes back, come back,
    overbend, over bend, overbending, over bending, ruckfederung, ruckfedern, zuruckfedern,
    zuruckfedert, federt zuruck, federt, uberbiegen, ubiegen, retour elastique, surcintrer,
    surcintrage, revient, recuperacion elastica, retorno elastico, recupera, retroceso, ritorno
    elastico, ritorna, ritorno, terugvering, terugveren, veert terug, terugveert, overbuigen,
    veert, further than, past 90, beyond 90, more than 90, undo, unwinds, unwind, muelle,
    sovrapiegare, sprung, retour d elasticite, recovers, recovery, over bent, retour, auffedern,
    auffedert, gibt nach, extra degrees, compensate, how far past do i bend, spring
size: ausserer durchmesser, durchmesser bekommt, dorn durchmesser, across, breit, dick ist der
    dorn, diameter, diameters, od, durchmesser, dornmass, diametre, diametro, diam, dia, dimension,
    dimensions, massen, mass, maat, grosse, medida, misura, taille, how big, how large, wie gross,
    hoe groot, quel diametre, aussendurchmesser, diameter in, dorndurchmesser, sizes, sizing,
    sized, measure across
bore: bores, id, innendurchmesser, bohrung, inside diameter, inner diameter, alesage, diametre
    interieur, diametro interior, diametro interno, binnendiameter, inside dia
inch: inches, zoll, pouce, pouces, pulgada, pulgadas, pollice, pollici, imperial, duim, decimal,
    decimals, thousandths, thou
metric: mm, millimetre, millimetres, millimeter, millimeters, milimetros, milimetro, millimetri,
    millimetro, metrisch, metrico, metrique, centimetres, metrische, metrica, metricas, si units,
    trabajan en, metric system, in metric
pipe: pipes, piping, gasrohr, tuberia, caneria, tubazione, pijp, pijpen, leitungsrohr, steam pipe,
    water pipe, waterpijp
nominal: 2 inch pipe, real diameter, true diameter, true size, echtem durchmesser, wirklicher
    durchmesser, diametre reel, diametro real, diametro reale, werkelijke diameter, norminal, sch
    10, sch 5, sch 80, iron pipe size, ips, nps, nb, dn, nenn, nennweite, nennmass, nominale,
    nominell, nominaal, schedule, sch, sch40, sched, sch80, gas pipe size, named size, trade size
square: 1 5 square, tubi rettangolari, tubi quadri, only round, round tube you do, 50x30, 40x40,
    60x40, 2x2, in square, kantrohr, quadratische, rectangulares, rectangular hollow, tubolare
    quadro, tubolare, cuadrados, rect, rectangular tube, quadratic, flachoval, carree, oblong,
    retangular, 4 sided, rhs tube, sections, vierkantprofil, cuadrada, rechteckprofil, tube rect,
    squares, vierkant, vierkantrohr, vierkantrohre, vierkante, vierkantige, carre, carres,
    cuadrado, quadro, quadrato, quadri, rectangular, rectangle, rectangles, rechteck, rechteckig,
    rechteckrohr, rechteckrohre, rechteckige, rectangulaire, rectangulaires, rettangolare,
    rettangolari, rechthoekig, rechthoekige, koker, kokers, kokerprofiel, box section, box tube,
    boxtube, shs, rhs, hohlprofil, profilrohr, quadratrohr, quadratisch, box tubing, hollow
    section, four sided, scatolato, oval tube, flat oval, d shaped, non round, profile tube,
    squared, boxed
titanium: ti tube, ti tubing, grade 9, grade 2 ti, gr2, gr9, cp2, ti 3al, 3al 2 5v, ti exhaust, ti
    exhausts, titanium alloy, titanrohr, titanrohre, titane t40, titan, titane, titanio, ti, cp ti,
    ti64, grade 2, grade 5, grade two, grade nine, 3al, 6al, titaan
aluminium: aluminum, alu, alluminio, aluminio, ally, alloy tube, alum, alumin
temper: something softer, softer, weicheren, softer temper, plus mou, mas blando, piu morbido,
    zachter, condition, t4 condition, soft condition, annealed condition, estado t6, zustand t6,
    tempers, zustand, etat, temple, stato, hartegrad, t0, o condition, hardness state, tempra,
    annealed state, weich, hart
anneal: weichgluhen, auszugluhen, softening, durchgluhen, weicher machen, heat it first, soften it,
    warm behandeln, annealed, annealing, gegluht, gluhen, gluht, recuire, recuit, recocer,
    recocido, ricuocere, ricotto, ricottura, gloeien, gegloeid, uitgloeien, heat treat, heat
    treated, heat treatment, normalise, normalize, normalized, normalised, normalising, soften,
    softened, warmebehandeln, stress relieve, soft first, ausgluhen, ductile, normalgegluht, weich
    machen, weichgegluht, preheat, ricuocerlo, recuire avant, recocerlo
stretch: dehnungswert, stretchy, how far it stretches, outer fibre, stretches, stretched,
    stretching, elongation, elongations, elongate, elongated, elongates, dehnung, bruchdehnung,
    dehnt, gedehnt, gestreckt, allongement, allonge, etire, etirement, alargamiento, elongacion,
    estira, estiramiento, alarga, allungamento, allunga, rek, rekt, strain, strained, ductile,
    ductility, uitrekken, verlenging, streckung, rekken
seam: weld inside, over the weld, scarfed, scarf, orientation of the weld, die naht zeigen, naht
    zeigen, weld is, weld at the, weld faces, weld goes, weld should, schweissnaht nach, la
    soldadura, la saldatura, la soudure, de las, rotate the tube, raupen, nahtrohr, lasnaad,
    naadloze, geschweisstes, geschweissten, saldata, saldati, soldados, tubo soldado, tube soude,
    gelaste buis, hf welded, hf geschweisst, cordone di saldatura, cordon interior, seam up, weld
    side, welded side, longitudinal weld, schweisung, schweissnaht, langsnaht, laengsnaht, soudure
    longitudinale, joint, raised bead, internal bead, weld flash, burr inside, verschweisst, gesch
    weisst, cordon de soudure, unwelded, bourrelet de soudure, cordon interieur, welds inside, erw
    seam, ew, seams, naht, nahte, schweissnahte, cordon, soudure, soudures, couture, costura,
    cordon de soldadura, soldadura, saldatura, cordone, las, naad, lasnaden, weld, welds, weld
    line, weld seam, weld bead, bead, beads, flash, inside flash, inside bead, schweissraupe,
    raupe, rups, lasrups, erw, welded, geschweisst, geschweisste, soude, soudes, soldado, saldato,
    gelast, gelaste, seamless, nahtlos, naadloos, nahtloses, sans soudure, sin costura, senza
    saldatura, joint line, hfi, ridge inside, ridge down the inside, little ridge, weldline, welded
    tube, weldseam, grat, innenraupe
factor: faktor, facteur, fattore, wandfaktor, wandfactor, wall ratio, wandstarkenfaktor,
    wanddickenfaktor, wallfactor, kennzahl
gauge: gage, gauges, ga, bwg, swg, calibre, awg, g wall, jauge, birmingham, gaug, g tubing
"""
