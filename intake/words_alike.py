"""Words and turns of phrase that mean alike in a question, in the languages of the trade.

For the 'must' lines of approved answers (``must.py``): what stands behind a colon is read as the
word before it, so that a line written in English also meets German, French, Spanish, Italian and
Dutch questions, and 'get by without' what 'skip' meets. Written without accents, in small letters;
several words are met in a row. Single words of ``words_terms.py`` hold here too.
"""

from __future__ import annotations

ALIKE = """
what: wat s, what re, wats, wat is, was sind, was genau, que tipo, quelle sorte, que clase, welk soort, welche art, tell me which, tell us which, what type of,
    was ist, qu est ce que, qu est ce qu, qu est ce, c est quoi, que es, que son, cos e, che cos e,
    que significan, wat, wot, wats, whats, what s, which, welk, cosa, quali, cual, cuales, quoi, quel,
    quelle, quels, quelles, welche, welcher, welches, welchen, welchem, qual, quale, che tipo,
    qual e, was fur, wat voor
mean: as in what, in what sense, si intende, intende per, s entend par, gemeint, meint, heisst das, bedoelen, bedoeld, bedoelt, wat houdt, was sagt, que representa, representa, stands, signifies, signify, begriff, term, terme, termino, termine, definizione, definicion, definitie, what is meant, what exactly is, ce que c est,
    meaning, stand for, stands for, stand, stands, quiere decir, veut dire, vuol dire, versteht,
    verstehen, bedeuten, signification, significado, significato, betekenis, bedeutung, definition of,
    defined, refer to, refers to, denote, describe, interpret, entender, intend, s entend, s intende,
    se entiende, steht, staat voor, represent, represents, sinn, translate, in plain english
explain: no idea, have no idea, what on earth, enlighten me, never know what,
    explain the term, what this is, erklaren, erlautern, put simply, make sense of, get my head around, verstehe nicht, worry, should i worry, care about,
    put into words, walk me through, in simple words, in plain words, layman, help me understand, never heard of, not familiar, unfamiliar, first time i hear, first time i see, nobody can tell, no one can tell, can tell me what, dumb question, stupid question, qu est ce que ca, was soll das,
    explanation, erklaren, erklarung, expliquer, expliquez, explicar, explica, expliquen, spiegare,
    spiegate, spiega, uitleggen, uitleg, clarify, clear up, enlighten, tell me about, new to me,
    never heard, never came across, what the heck, what the hell, no clue, scratching my head
how much: combien, cuanto, cuanta, quanto, quanta, hoeveel, wieviel, wie viel, wie stark, what amount,
    by what amount, what sort of amount, de combien, how big a, how large a
how many: combien, cuantos, hoeveel, wieviel, wie viel, quanti, quantas, wie viele, wieviele, cuantos, cuantas, quanti, quante, what number of, number of, anzahl,
    nombre de, numero de, numero di, aantal, count, zahl
how long: wie lang, wie lange, hoe lang, hoelang, cuanto tiempo, quanto tempo, combien de temps,
    what length, que longueur, quelle longueur, que longitud, que largo, che lunghezza, quanto lungo,
    quanto lunga, length of, how short, cuanto mide de largo, lange der, longueur
how often: wie oft, combien de fois, cada cuanto, ogni quanto, hoe vaak, how frequently
how far: wie weit, hoe ver, how deep, wie tief, hoe diep, how far forward, jusqu ou, hasta donde,
    fino a dove, how far in, how far out
how thick: wie dick, hoe dik, quelle epaisseur, que espesor, que grosor, che spessore, what thickness,
    how heavy a wall
how thin: wie dunn, hoe dun, how light, how skinny, how fine
how tight: smallest centre line, smallest center line, se puede cerrar, hasta donde se puede, cerrar el radio, how tight will, bend tighter, tighter bends, bends tighter,
    as tight as, tight as i dare, how tight a radius, wie klein, welcher radius, welchen radius, quel rayon, que radio, che raggio, welke straal, what radius, which radius, how far down, wie weit runter, hoe klein,
    wie eng, hoe krap, hoe strak, how small a radius, how sharp, how small a bend,
    how close a radius, how short a radius, how tightly, quanto stretto, how little radius, how low
why: wots up, what gives, what have i set wrong, set wrong, am i doing to, are we doing to,
    what is off, what s off, whats off, up with, lauft da schief, schief, lauft falsch, wrong with, woran kann, wie kommt das, wie kommt es, cosa c e che non va, que falla, qu est ce qui ne va pas, wat gaat er mis, mis, what explains, behind this, hoe kan het, was kann das sein,
    why s, why is it, what happened, what causes it, what happens, what did i do wrong, what have i done wrong, wo kommt, wo kommen, woher, woran, is going on, going on, weswegen, aus welchem grund, was mache ich falsch, was machen wir falsch, falsch gemacht, qu est ce qui cause, que estoy haciendo mal, sto sbagliando, wat doe ik fout, cosa provoca, que provoca, cosa causa, provoque, pour quelle raison, por que razon, per quale motivo, what could be the, what might be,
    warum, wieso, weshalb, pourquoi, por que, porque, perche, waarom, how come, woher kommt,
    woher kommen, woran liegt, d ou vient, d ou viennent, a que se debe, come mai, da cosa dipende,
    da che dipende, waardoor, hoe komt, wodurch, what causes, what is causing, causing, cause, causes,
    caused, ursache, causa, cause de, oorzaak, reason, grund, raison, razon, motivo, reden,
    what makes, what s making, what is making, due to what, a cosa e dovuto, doing wrong, doin wrong,
    what gives, what s going on, whats going on, where does it come from, where do they come from,
    de donde, culprit, explains, responsible for, what is wrong, whats wrong, what s wrong, falsch,
    blame, to blame, root cause, went wrong, go wrong, goes wrong, que hacemos mal, sbagliamo,
    sbagliando, where s that coming from, coming from, come from, comes from, source of, behind it
stop: wots up, what s up with, what gives, wat doe ik eraan, eraan, was mache ich, was machen wir dagegen, comment l eviter, se evita, come si evita, que hago para, how do i prevent, what can be done, can be done,
    where do we look, where do i look, get around, get round, sort it, sort this, any cure, how do i sort, cures, rimediare, risolvere, resolver, arreglar, solucionar, corregir, corriger, resoudre, regler le probleme, oplossen, losen, in den griff, abhilfe, abhelfen, what helps, do anything about, do something about, put right, straighten out, correct it, look into,
    how do i get, what should i do, what can i do, what do i do, what do we do, what can be done, where do i start, where do we start, where should i look, how can i get, que puedo hacer, qu est ce que je peux faire, cosa posso fare, wat kan ik doen, was kann ich tun, was kann man tun, was hilft, comment faire, come posso, como puedo, hoe kan ik, stay away, loswerden, wegbekommen, vorbeugen, se debarrasser, remedio, rimedio, adjust, look at first,
    prevent, avoid, cure, remedy, get rid of, rid of, keep from, keep it from, vermeiden, verhindern,
    vermeide, vermeidet, verhindere, beheben, abstellen, gegen, eviter, evite, empecher, evitar,
    evito, evitarlo, quitar, eliminar, impedir, evitare, evita, eliminare, impedire, voorkomen,
    voorkom, verhelpen, tegengaan, supprimer, eliminate, combat, fight, sort out, do about,
    to do about, fix, fixed, fixes, solve, solution, losung, solucion, soluzione, oplossing, reduce,
    help, hilft, helfen, helpt, trick, clean up, clear up, against, minimise, minimize, keep the tube,
    keep it, keep them, troubleshoot, stamp out, banish, kriege ich weg, weg, go away, less, weniger,
    tun, machen, unternehmen, dagegen, any idea, any ideas, ideas, tips, tip, advice, suggestion,
    suggestions, hints, que hago, que hacemos, que faire, cosa fare, was tun, wat te doen, suggest
necessary: needed, required, requisite, notig, noetig, erforderlich, notwendig, nodig, necesario, necesaria, necessaire,
    necessario, necessaria, vereist, noodzakelijk, mandatory, compulsory, obligatory, obligatoire, obligatorio, indispensable,
    indispensabile, imprescindible, unnecessary, overkill, essential, called for, worth having, worth it, neccesary, neccessary,
    necesary, benotigt, verplicht, advisable, unbedingt, pour de bon, a must, justified, warranted, superfluous, uberflussig
need: worth fitting, worth buying, worth using, worth the money, worth the, lohnt, lohnt sich, vale la pena, vaut la peine, conviene mettere, loont, is it worth, plain necessary, hard necessary, save ourselves, spare ourselves, do any good, add anything, gain anything, bring anything, etwas bringt, bringt das was, brauchen wir, brauche ich, tocca,
    want one, do you want, required at all, vonnoten, hebben we nodig, would i want, am i going to need, go for, obligated, insist, essential, any need, no way around,
    have to, has to, must i, must we, do i want, do we want, required, compulsory, mandatory,
    essential, obligatory, obligatoire, obligatorio, verplicht, indispensable, imprescindible,
    indispensabile, necessary, necessity, notig, noetig, benotigt, notwendig, erforderlich, zwingend,
    unbedingt, brauch, brauchen, brauche, braucht, braucht s, bedarf, necessaire, il faut, faut il,
    faudrait, faudra, faut, besoin, hace falta, hacen falta, necesita, necesitan, necesitamos, 
     occorre, occorrono, serve, servono, bisogna, bisogno, ci vuole, noodzakelijk, vereist,
    nodig, neccessary, neccesary, call for, calls for, worth having, worth it, worth, point in,
    point of having, any point, benefit from, overkill, must have, gotta have, needed, crucial,
    called for, justify, justified, essential, warrant, have got to, got to have, unavoidable,
    mandatory, musn t, ought to have, should i have, should we have, vonnoten
skip: leave off, left off, go without, save ourselves the, save myself the, sparen wir uns, sparen, can we drop, not use, not using, never used, nie benutzt, weggelassen, lasse ich weg, dejar fuera, dispensarnos, economiser, risparmiare, besparen, gaan zonder, ohne auskommen, ohne geht, auch ohne, support of any kind, with nothing,
    get away w o, bypass, do away with, spare myself, leave away, dispense with, instead of a mandrel, without any, unsupported, naked, ohne innendorn, support inside, internal support, nix drin,
    without, w o, wo a, do without, get by without, get away without, get away with no, leave out,
    leave it out, left out, left it out, leave off, leaving out, leave the, omit, ditch, forgo, drop the,
    manage without, ohne, sans, sin, senza, zonder, auskommen, weglassen, verzichten, se passer,
    prescindir, fare a meno, weglaten, has no, have no, no mandrel, no wiper, empty, hollow, leer,
    vide, vacio, vuoto, leeg, nothing inside, unsupported, no internal support, without anything inside,
    nothing in it, free bend, freehand, bare, kein, keine, keinen, pas de, geen, a vuoto, a vide,
    en vacio, nothing inside it, without anything in it, save myself, nada dentro, rien dedans,
    niente dentro, niets erin, skipping
can: survived, hold out for, hin, kommen wir, auskommen wir, get me by, get by with, do this job, do the job, tolere, tolerar, comfortable, feel comfortable, be happy with, acceptable amount, darf, durfen, zulassig, admissible, zulassige, gotchas, any gotchas,
    any hope, hope of, chance of, any chance, bendable, biegbar, kaltbiegen, machbar, realisierbar, asking too much, too much to ask, nuts, out of the question, pull off, pull it off, get it to, is there a way, hinbekommen, hinkriegen, schaffbar, realisable, envisageable, viable, conseguir, fattibile, lukt, lukken, doenlijk, kaltumformbar, within reach, ask too much, up to, managed, capable,
    could, kann, kannst, konnen, konnt, konnte, konnten, peut, peux, pouvez, pourrait, on peut,
    puede, pueden, puedo, podemos, podria, se puede, puo, posso, possiamo, potete, si puo, si possono,
    kan, kunnen, kunt, kun, possible, moglich, geht, posible, possibile, mogelijk, gaat, feasible,
    doable, machbar, faisable, factible, fattibile, haalbaar, able to, ok, okay, alright, all right,
    fine, allowed, acceptable, erlaubt, permis, permitido, permesso, toegestaan, advisable, work,
    works, funktioniert, klappt, marche, funciona, funziona, werkt, lasst, lassen, lässt, manage,
    safe, safely, good enough, enough, sufficient, suffice, reicht, ausreichend, suffit, suffisant,
    suficiente, basta, sufficiente, voldoende, genoeg, any problem, a problem, an issue, problem, issue,
    trouble, wise, sensible, risky, bad idea, good idea, a mistake, hurt,  crazy, achievable,
    realistic, realistically, achieve,  get away with, take, cope, handle, survive, survives,
    attempt, good, fit for, tolerate
should: soll, sollte, sollen, sollten, devrait, doit, dois, debe, deberia, deve, dovrei, dovrebbe,
    moet, moeten, muss, mussen, musste,  zou, would you, recommend, recommended, empfehlen,
    empfehlt, empfohlen, conseillez, conseiller, recommandez, recomiendan, recomienda, aconsejan,
    consigliate, consiglia, raccomandate, raadt u, raden jullie, aanraden, adviseert, adviseren,
    advise, advised, prefer, preferred, prefers, suggest, suggested, better, best, besser, beste,
    besten, mieux, meilleur, meilleure, mejor, meglio, migliore, beter, ideal, optimal, suitable,
    suits, suit, geeignet, adapte, adecuado, adatto, geschikt, correct, right one,  ought,
    wise choice,  take for, go for, nehmen, nimmt, nehme, go with,  pick, choose, choice,
    choisir, elegir, scegliere, kiezen, wahlen, ratsam, sinnvoll, conviene, vaut, favour, favor, 
two: zwei, deux, dos, due, twee, both, beide, beiden, ambos, entrambi, entrambe, les deux, los dos,
    several, mehrere, plusieurs, varios, varias, diversi, diverse, meerdere, multiple, three, drei,
    trois, tres, tre, drie, couple of, pair of,        
one: once the, once,
    one mandrel enough, keep the mandrel, ein dorn,
    single, ein und derselbe, ein und denselben, un seul, une seule, un solo, una sola, uno solo, einen einzigen, einziger,
    einzige, een enkele, just one, only one, unico, unica, un unico, seul, seule, solo uno, ein einziger
other: go from, from 2 mm to, to 1 5, two dies, get two,
    weitere, andere radien, anderen radius, auch auf dem, auch auf den, auf dem anderen, another one, swap over, three, drei, trois, tres, tre, drie,
    going from, moving to, move to, later, next job, too small, alternative, umsteigen, wechseln, wechsel, gewechselt, changer, change de, cambiar, cambio, cambiare, veranderen, wisselen,
    another, ander, andere, anderen, anderer, anderes, anders, autre, autres, otro, otra, otros,
    otras, altro, altra, altri, altre, andere, different, differing, verschiedene, verschiedenen,
    unterschiedliche, differents, differentes, distintos, distintas, diferentes, diversi, diverse,
    verschillende, verscheidene,
    second, zweiten, second one, next size, change, changes, changed, switch, swap, go between,
    interchangeable, universal, change over, varies, vary
also: as well, too, auch, aussi, tambien, anche, ook, egalement, equally, besides, additionally
same: match, matches, that match, same as, gleiche dorn, selbe, selben, vom gleichen, also for, do for, use it for, use it on,
    same one, still use, also usable, usable, works for both, do both, cover both, cover, both with, off the same, off one, off a, reused, work for,
    denselben, demselben, derselbe, dieselbe, gleichen, gleiche, meme, mismo, misma, stesso, stessa,
    dezelfde, hetzelfde, zelfde, identical, alike, interchange, equal, equals, equivalent, gleich,
    shared, share, common, reuse, re use, egal, igual, uguale, gelijk, one and the same
difference: same thing, confusing, what makes, matter, makes a difference,
    unterschied, unterschiede, unterscheiden, differ, differs, differently, diff, versus, vs,
    compared, compare, difference, diferencia, diferencias, differenza, differenze, verschil,
    verschillen, distinguish, distinction, tell apart, apart, se distingue, confuse, confused,
    gegenuber, rispetto
tube: tubing, tubes, rohr, rohre, rohren, rohres, rohrs, tubo, tubi, tubos, buis, buizen, tubular, profilo
bend: bends, bent, bending, biege, biegen, biegt, biegst, gebogen, gebogene, bogen, bogens, biegung,
    kurve, cintrer, cintrage, cintrages, cintre, cintres, cintree, coude, coudes, courbe, courbure,
    curva, curvas, curvar, curvado, curvo, curvamos, curvare, curvatura, curve, curvato, curviamo,
    piega, piegare, piegatura, piegato, doblar, doblarlo, doblez, doblado, doblamos, dobla, codo,
    buigen, buig, gebogen, bocht, bochten, elbow, elbows, arc, krummung, bender bends, u bend, rundbogen
bender: bending machine, biegemaschine, cintreuse, curvadora, dobladora, curvatrice, piegatubi,
    buigmachine, machine, maschine, macchina, maquina, machines, benders, tube bender, rotary draw
die: dies, former, formers, matrize, biegerolle, biegeform,   galet, matriz, matrice,
    horma,  buigmal, stempel, werkzeug, outil, herramienta, utensile, gereedschap, formrolle
wall: wand, wande, wandstarke, wandstarken, wanddicke, wanddicken, wandung, paroi, parois, epaisseur,
    epaisseurs, pared, paredes, espesor, espesores, parete, pareti, spessore, spessori, wanddikte,
    wanddiktes, walls, thickness, grosor, material thickness, gauge wall, dikte
thin: flimsy, too flimsy, weakest,
    bendunn, fein, feiner, dunnwandiger, thin as, asottigliato, wall so thin, papery, paper thin, tissue, minces, delgadas, sottili,
    thinner, thinned, thinning, thins, dunn, dunner, dunne, dunnwandig, mince, minces, fin, fine wall,
    fino, fina, delgado, delgada, sottile, sottili, dun, dunwandig, light, lighter, skinny, flimsy,
    thinwall, thinnest, dunnste, schwacher, amincit, amincissement, adelgaza, adelgazamiento,
    assottiglia, assottigliamento, verdunning, verjungung, schwachung, thinwalled, feeble, weak
thick: thicker, heavy, heavier, dick, dicker, dicke, dickwandig, epais, epaisse, grueso, gruesa, spesso,
    spessa, dik, dikke, dikker, heavywall, dikwandig, stark, starke
left: verliert man, after bending wall, starting wall, which starting wall,
    end up with, thickness do i end up, dicke bleibt, bleibt ubrig, schwacher, schwachen, weniger wand, lose much, metal lost, lost metal, wall go away, eats, eat, eat up, verzehrt, quanto spessore resta, cuanta pared, combien d epaisseur, hoeveel wand,
    left over, remaining wall, residual, restwand, restwandstarke, restwanddicke, noch ubrig, reduced, reducing, thinner after, thinned out, after forming, reduction of thickness, thickness reduction, perte, perdita, perdida, wandreduktion, afname, diminution, disminucion, diminuzione, wall loss, walls out,
    remaining, remain, remains, verbleibt, verbleibende, bleibt, ubrig, bleiben, reste, restante,
    resta, restera, queda, quedara, rimane, rimarra, rimanente, blijft, blijft over, over na, afterwards,
    end up with, after bending, after the bend, nach dem biegen, apres cintrage, despues de doblar,
    despues de curvar, dopo la curvatura, na het buigen, finish up, finished wall, lose, loses, loss,
    lost, perd, pierde, perde, verliest, verliere, verlies, verlieren, reduction, reduce, abnahme,
    shrink, reduces
outside: outer, extrados, aussen, aussenseite, aussenbogen, exterieur, exterior, fuera, esterno, esterna,
    estradosso, buiten, buitenkant, buitenzijde, buitenbocht, back of the bend, outside radius, back wall,
    heel, outer radius, external, por fuera, rucken
inside: inner, intrados, innen, innenseite, innenbogen, interieur, interior, dentro, interno, interna,
    intradosso, binnen, binnenkant, binnenzijde, binnenbocht, throat, internally, bore side, dedans,
    all interno, inside radius, drinnen, internal, belly, intern
middle: center, centre, mitte, rohrmitte, milieu, axe, eje, centro, mezzo, asse, midden, hart, center of,
    hartlijn, mittellinie, centerline, centreline, center line, neutral fibre, fibre neutre, neutral axis,
    neutrale faser, fibra neutra, mezzeria, neutral line, neutral
radius: radii, radiuses, radien, rayon, rayons, radio, radios, raggio, raggi, straal, stralen, clr,
    centerline radius, centreline radius, biegeradius, biegeradien, buigstraal, buigradius, rad, krappe
smallest: thinnest wall, lower limit, mindeste, geringste, geringster, niedrigste, hasta que, fino a che, jusqu a quel, bis zu welcher, bis zu welchem, tot welke, least wall, allerkleinste, kleinstem, en el minimo, minimale straal,
    most compact, compact, least radius, snuggest, smallest possible, no smaller than, absolute minimum, how far down, as far down,
    minimum, min, mindest, minimal, minimale, minimaler, minimalen, minimum radius, minimo, minima,
    minimi, tightest, sharpest, closest, kleinste, kleinster, kleinsten, kleinstmoglich, kleinstmogliche,
    engste, engsten, plus petit, plus serre, le plus petit, mas pequeno, mas cerrado, menor, piu piccolo,
    piu stretto, piu stretta, krapste, least, shortest, lowest, as small as, as tight as, mini, mindestens,
    kurzeste, plus court, mas corto, piu corto, kortste, smallest possible, thinnest, lightest, dunnste,
    dunnsten, plus mince, plus fine, mas fino, mas delgada, mas delgado, piu sottile, dunnst, skinniest,
    limits, limit, grenze, limite, limites, limiti, grens, cut off, cutoff, as low as, how low
tight: tightly, sharp, eng, enge, enger, serre, serree, cerrado, cerrada, stretto, stretta, krap, krappe,
    small, kleine, kleiner, klein, petit, pequeno, piccolo, tighter, smaller, scharf, serrer
mandrel: mandrell, mandrels, mandral, mandrils, mandrin, mandrins, mandril, mandriles, mandrino, mandrini,
    dorn, dorne, dorns, biegedorn, biegedorns, doorn, doornen, doorns, anima, anime, manderl, mandrle,
    mandrill, your tool, plug inside, rohrbiegedorn
ball: segmented, number of balls, balls off,
    chain of rings, articulated, articulee, articulado, articolato, articolata, flexible mandrel, gelenkdorn, kettendorn, linked mandrel, link mandrel, flexible, flexibel, gelenkig, kugelkette, scharnier, geleed, snodato, snodata, beads,
    multi ball, single ball, beads on the mandrel,
    balls, kugel, kugeln, bille, billes, bola, bolas, esfera, esferas, sfera, sfere, kogel, kogels,
    glieder, glied, segment, segments, link, links, rotule, rotules, palla, palle, gliedern, kogeltjes,
    linked, multiball, knuckle, knuckles, ballen
wiper: wipper, wiper blade, faltenglatters, wipers die, abstreifer, glattschuh, gratteur,
    wipers, wiper die, wiper dies, faltenglatter, faltenglätter, anti plis, antipli, antiplis,
    lame anti plis, antigrinza, antiarrugas, anti arrugas, plooienstrijker, plooistrijker, wischer,
    tassello antigrinza, wipe die, wiperdie, lisseur, alisador, gladstrijker, raschiatore, wiping die,
    faltenglattung, racleur, wiper shoe
pressure die: follower bars, following die, nachlaufschiene, mitlaufschiene, reglettes, contre forme, drukbalk, druckbacke, guide bar, back shoe, guia,
    pressure dies, druckschiene, druckstuck, gleitschiene, reglette, porte outil de pression,
    dado de presion, mordaza de presion, matrice di pressione, slitta di pressione, drukschoen,
    follower, follower bar, follow bar, pressure bar, drukstuk, coulisse, slitta, contromatrice, pusher die,
    drukblok, contre matrice, corredera, regua, presse schiene, pressure tool, pressure slide
clamp: bite on, bite, clamp to bite, hold of,
    clamps, clamping, klemm, spann, klemmung, einspann, einspannen, einspannung, serrage, mordaza, morsa,
    morse, mors, klem, klemmen, spannbacke, klemmbacke, spannbacken, grip, grab, grip length, gripping,
    amarre, klemlengte, klemmlange, bloccaggio, spannlange, hold on to, inspannen, einspannlange
straight: length do i have to leave, leave on the end, how close may they be, close may they, abstand mussen, far apart,
    gerade, gerades, geraden, droit, droite, recto, recta, rectos, tramo, dritto, rettilineo,
    tratto, recht, rechte, flat length, leg, legs, schenkel, tail, tails, jambe, pata, lato, been, lead in,
    stub, straight bit, straight length, geradenlange, apart, abstand, distance, distancia, distanza,
    afstand, straights, spacing, room, tangent length
between: close together, two bogen, zwei bogen, zwei boegen, deux cintres, dos curvas, due curve, twee bochten, two 90s, two bends,
    zwischen, entre, tra, tussen, next to each other, back to back, in a row, compound, after another,
    one after, nebeneinander, hintereinander, follow, from one bend, second bend, next bend, consecutive
wrinkle: little ridges, ridges appear, ridges on the inside, ridges, rimpelen, crinkle every,
    corrugated roof, wirft wellen, wirft es wellen, wellblechartig, rippen, fait des vagues, bourrelets interieurs, arrugan, si raggrinza, raggrinzito, raggrinzisce, crespe, rimpeling, ribbel, geribbelde, plooivorming, gewellt,
    accordion like, rumpled, ruffled, runzeln, runzelig, geknittert, welle, rides, rugosites, rugoso, ondulato, ondulado, ondeado, golven, golvend, geribbeld, gerimpeld, plooit, rimpelt, frunce, fruncido, corrugates, ribbed, ribbing, wave,
    wrinkles, wrinkled, wrinkling, wrinkly, falte, falten, faltig, faltenbildung, wellen, wellig, plis,
    pli, plisse, ondule, ondulations, vagues, arruga, arrugas, arrugado, ondas, grinza, grinze, pieghe,
    onde, plooi, plooien, rimpel, rimpels, ripple, ripples, rippling, rippled, waves, wavy, buckle, buckles,
    buckling, crinkle, crinkles, crinkled, pucker, puckers, puckering, washboard, corrugation,
    corrugations, corrugated, accordion, ridges inside, gathers, bunches, bunching, concertina, stauchfalten,
    wellblech, se arruga, se pliega, faltet, knitter, golfjes, crease, creases, creasing, bumpy inside,
    wrinkel, wrinkels, fronces, fluting, ruffles, rippels, ribbels, ondulazioni, ribs, ondulaciones
kink: chafe, squashed beer can, beer can, chafa, se chafa, flachgedruckt,
    in on itself, drinking straw, straw, lauft zusammen, dichtfallen, klappt zusammen, klappt ein, einbeult, beult ein, schacciato, s affaissent, aplastan, aplastados, piegano, si piega su se stesso, dichtgeknepen, knickt ein, knick ein, flattening out, flat spots, flat on the, flatter, collapsed, goes in, eingefallene, eingeknickte,
    loses its shape, loses its round shape, lose its shape, goes out of shape, mushed, mashed, kinky, buckled flat, hourglass, se ecrase, affaisse, s affaisse, abgeflacht, abflacht, hundido, se hunde, cede, cedendo, ingezakt, deuk, deuken, smashed, folded, folded over, caved in, dellt, delle, eingedellt, eingedruckt, se aplana, aplana, s ecrase, ammaccato, knickstelle,
    kinks, kinked, kinking, kinky, knickt, knicken, geknickt, einknicken, knick, eingeknickt, knikt, knik,
    knikken, flatten, flattens, flattened, flattening, goes flat, going flat, go flat, went flat, come flat,
    flat, flach, platt, plat, ecrase, ecrasement, s aplatit, aplatit, aplati, aplatissement, plie, pince,
    aplasta, aplastado, aplastamiento, chafa, se dobla, schiaccia, schiacciato, schiacciamento, schiacciata,
    appiattisce, appiattito, ammacca, collapse, collapses, collapsed, collapsing, collassa, cave in,
    caves in, caved, caving, crush, crushes, crushed, squash, squashed, squashes, squashing, fold over, folds,
    folding, fold, fallt ein, zusammen, fallt zusammen, einfallt, eingefallen, squished, squish, dent, dents,
    dented, flatspot, crumple, crumples, crumpled, pinch, pinches, pinched, pinching, implode, plattgedruckt,
    ingedeukt, platgedrukt, sucks in, sink in, sinks in, inzakken, zakt in, colapsa, pancake, pancakes
crack: snapped, fractures, fractured, fracturing,
    se parte, partirse, parta, tears out, back side tears, reisst ein, eingerissen, reissen ein, einreissen, anreissen, anriss, haarrisse, haarriss, fissurations, microfissures, hairline, gives way,
    cracks, cracked, cracking, split, splits, splitting, reisst, reissen, riss, risse, gerissen,
    aufreissen, aufreisst, fissure, fissures, fissurer, fend, se fend, craque, agrieta, grieta, grietas,
    raja, rajar, crepa, crepe, scheurt, scheuren, scheur, tear, tears, tearing, tore, torn, rip, rips,
    ripped, rupture, ruptures, fracture, fractures, barst, barsten, bersten, platzt, platzen, burst,
    bursts, bursting, cricca, cricche, spacca, spaccare, ripping, let go, lets go, letting go,
    eclate, dechire, fissurent, agrietan, crepano, rissig
break: lost two balls, lost a ball, lost one ball, balls off the, keeps losing, perdu une bille, casse toujours, immer an derselben stelle,
    reissen mir, reissen immer, abgerissen, reisst ab, snapping off, torn, torn cable, cable torn, torn link, abbrechen, bricht mir, arrachent, arrachees, s arrachent, se arrancan, se sueltan, se parte, parten, si staccano, si spezza, spezzano, breken af, afbreken, stuk, kapotte, detruit, destroying, destroys, lost a ball, losing balls,
    breaks, broke, broken, breaking, bricht, brechen, gebrochen, abgebrochen, casse, casser, cassent,
    cassees, rompe, rompen, rompere, rompono, roto, rotas, rotto, rotte, breekt, breken, gebroken,
    afgebroken, snap, snapped, snaps, snapping, sheared, shear, shears, came off, fell off, come off, comes off,
    broke off, breaks off, reissen ab, abreissen, kaputt, kapot, failed, fails, bust, busted, pop off,
    popped off, coming off, falls off
outround: roundness, ovalisation tolere, amount of ovality,
    quanto oval, how round, round will it, still be round, wie rund, hoe rond, combien ovale, ovalizacion, ovaliza, runder, oval ist, se ovala, ovalado, ovalada, ovalaser, ovalizza il, staat rond, rundlauf,
    out of true, flattening tolerance, ovaled, roundness tolerance, rundheit, kreisrund, oval werden, oval wird, oval gets, redondez, rotondita, rondheid, circularite, ovalise t il, forma redonda, perfect circle, squash out of round, shape of the section,
    ovality, oval, ovalness, ovalitat, unrund, unrundheit, ovalisation, ovalise, ovaliser, ovalidad,
    ovalizacion, ovalizado, ovaliza, ovalizzazione, ovalizza, ovalita, ovaliteit, onrond, onrondheid,
    out of round, out of roundness, out round, roundness, egg, egg shaped, egging, egg shape, deviation from round,
    not round, stay round, stays round, still round, remain round, remains round, rund bleibt, bleibt rund,
    rund bleiben, reste rond, redondo, resta tondo, rimane tondo, rond blijven, blijft rond, eiformig,
    elliptical, ellipse, elliptic, distortion, distort, distorts, distorted, cross section, circular,
    circularity, perfectly round, keep its round, round enough, lose its round, unrunde, oval shape, egged,
    ovalised, ovalized, ovaal, ovale, how round, as round
scratch: grabbing, grabs, grab, welds itself, weld itself, welding itself, leaving grooves, grooves, rigatura, rigature, solchi, rigata, strie, rigature interne, rieferung, schrammen, gegriffen, festfressen, festgefressen, adheres, adhere, adhesion, aluminium pickup, gripped, se raya, rayada, gratte, griffe, galla, gripea, agarra, agarrotado, beschadigingen, krast,
    scratches, scratched, scratching, scratchy, kratzer, zerkratzt, verkratzt, riefen, riefe, rayures,
    rayure, raye, rayes, raya, rayas, rayado, graffi, graffio, graffia, graffiato, rigato, righe, krassen, kras,
    bekrast, score, scores, scored, scoring, score marks, gouge, gouges, gouging, galling, gall, galls, galled,
    frisst, fressen, gefressen, fresser, grippage, grippe, gripper, gripado, gripa, grippa, grippaggio,
    vreet, vreten, vastvreten, invreten, pick up, picks up, picking up, pickup, sticks,  sticking, klebt,
    anhaftung, aufschweissung, colle, accroche, pega, se pega, incolla, attacca, kleeft, plakt, drag marks,
    drag lines, marks inside, tool marks, builds up, build up, building up, smear, smears, welds itself,
    seize, seizes, seizing, stuck, grooves inside, tram lines, tramlines, striations, streaks, arana,
    aranazos, marring, striemen, griffures, scuff, scuffs, scuffing, scoremarks, scuffed, cold weld, rayados,
    estrias, surcos, marcas, marques, macken, material transfer, loading up, krasjes, kerven
hump: bult, ausbuchtung, verdickung, buckeling, lip, protubérance, rilievo, sporgenza, resalte, rebord, richel, rand, knick nach aussen, pimples, swelled,
    raised ring, ring on the outside, raised, knob, step, hill, camel, high ring, pimple, ridge, blister, ausbeulung, ausbeult, hocker, boursouflure, abultamiento, bernoccolo, bobbels, bulging out, swollen,
    humps, bump, bumps, bulge, bulges, bulging, lump, lumps, swelling, swells, swell, buckel, beule, bosse,
    bulto, joroba, protuberancia, gobba, bozza, rigonfiamento, bult, bobbel, high spot, ridge at the end,
    renflement, bourrelet, step at the end, knubbel, erhebung, raised spot, raised area, high point, knot at the end,
    wulst, gonfiore, speed bump, verdikking, hubbel, abombamiento
springback: opening up after, further do i go, true 45, true 90, uberbiegt, let it off the die, off the die,
    after unloading, unloading, unload, becomes 88, comes down to, drops back, zugeben, geben wir zu, uberbogen, nachgeben, nachfedern, restore, ritornano, torna indietro, torna, vuelve atras, vuelve, ressort, fait ressort, teruggaat, terugspringen, springt zuruck, springt terug, springt terug, add degrees, bend over,
    opened up, springs, sprang, springy, lands on, land on, end up at, ends up at, come out at, comes out at, comes off at, unbend, unbends, loses degrees, loses a few degrees, loses, few degrees short, short of 90, more than 90 degrees, backs off, back off after, retour de, relache, s ouvre, se abre, si apre, opent zich, geht auf, offnet sich, surangle, degrees extra, degrees over, bend past, further bend, angle extra,
    spring back, springs back, sprang back, springing back, springs open, spring open, opens up,
    opens, opening up, open up, open a bit, opens a bit, relax, relaxes, relaxing, comes back, come back, overbend,
    over bend, overbending, over bending, ruckfederung, ruckfedern, zuruckfedern, zuruckfedert, federt zuruck,
    federt, uberbiegen, ubiegen, retour elastique, surcintrer, surcintrage, revient, recuperacion elastica,
    retorno elastico, recupera, retroceso, ritorno elastico, ritorna, ritorno, terugvering, terugveren,
    veert terug, terugveert, overbuigen, veert, further than, past 90, beyond 90, more than 90, undo, unwinds,
    unwind, muelle, sovrapiegare, sprung, springs, retour d elasticite, recovers, recovery, over bent, retour,
    auffedern, auffedert, gibt nach, extra degrees, compensate, how far past do i bend, spring
lubricant: bar soap, einolen, olen, einfetten, eingefettet, geolt, engraso, engrasar, engrase, lubrico, aceitar, aceito, oliare, ungere, ungo, grassa, inoliede, insmeren, smeren we, lubrifie, graisse t on, huiler, huile de, greasy, wet the, lubricating oil, schmierfett, kettenol, schmierol, neatsfoot, emulsion, neat oil,
    cutting fluid, drawing oil, bending oil, bending fluid, chain oil, engine oil, motor oil, motorol, ziehfett, biegefett, rapsol, huile de coupe, aceite de corte, olio da taglio, snijolie, cooking oil, ptfe, silicone, atf, gearbox oil, hydraulic oil, lanolin, bar of soap, washing up liquid, lubricated,
    lube, lubes, lubing, lubricants, lubricate, lubricated, lubricating, lubrication, lubricacion,
    lubrica, oil, oils, oiled, oiling, ol, oel, huile, aceite, olio, olie, grease, greased, greasing, fett, fetten,
    graisse, graisser, grasa, grasso, ingrassare, vet, invetten, schmiermittel, schmierstoff, schmieren, schmiere,
    schmierung, geschmiert, lubrifiant, lubrifier, lubrification, lubricante, lubricar, lubrificante, lubrificare,
    lubrificazione, smeermiddel, smeren, smeer, gesmeerd, smering, soap, soapy, wax, paste, seife, savon, jabon,
    sapone, zeep, wd, wd40, tallow, coolant, slippery, slippy, drawing compound, dish soap, gel, squirt, spray,
    lard, vaseline, graphite, moly, schmiert, lubricado, biegeol, ziehol, smeert, lubed, biegefett
life: done for, mileage, mandrels a year, per year, a year does, hay que cambiar, worn beyond, how do i know when, cuantas curvas hay, ausgetauscht, austauschen, ersetzen, changer le mandrin, sostituire il, vervang ik, vervangen worden,
    gives up, give out, gives out, verschlissen, abgenutzt, verschleiss, abnutzung, hinuber, use up, gastado, gasta, gastan, consumato, consuma, consumano, versleten, afgeschreven, use s, s use, service intervals, how many feet, before you bin it, end of its life, end of life, hors d usage, per mandrel,
    normally last, hold out, good for, before it is scrap, before its scrap, give up,  knackered, service interval, many pieces, useful life, rebuild interval, lasted, lasts us, durability, halt er, halt so, halt ein, gaat een, gaan ze,
    lifespan, life span, service life, wear out, wears out, wear, wears, worn, worn out, wearing, lebensdauer,
    standzeit, haltbarkeit, verschleiss, verschleisst, duree de vie, usure, use t il, vida util, dura, duran,
    desgasta, desgaste, aguanta, durata, durare, durano, vita utile, usura, regge, levensduur, slijtage,
    slijt, gaat mee, meegaan, last, lasts, lasting, halt, halten, haltbar, longevity, durable, durability,
    expectancy, hold up, holds up, survive, how many bends, how many parts, how many cycles, how many pieces,
    how many hits, tient, tiennent, good for how, endure, replaced, replacing, replacement, durability,
    used up,  bogen halt, expire, lifetime, tool life, standtijd, wie viele bogen, wieviele bogen,
    combien de cintrages, cuantas curvas, cuantos dobleces, quante curve, hoeveel bochten, wear rate,
    going to last, duree, cuantos tubos, combien de coudes, combien de pieces, mee
price: rough idea of cost, idea of cost, idea of price, kame, was kame, kommt mich, a cuanto sale, cuanto sale, quanto vengono, prijskaartje, what kind of outlay, outlay,
    how much is mandrel, how much is a mandrel, how much for a, how much for one, how much for the mandrel, how much for mandrel, how much would a mandrel, how much is one, how much would one, how much are they, how much are these, how much do you charge, do you charge, how much does it cost, how much does one, how much do they, how much each, how much will it be, how much would it be, how much would that be, how much is it, how much would it, going rate, how much do you want, how much to make, how much to build, charge for a, charge for the, ce coute combien, c est combien, ca coute combien, quanto viene, cuanto vale, cuanto cuesta, que vale, what would i pay, what do i pay, what will it cost, precio de, a cuanto, a quanto, rough cost, ball park, ball park figure, price tag, was verlangen, was nehmen sie, rate card, investment, price wise, cost wise, costs me, cost me,
    prices, pricing, priced, cost, costs, costing, preis, preise, preislich, kosten, kostet, koste, prix, cout,
    coute, couter, tarif, precio, precios, cuesta, costaria, sale por, cuanto sale, vale, prezzo, prezzi, costa,
    costo, costerebbe, viene, prijs, prijzen, kost, ballpark, how much money, what sort of money,
    much money, dollars, bucks, euros, damage, set me back, set us back, run me, run us,
    how   pricey,  afford, budget, paying, pay for a, pay for one,    
    spend,
    combien ca, figure on paying, looking at for, rough idea of price, rough number, preisrahmen,
    preisvorstellung, kostenpunkt, prijsindicatie, indication de prix, richtprijs, richtpreis
leadtime: musste ich warten, muss ich warten, turn one around, turn it around, turn that around, wie lange musste ich, warten, how quick can u, how quick can you, how fast can you, attendre, esperar, aspettare, wachten,
    when can you have, when can you deliver, when can you ship, when could you ship, when could you deliver, when would it be ready, when will it be ready, when would it be done, when can i have it, when could i have it, when could i have one, when can i get, when would i get, when would i have, wann konnen sie, wann ist er, wann ist der, wann ware, wann bekomme, wann kann ich, quand pouvez vous, quand est ce que, cuando pueden, cuando podrian, cuando estaria, quando potete, quando sarebbe, wanneer kunt u, wanneer kunnen jullie, wanneer kan, on my bench, at my door, out the door, how many weeks out,  lead times, time to make, time frame, timeframe, time scale, timescale, timeline,   how long must i  how long would i  how long do i  how long do we  when can we expect, when should i expect, when can i expect, eta, bis  ab wann lieferbar, in welcher zeit, vorlaufzeit, lieferfrist, pour  dans quel delai, sous combien, en cuanto tiempo, para  in quanto tempo, entro  per  termijn, binnen welke, hoeveel  quante  cuantas  combien de  wie viele  shipping out,    have it here, get it here, how quickly, 
    lead time, lead times, leadtimes, turnaround, turn around, turnround, delivery, deliver, delivered,
    delivery time, lieferzeit, lieferzeiten, liefern, lieferung, lieferbar, liefertermin, delai, delais, livrer,
    livrez, livraison, plazo, plazos, entrega, entregar, entregan, tardan, tarda, tardaria, consegna, consegnare,
    consegnate, tempi di consegna,  levertijd, leveren, levering, geleverd, how soon, how quick, how quickly,
    how fast, ship,      
     how many  how many days,  backlog,      weeks out,
    days out, in my hands, on my bench,     pronto,  dispatch, despatch, 
       get here, by friday, how long to make, how long to get, how long does it take,
    how long would it take, how long will it take, how long do you take, how long until, how long till, how long before i,
    wie schnell, hoe snel, dauert, duurt, combien de temps pour, how long is the  booked out, fastest,
          how long from order
thread: thread size, gewindegrosse, filet, screwed on, screws in, connection thread, female thread, male thread, hole in the back, back end, shank, internal thread, innengewinde,
    threads, threaded, gewinde, filetage, filete, rosca, roscas, roscado, filetto, filettatura, filettato,
    draad, schroefdraad, screw, screws, screw on, screwed, unc, unf, npt, m16, m20, m24, vis, tapped, aufschrauben,
    schraubt, visser, enroscar, avvitare, schroeven, pitch
rod: mandrel bar, pull bar, stay rod,
    rods, stange, dornstange, zugstange, tige, tirant, barra, varilla, asta, stang, doornstang, trekstang, mandrel rod,
    draw bar, drawbar, pull rod, vastago, puller rod, stanga, tirante, mandrelrod
fit: compatible with, are your mandrels compatible, passt auf, attaches to,
    vale para, vale en, go on my, will it go on, passend, geeignet fur meine, auf meine maschine, sur ma machine, en mi maquina, sulla mia macchina, op mijn machine, para cualquier, per qualsiasi, pour toutes, fur alle maschinen, fit all, universal fit, hook onto, thread onto,
    go on a, go on my, go onto, slot in, mate with, mate up, suit a, suit our, work in a, work in our, fits on, montar, montare, monter, se monte, monteren, aanpassen, adaptan, adatta, coupled, accommodate,
    fits, fitting, passt, passen, compatible, kompatibel, compatibel, compatibile, convient, sirve para, va bene,
    past, adapte, adapt, attach, attached, attaches, connect, connects, connection, anschluss, raccord, attacco,
    aansluiting, conexion, mount, mounts, mounted, fixation, marry up, match, matches, goes on, go onto,
    hook up, interface, work with, work on, works with, works on, befestigt, fixe, se fixe, fissa, se fija, adaptor,
    adapter, montiert, zit vast, bevestigd, encaja, monta, suit my, work in my, use with, use it on, run on
position: supposed to stop, supposed to be, where to stop, starting point, tiene que entrar, entrar, entra, reinschieben, reinsteht, hineinragen, ragt, how far in, stop short,
    line up, lines up, lined up, einstelle, richtig ein, eingestellt, justiert, stick out, sticks out, sticking out, steht er, steht der, adelanto, adelantado, regolo, regolato, uitstekt, instel, stel ik, hoe ver, vooruit, weiter vor, weiter nach vorne, zuruck, zurucksetzen, en avant, depasse t il, hacia adelante,
    stand, stands, in front of, behind, come to rest, where on, poke out, poking out, poke, project, projects, stand proud, how proud, ahead of, back from, voor de, achter, gesetzt, gestellt, placer, mettre, situarse, colocarse, quedar, metto, mettere, posiziono, plaats, plaatsen, positionieren, justieren, adjusting, adjusted, adjust the mandrel, hinter, davor, avant la, apres la, oltre, mas alla, au dela,
    positions, positioned, positioning, placement, dornstellung, stellung, positionner, posicion, posizione,
    posizionare, positie, setting, settings, set, set up, setup, setting up, einstellen, einstellung, eingestellt, stelle,
    stellen, regler, reglage, regle, ajustar, ajuste, ajusto, colocar, coloco, pongo, regolare, regolazione,
    instellen, afstellen, zetten, forward, advance, advanced, avance, avancer, adelanta, adelantar, avanzare, avanzato,
    vorziehen, vor, vorstehen, hinausstehen, depasser, depasse, sobresalir, sporgere, sporge, uitsteken, stick out,
    protrude, ahead, beyond, past, sit, sits, locate, located, location, back off, too far, insert depth, depth, tiefe,
    profondeur, profundidad, profondita, diepte, overshoot, extend, extends, extension, forwards, advancement, timing,
    vorlauf, vorstand, uberstand, place, placed, stand, push, reach, voorbij, steht, staan, steken, stick, wohin, adelantado
tangent: tangente, tangentenpunkt, tangency, tangent point, tangent line, tangents, punto tangente, punto di tangenza,
    raakpunt, raaklijn, tangentialpunkt, bend line, start of the bend, point of bend, tangencia, tangenza, pot
clearance: few thou smaller, thou smaller, thousandths smaller, kleiner dan, kleiner als, kleiner als die, mas pequeno que, plus petit que, piu piccolo di, piu piccolo del, hoeveel kleiner, wie viel kleiner, smaller than the tube, slide in, slides in,
    play between, how loose, luft zwischen, spiel zwischen, wie viel luft, hoeveel ruimte, ruimte, how tight a fit, close fit,
    undercut, freedom, slack, luftspalt, wiggle room, tolerance between, allowance, air,
    clearances, gap, gaps, play, spiel, dornspiel, luft, jeu, holgura, juego, gioco, speling, loose, loosely, loosen,
    sloppy, slop, snug, slip fit, undersize, undersized, under size, smaller than the bore, smaller than the id,
    thou under, thousandths under, under the id, under the bore, smaller than, toleranz zum, spielraum, tight fit, speelruimte
size: ausserer durchmesser, durchmesser bekommt, dorn durchmesser, across, breit, dick ist der dorn,
    diameter, diameters, od, durchmesser, dornmass, diametre, diametro, diam, dia, dimension, dimensions, massen, mass,
    maat, grosse, medida, misura, taille, how big, how large, wie gross, hoe groot, quel diametre, aussendurchmesser,
    diameter in, dorndurchmesser, sizes, sizing, sized, measure across
bore: bores, id, innendurchmesser, bohrung, inside diameter, inner diameter, alesage, diametre interieur, diametro interior,
    diametro interno, binnendiameter, inside dia
measure: inner edge, how many places, verniers, prendo la misura,
    mic a, miked, measure up, se mide, misurato, mesure t on, gemeten, gemessen wird, how is it measured, wo wird gemessen, how s that done, how is that done, getting the radius, get its radius, want its radius, ausmisst, nachmesse, mesure au, prendo le misure, uitmeten, ultrasonic,
    getting at, get at, reading, readings, measuring up, size up, abmessen, ausmessen, aufmessen, opmeten, nameten, relever, verificar, rilevare, get a figure, take off, come up with, comes out, tell from,
    measured, measuring, measurement, measures, messen, misst, messe, gemessen, nachmessen, mesurer, mesure, mesurez,
    medir, mido, mide, medirlo, misurare, misuro, misura il, meten, meet, gemeten, calipers, caliper, micrometer,
    schieblehre, messschieber, pied a coulisse, calibro, calibre pie de rey, pie de rey, schuifmaat, vernier, verniers,
    tape measure, gauge it, mic, mics, mike, determine, find out, work out, figure out,   ermitteln, bestimmen,
    feststellen, determiner, determinar, determinare, bepalen, establish, template, get the radius, reverse engineer,
    taken, take it,  tell what, prufen, verify, accurate, accurately, genau messen, nehmen mass, trace, herausfinden
calculate: by which i can get, get from, work back, rechnen, errechnet, errechnen, calculated, uitrekenen, turn a, conversion, umrechnen,
    calculated, calculation, calculates, compute, computed, berechnen, berechnet, berechnung, rechnet, ausrechnen,
    calcule, calculer, calcul, calcula, calcular, calculan, calcolare, calcola, calcolo, berekenen, bereken, berekend, formula,
    formule, formel, sum, sums, arithmetic, math, maths, work out, worked out, works out, work it out, figure, figured, figure it,
    arrive at, derive, get to, come up with, got to, equation, comes from, ratio, verhaltnis, rapport, relacion, rapporto,
    verhouding, divide, divided, turn into, convert, get that number, how do you get, determine, decide, determined
inch: inches, zoll, pouce, pouces, pulgada, pulgadas, pollice, pollici, imperial, duim, decimal, decimals, thousandths, thou
metric: mm, millimetre, millimetres, millimeter, millimeters, milimetros, milimetro, millimetri, millimetro, metrisch, metrico,
    metrique, centimetres, metrische, metrica, metricas, si units
pipe: pipes, piping, gasrohr, tuberia, caneria, tubazione, pijp, pijpen, leitungsrohr, steam pipe, water pipe, waterpijp
nominal: 2 inch pipe, real diameter, true diameter, true size, echtem durchmesser, wirklicher durchmesser, diametre reel, diametro real, diametro reale, werkelijke diameter, norminal, sch 10, sch 5, sch 80, iron pipe size, ips,
    nps, nb, dn, nenn, nennweite, nennmass, nominale, nominell, nominaal, schedule, sch, sch40, sched, sch80, gas pipe size,
    named size, trade size
thinwall: thin wall, thin walled
same size: same diameter
square: 1 5 square, tubi rettangolari, tubi quadri, only round, round tube you do,
    50x30, 40x40, 60x40, 2x2, in square, kantrohr, quadratische, rectangulares, rectangular hollow, tubolare quadro, tubolare, cuadrados,
    rect, rectangular tube, quadratic, flachoval, carree, oblong, retangular, 4 sided, rhs tube, sections, vierkantprofil, cuadrada, rechteckprofil, tube rect,
    squares, vierkant, vierkantrohr, vierkantrohre, vierkante, vierkantige, carre, carres, carree, cuadrado, cuadrados, quadro,
    quadrato, quadri, rectangular, rectangle, rectangles, rechteck, rechteckig, rechteckrohr, rechteckrohre, rechteckige,
    rectangulaire, rectangulaires, rettangolare, rettangolari, rechthoekig, rechthoekige, koker, kokers, kokerprofiel, box section,
    box tube, boxtube, shs, rhs, hohlprofil, profilrohr, quadratrohr, quadratisch, box tubing, hollow section, four sided, scatolato,
    oval tube, flat oval, d shaped, non round, profile tube, squared, boxed
titanium: ti tube, ti tubing, grade 9, grade 2 ti, gr2, gr9, cp2, ti 3al, 3al 2 5v,
    ti exhaust, ti exhausts, titanium alloy, titanrohr, titanrohre, grade 2 ti, titane t40,
    titan, titane, titanio, ti, cp ti, ti64, grade 2, grade 5, grade 9, grade two, grade nine, 3al, 6al, titaan
aluminium: aluminum, alu, alluminio, aluminio, ally, alloy tube, alum, alumin
temper: something softer, softer, weicheren, softer temper, plus mou, mas blando, piu morbido, zachter,
    condition, t4 condition, soft condition, annealed condition, estado t6, zustand t6,
    tempers, zustand, etat, temple, stato, hartegrad, t0, o condition, hardness state, tempra, annealed state, weich, hart
anneal: weichgluhen, auszugluhen,
    softening, durchgluhen, weicher machen, heat it first, soften it, warm behandeln,
    annealed, annealing, gegluht, gluhen, gluht, weichgluhen, recuire, recuit, recocer, recocido, ricuocere, ricotto,
    ricottura, gloeien, gegloeid, uitgloeien, heat treat, heat treated, heat treatment, normalise, normalize, normalized,
    normalised, normalising, soften, softened, softening, warmebehandeln, stress relieve, soft first, ausgluhen, ductile,
    ausgluhen, normalgegluht, weich machen, weichgegluht, preheat
stretch: dehnungswert, stretchy, how far it stretches, outer fibre,
    stretches, stretched, stretching, elongation, elongations, elongate, elongated, elongates, dehnung, bruchdehnung,
    dehnt, gedehnt, gestreckt, allongement, allonge, etire, etirement, alargamiento, elongacion, estira, estiramiento, alarga,
    allungamento, allunga, rek, rekt, strain, strained, ductile, ductility, uitrekken, verlenging, streckung, rekken
bronze: al bronze, alubronze, aluminiumbronze, bronzen dorn, aluminum bronze, alum bronze, bronze d aluminium, bronce de aluminio, bronzo di alluminio,
    bronce, bronzo, brons, ampco, bronzen, bronzedorn, aluminium bronze, alu bronze, aluminum bronze, alubronze
chrome: chromed, chrom, cromo, chroom, verchromt, hartverchromt, cromado, cromato, verchroomd, chrome plated, hard chrome,
    hardened steel, tool steel, chromiert, chrom plated, chromium, plated, coated, coating, beschichtet, beschichtung,
    revetement, recubrimiento, rivestimento, coatings, hardchrome
material: made out of, makeup, what are they made of, stahl oder, acier ou, acero o, acciaio o, staal of,
    materials, made of, made from, made out of, make them from, make it from, werkstoff, werkstoffe, matiere, matiere de,
    materiale, materiau, materiel, materiaal, metal, metals, stuff, aus was, surface, oberflache, surface finish, en quoi,
    de que esta hecho, di cosa, fatto di, fatti di, gemaakt van, waarvan gemaakt, hechos, make the mandrel of, make your mandrels of,
    metall, metaal, matériau, grade of steel, alloy is
type: types, kind, kinds, sort, sorts, style, styles, arten, art, typ, typen, sorten, sorte, tipo, tipos, tipi, types de, soort,
    soorten, version, versions, variants, variety, varieties, range of mandrels, modeles, modelos, modelli, design, designs,
    construction, bauart, bauarten, ausfuhrung, uitvoering, uitvoeringen
plug: rigid mandrel, rigid one, non flexible, starrer dorn, ungeteilter, vollmaterial, one solid, solid bar, rounded bar, plain bar, solid rod,
    plugs, plug type, solid, massiv, fester dorn, festem dorn, festdorn, fest, fester, fixe, fijo, macizo, fisso, fissa, vaste, rigid,
    starrer, starr, one piece, plain mandrel, simple mandrel, without balls, ohne kugeln, no balls, sans billes, sin bolas,
    senza sfere, zonder kogels, bullet,  stopfen, massive, rigide, plain one, solid one, stopfendorn, rigido, massief
seam: weld inside, over the weld, scarfed, scarf, orientation of the weld, die naht zeigen, naht zeigen,
    weld is, weld at the, weld faces, weld goes, weld should, schweissnaht nach, la soldadura, la saldatura, la soudure, de las, rotate the tube, raupen, nahtrohr, lasnaad, naadloze, geschweisstes, geschweissten, saldata, saldati, soldados, tubo soldado, tube soude, gelaste buis, hf welded, hf geschweisst, cordone di saldatura, cordon interior,
    seam up, weld side, welded side, longitudinal weld, schweisung, schweissnaht, langsnaht, laengsnaht, soudure longitudinale, joint, raised bead, internal bead, weld flash, burr inside, verschweisst, gesch weisst, cordon de soudure, unwelded, bourrelet de soudure, cordon interieur, welds inside, erw seam, ew,
    seams, naht, schweissnaht, nahte, schweissnahte, cordon, soudure, soudures, couture, costura, cordon de soldadura, soldadura,
    saldatura, cordone, lasnaad, las, naad, lasnaden, weld, welds, weld line, weld seam, weld bead, bead, beads, flash, inside flash,
    inside bead, schweissraupe, raupe, rups, lasrups, erw, welded, geschweisst, geschweisste, soude, soudes, soldado, saldato, gelast,
    gelaste, seamless, nahtlos, naadloos, nahtloses, sans soudure, sin costura, senza saldatura, joint line, hfi, ridge inside,
    ridge down the inside, little ridge, weldline, saldati, welded tube, weldseam, grat, innenraupe
legal: to code, bends to code, inspector asks, by fia, durch den tuv,
    nhra tech, druckgerate, druckgeraterichtlinie, in writing, permit, legit, kosher, requirements, requisitos, requisiti, exigences, eisen, anforderungen, homologa, sportgesetz, dmsb, kba, reglementaire, ce, road worthy, roadworthy, wettbewerb, autorise, autorises, autorizado, autorizzato, nach norm, regelconform,
    scrutineers, scrutinising, tech, inspected, inspectors, mot, cams, msa, msuk, dot, rated, rating, ratings, compliance, audit, specs of, sign off, signed off, stamp of approval, certs, cert, allowed in, permitted in, allowed under, sanctioning, zertifikate, prufung, prufer, bescheinigen, bescheinigung, tuv abnahme, abgenommen, passes tech, regel, regels, voorschriften, voldoet, voldoen, cumplen, cumple, cumplir, rispetta, rispettano, respecte, respectent, respecter, eingetragen, en 13480, b31, en 12952, controle technique, itv, revisione, homologuees,
    legally, erlaubt, legale, lawful, street legal, road legal, certified, certify, certifies, certificate, certificates,
    certification, certificado, certificato, certifie, zertifikat, zertifiziert, zertifizierung, zulassung, zugelassen, homologue,
    homologation, homologado, homologacion, omologato, omologazione, goedgekeurd, keuring, gecertificeerd, homologiert, comply,
    complies, compliant, compliance, conform, conforms, conforme, konform, conformes, meets, meet the, meet nhra, meet fia, pass,
    passes, approved, approval, approve, approves, accepted by, scrutineer, scrutineering, scrutineers, inspection, inspector,
    tech inspection, code, codes, norm, normen, norme, norma, normas, normativa, vorschrift, vorschriften, reglement, reglamento,
    regolamento, standard, standards, rules, rulebook, rule book, regulations, fia, nhra, sfi, scca, asme, tuv, apk, bauartgenehmigung,
    faa, ped, druckgerate, class, classification society, lloyds, dnv, iso, din, astm, api, insurance, liable, liability, guarantee,
    guaranteed, warrant, sanction, sanctioned, wabtec, mfg code, garantie, regelwerk, abnahme, pressure equipment, valt onder
cage: rolling cage, competition car, motor sport, rally, rally car, drift car, hydraulic lines, fuel lines, hydraulikleitung, kraftstoffleitung, power piping, boiler tube, boiler tubes, steam line, steam pipe, pressure vessel, heat exchanger, aerospace, engine mount, airplane, plane, racecar, rennsport, nascar, dragster,
    roll cage, rollcage, roll bar, rollbar, kafig, uberrollkafig, uberrollbugel, arceau, jaula, rolkooi, rollcages, hoop,
    chassis, aircraft, flugzeug, avion, aeronautico, vliegtuig, airframe, brake line, brake lines, bremsleitung, fuel line,
    hydraulic line, steam, dampf, vapeur, vapor, vapore, stoom, boiler, kessel, pressure pipe, pressure piping, druckleitung,
    druckleitungen, gas line, high pressure, druck, sous pression, a presion, in pressione, race car, racing, motorsport
factor: faktor, facteur, fattore, wandfaktor, wandfactor, wall ratio, wandstarkenfaktor, wanddickenfaktor, wallfactor, kennzahl
quote: in my rfq, rfqs, in the rfq, enquiries, preisanfrage, angebotsanfrage, offerteaanvraag, getting a quote, go about getting,
    price one up, price it up, price up, price it, price one, price a job, price me, get a price, make me an offer, price for you, put a price, einen preis, ein angebot, un prix, un precio, un prezzo, een prijs, quote me, to make one, make me one, build me one, build one, ask for a price, bid, estimate from you,
    quotation, quotes, offer, offers, angebot, angebots, offre, devis, oferta, presupuesto, cotizar, cotizacion, preventivo, offerta,
    offerte, enquiry, inquiry, rfq, anfrage, demande, consulta, richiesta, aanvraag, proposal, cotisation, ordering, order, bestellung,
    bestellen, commander, commande, pedir, pedido, encargar, ordinare, ordine, bestelling, quoting, chiffrer, quotare, enquire
data: medidas os, what to give, what to give you, os tengo que pasar, pasar, datos os,
    alles nennen, nennen, put in, be in my, fill in, i tell you, angeben, mitgeben, mussen wir ihnen, cotes dois je, what sizes, wat moet ik opgeven, opgeven, indicare, indicarvi, indiquer, indicarles, precisar, precisare, preciser,
    list of the particulars, list of particulars, list of what, checklist, what info, what all, which dimensions, info do you, spec sheet, pieces of information, everything you need, all you need, kenngrossen, abmessungen, cotes, cotas, quote necessarie, afmetingen, kenmerken, things do you need,
    details, detail, information, info, infos, dimensions, measurements, particulars, specs, spec, specifications, angaben, daten,
    informationen, masse, donnees, informations, renseignements, datos, informacion, medidas, dati, informazioni, misure, gegevens,
    informatie, maten, figures, numbers, parameters, facts, drawing, zeichnung, plan, plano, disegno, tekening, input, elements, indications
send: need off me, need off us, from our side, off me, from my side, from our end, from my end, let you have, vous faut il, vous faut, von uns, de nous, de nosotros, da noi, van ons, von mir, de moi, de mi, da me, van mij, you be needing, liefern mussen, aanreiken, list, put in the request, hand over, include in,
    provide, give you, tell you, include, supply you, mitteilen, schicken, senden, ubermitteln, angeben, envoyer, fournir, donner,
    transmettre, communiquer, enviar, mandar, pasar, dar, inviare, mandare, fornire, sturen, doorgeven, opsturen, aanleveren, put in,
    get together, you need from me, you need from us, need from me, need from us, need to know, want to know, ask for, wissen, savoir, saber,
    sapere, weten, require from
gauge: gage, gauges, ga, bwg, swg, calibre, awg, g wall, jauge, birmingham, gaug
apart: ship to, do you ship, can you ship it to, do you deliver, deliver to, deliver in, livrez vous, livrez vous en, liefern sie nach,
    liefern sie auch, liefern sie in, versenden sie, envian a, hacen envios, spedite, spedite anche, leveren jullie, levert u in, send it in,
    send it back, sent back, give it back, fix it for us, you fix it, bend allowance, k factor, cut length, developed length, setback, per foot,
    per metre, per meter, per pound, per kilo, per hour, per second, per minute, how heavy, take orders by, order number, order no, my order,
    our order, bend them for us, bend it for us, bend for us, bend some, bend pieces, 3d model, step file, cad model, cad file, x ray, weld titanium, weld 6061,
    weld it, weld the tube, weld after, weld on, do i weld, can i weld, can you weld, you weld, welding after, to weld, form hot, formed hot,
    hot bending, hot bend, hot forming, heat the tube, bend conduit, bend rebar, angle iron, flat bar, roll bender, ring roller, minimum order,
    stronger than, how strong, strength of, density of, weight of, melting point, colour is, spare ball, spare balls, single balls, replacement ball,
    replacement balls, bend die made, links made, die made, how hard, surface roughness, rough surface, where made, made in, come from originally,
    country of origin, quality certificate, mill certificate for, ce marking, ce mark, iso 9001, iso 14001, as9100, do you stock, have in stock, in stock,
    on the shelf, price list, price break, bulk price, quantity discount, trade discount, payment terms, pay by, pay with, credit terms, sales tax,
    phone number, call you, visit you, come by, stop by, drop in, open on, opening times, opening hours, business hours, work for you, job at,
    who owns, how old is your, years in business, how many employees, take on, trade show, thread die, thread tap, holes in, cut square, saw cut, square metre,
    square feet, square inch, square foot, safety glasses, sand fill, fill with sand, pack with sand, how do i store, store it, storage of, keep from rusting,
    powder coating, powder coat, paint it, painted, before painting, dispose of, food safe, shelf life, hold the price, price hold, valid until,
    cancel, change my order, change the order, delivery address, lost in transit, damaged in transit, arrived damaged, wrong part, wrong one, missing from
"""
