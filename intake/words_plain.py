"""Everyday words that may stand around any question without changing what it asks.

Any other word that no answer knows speaks against all of them: it is likely what is asked for.
Written without accents, in small letters, by language.
"""

from __future__ import annotations

PLAIN = """
    above across actual adding again ago ahead ain alike all almost alone along already altogether
    although always am among amount and another answer any anyhow anymore anyone anything anyway
    apparently appear appears appreciate appreciated are aren arent around aside asked asking
    assume assuming at away awful back bad badly basic basically batch bear became because become
    becomes been before beforehand began begin behave behaves being believe bench benefit beside
    best better between beyond big bigger bit blame boss both bother bought bring brand bunch
    business busy but buddy came can cannot careful case certain certainly chance chances change
    check choice clear clearly close clue cold colleague come comes coming common company compared
    complete completely concern concerned condition conditions confirm confused consider considered
    considering correct correctly could couldn couple course crazy currently customer customers cut
    daily damn dare day days deal dealing decent decide decided deep definitely department depend
    depends did didn difference different difficult doable does doesn doing done dont doubt down
    drawing due during each earlier early easier easily easy edge effect either else elsewhere
    email end ended ending ends engineer enough entire entirely equal especially essentially etc
    even eventually ever every everybody everyone everything exact exactly example exist exists
    expect expected experience experienced explain extra eye face fact fail fairly fall familiar
    far fast feel feels feet fellas fellows few fewer figure figured final finally find fine finish
    finished first five follow following foot for force forced former forward found four fresh from
    front full fully funny further gave general generally get gets getting give given gives giving
    glad go goes going gone gonna good got gotta gotten great group guess guide guideline guys had
    half halfway hand hands handy happen happened happens happy hard harder hardly has hasn have
    haven having heads hear heard heavily heavy heck hell hello help her here hers herself high
    highly him himself his hold holding home hope hopefully hoping hour hours how however huge
    hundred i idea ideally idiot if immediately important in include included including indeed
    inform instead interested into involved isn issue it its itself job jobs just keep keeps kept
    kidding kind kindly knew know known knows large last late lately later latest latter lay lead
    learn learned learning learnt least leave leaves leaving left let lets letter letting like
    likely line list little live load loads long longer look looked looking looks lot lots love
    luck mad made mail main mainly maintain major make makes making man manage managed manager many
    mark mate matter matters may maybe me mean means meant mention mentioned mentions message met
    method middle might million mind mine minor minute minutes miss missing mistake mistakes moment
    monday month months more morning most mostly move moved moving much must my myself name named
    namely near nearly necessarily neither never new newbie next nice nicely night no nobody none
    nor normal normally not note nothing notice noticed now nowadays nowhere number numbers obvious
    obviously occur occurs odd odds of off often oh ok okay old older on once one ones only onto
    open operator operators opinion option or order ordinary original other others otherwise ought
    our ours ourselves out outcome over overall own page paper part particular particularly parts
    past pattern pay people per percent perfect perfectly perhaps period person personally pick
    piece pieces place places plain plan planning plans plenty plus point points poor possible
    possibly practical practice prefer present preferably pretty previous previously print probably
    problem problems process produce produced producing product production project proper properly
    proven provided purchasing purpose push put puts putting quarter question questions quick
    quickly quite raised range rather read reading ready real realise realize really reason
    reasonable recent recently reckon recommended refer regarding regular related relative
    relatively reply report request required respond response rest result results return right
    rough roughly run running runs said sales same saw say saying says second seconds see seeing
    seem seemed seems seen send sense sent serious set sets several shall she shift shop short
    shortly should shouldn show showed showing shown shows side sides similar simple simply since
    sir site situation six size skip slight slightly small so some somebody somehow someone
    something sometimes somewhat somewhere soon sorry sort sorts speak speaking special specific
    spec specs spot stage stand standard start started starting starts state stated states stay
    step still stop story straight strange straw stuck student stuff stupid subject such sudden
    suddenly supplied supplier suppose supposed sure surely surprised take taken takes taking talk
    talking task team technical tell telling tells ten tend terms test than thank thanks that thats
    the their them themselves then there theres these they thing things think thinking third this
    those though thought thousand three through throughout thus tight till time times tip to today
    together told tomorrow tonight too took top total totally towards trade trial tried tries
    trouble true truly trust try trying turn turned twice two type typical typically unclear under
    understand understanding unit unless unlike until unusual up upon us use used useful user uses
    using usual usually various version very via view wait want wanted wants was wasn watch way
    ways we week weeks weird well went were weren what whatever when whenever where whereas whether
    which while who whoever whole whose why wide will willing wise wish with within without won
    wonder wondered wondering word words work worked working works worry worse worst worth would
    wouldn write writes writing written wrong wrote yeah year years yellow yes yesterday yet you
    young your yours yourself yup yall zero handrail handrails header headers frames frame bicycle
    bike exhaust intercooler pipework railing furniture chair railings workshop fabrication
    fabricate fabricator shiny stamped ticket tag rig bumper turbo downpipe manifold custom customs
    stepped truck lorry trailer boat yacht

    aber alle allem allen aller alles allgemein als also an andere anders anderes anfang angegeben
    anfanger anschliessend arbeiten arbeitet auch auf aus ausreichend ausserdem bald bedeutet beide
    beim bekomme bekommen bekommt beispiel benutzen benutzt bereits besonders besser bestellt
    bestellung bestimmt betrieb bisher bitte bleiben bleibt brauchbar bringen bringt chef da dabei
    dadurch dafur daher damit danach daneben dann daran darauf daraus darf darin daruber das dass
    davon davor dazu dein dem den denn der deren des deshalb dessen deutlich dich die dies diese
    diesem diesen dieser dieses dir doch dort dran drauf drin durch durfen eben ebenso echt echten
    echtem egal eher eigene eigentlich einfach einige einiges einmal einzeln ende endlich
    entsprechend erhalten erkennen erklaren erst erste ersten es etwas euch euer eure falls
    fertigen fertigung festgestellt finden findet fragen funktioniert fur ganz gar geben gedacht
    gefertigt gefragt gegen gehen gehort gehoert gehts gekauft gelegt gelesen gelten gemacht
    genannt genau genug gerade gern gesagt geschrieben gesehen gewesen gibt ging glaube gleich grob
    grund gruss grusse gut gute guten haben halb hallo halten hat hatte hatten heisst heute hier
    hin hinten hoffe horen ich ihm ihn ihnen ihr ihre ihrem ihren ihrer im immer indem insgesamt
    ins ja jahr jahre jahren je jeder jedes jedoch jemand jetzt kalt kam kaum kein keine kennen
    kennt klar kollege kollegen kommen kommt konnen kriegen kriegt kunde kunden kurz lange lassen
    lauft legen lernen letzte letzten leute liebe liegen liegt machen macht mal manchmal mehr mein
    meine meinem meinen meiner meinte meist mensch mich mit mitteilen mochte mochten monat monate
    morgen muss mussten nach nachste naja namlich naturlich neben nehmen nein nennen nennt neu neue
    neuen nicht nichts nie niemand nimmt noch normalerweise notfalls nun nur ob oben oder oft
    ohnehin praktisch probleme prozent recht richtet richtig richtige richtigen sache sagen sagt
    schaffen schlecht schlimm schnell schon schreibt schreiben sehen sehr sein seine seinem seinen
    seiner seit seitdem selber selbst setzen sich sicher sie sieht sind sobald sogar solche solchen
    sollen sollte sonst soviel spater spielt sprechen spricht standig statt stehen steht stellen
    stimmt tage tagen teil teile trotz trotzdem tun tut uber uberall uberhaupt ubers ubrigens um
    und ungefahr uns unser unsere unserem unseren unserer unten unter versuch versuchen verwenden
    verwendet viel viele vielen vielleicht vom von vor vorher vorne vorhanden wahr wahrend
    wahrscheinlich wann war waren warum weil weiss weit weiter weitere welche wem wen wenig weniger
    wenigstens wenn wer werden werde wie wieder wird wirklich wissen wo wohl wollen wollte wonach
    woran wurde wurden wunsche zahlt zeigt zeit ziemlich zu zuerst zugeben zum zur zurzeit zuviel
    zwar zwei verschlissen serie serien kundin anfrage handlaufe gelander werkstatt

    afin ailleurs ainsi alors apres assez attendre attention au aucun aucune aujourd auquel aussi
    autant autour autre autres aux avant avec avez avoir avons beaucoup besoin bien bientot bon
    bonjour bonne cas ce ceci cela celle celui ces cet cette chaque chez chose choses ci client
    clients comme comment complet completement comprendre comprends connais connaitre conseil
    contre coup cours cordialement dans davantage debut dedans dehors deja depuis dernier derniere
    desole dessous dessus devant devoir devrait dire dis dit dites dois doit doivent donc donner du
    elle elles en encore ensuite entre environ essayer est et etait etant ete etes etre eu
    exactement exemple expliquer faire fais fait faites faudrait faut fin fois font genre grand
    gros habitude ici ils jamais jour jours juste la laquelle le lequel les leur leurs lors lui
    mais malgre mauvais meme merci mes mettre mieux moi moins mois mon monsieur montre moyen ne ni
    niveau non normalement nos notre nous nouveau obtenir ont ou oui par parce parfois parle parler
    parlez partie pas passer pendant penser permet personne peu peut peux plusieurs plutot pour
    pourquoi pourriez pourrait pouvoir pouvez premier prend prendre pres prevoir produit puis
    puisque quand que quelque quelques quelqu qui quoi rapport recevoir regarder remarque reponse
    rester resultat rien sa sais salut sans savoir se selon semaine sera serait ses seulement si
    simplement soient soit sommes son sont souvent suffisamment suis suite suivant sur surtout tant
    tel telle temps toujours tous tout toute toutes traiter travail travaillez travailler
    travaillons tres trop trouve trouver un une utile utiliser utilise utilisez va vais venir vers
    veux veut vient voici voir vois voit vos votre voudrais vous vrai vraiment arriere cr atelier

    acaso actualmente adelante ademas ahi ahora algo alguien algun alguna algunos alli alta alto
    ambos antes aparece aqui asi aun aunque ayuda bajo bastante buenas bueno buenos buena cada casi
    caso cierto claro cliente clientes como comprar con conseguir consulta contra correcto cosa
    cosas creo cual cualquier cuando dar de debajo debe deben deberia debo decir dejar del demas
    demasiado dentro desde despues dia dias dice dicen dicho diferente dime donde dos durante el
    ella ellos empezar encima encontrar entonces era eran eres esa esas ese eso esos esta estaba
    estado estamos estan estar este esto estos explicar exactamente falta favor fue fuera gente
    gracias gran grande haber habia hace hacemos hacen hacer hacia haga han hasta hay he hecho
    hemos hola hoy igual incluso indica indican ir jefe junto las llega llegar lo los luego lugar
    manera mas medio mejor menos mi mientras mis misma modo momento mucho muchos muy nada nadie
    ningun ninguna nosotros nuestra nuestro nuestros nueva nuevo nunca otra otro para parece parte
    pasa pasar pedir pero persona poco poder podria pone poner por porque posible practica primera
    primero problema produccion propio proximo pueda puede pueden puedo pues punto puse queda
    quedar quiere quieren quiero quisiera quizas realmente recibir respuesta resulta saber sabe
    sacar saludos sea sean segun segundo seguro seria siempre siendo sin sobre solo somos soy su
    sus tal tambien tampoco tan tanto te tener tenemos tengo tiempo tiene tienen toda todas todavia
    todo todos tomar trabajar trabajamos trabajo tras tu una unas unos usa usan usar uso usted
    ustedes vale vamos van varias varios veces ver verdad vez vosotros ya yo inoxidable revisar
    taller

    abbiamo adesso al alcuni allora altra altri altro anche ancora anzi appena aspettare avere
    avete avevo basta bene bisogno buon buona buongiorno capire capito certo che chi chiaro
    chiedere cio clienti codesto comunque conto contro cose cosi cui dal dalla davanti davvero
    della delle deve devo di dicono dobbiamo dopo dove dunque e ecco ed erano esatto esattamente
    esempio esce essere esserci ex fa facciamo faccio fai fanno fare fate fatto favore fino forse
    forza fra fuori generale gia giorno giorni giusto giusti gli grazie ha hai hanno ho il
    importante indicare insieme intendere intende io lascia lasciare lavorare lavoriamo lavoro lei
    li loro ma magari mai male meglio meno mentre mese mesi mettere mia mio molti molto nel nella
    nessun nessuno niente noi normale normalmente nostra nostre nostri nostro nulla nuovo o oggi
    ogni oltre ora ormai ottenere parlare passare perche piu poi possibile possiamo posso potete
    potrei potrebbe prego prendere prima primo produzione proprio pure puo qua quale qualche
    qualcosa qualcuno qualsiasi quando quanto quasi quella quelle quelli quello questa queste
    questi questo quindi riuscire riuscite risposta salve sapere sara sarebbe scrivere secondo sei
    sembra sempre senza sia siamo siete solito sono sopra sotto spesso sta stai stanno stare stata
    stato stesso sua subito sul suo talvolta tempo tenere ti tra troppo trovare tutta tutti tutto
    ultimo uno usare usate utilizzare vedere venire vero verso vi viene voglio vogliamo volta volte
    vorrei vorremmo vostra vostre vostri vostro officina darvele

    aan alleen altijd ander beetje ben bent bij bijna binnen blijft daar daarna dag dagen dan dat
    deze denk dicht dingen doe doen doet door dus een eens eerst eerste eigenlijk elk elkaar enige
    er erg gaan gaat gebruik gebruiken gebruikt geef geen gegeven gek geldt gemaakt genoeg geven
    geweest gewoon goed goede goedemorgen graag groot hadden heb hebben hebt heeft heel het hij hoe
    hoeft hun iemand iets ik is jaar jammer jij jouw jullie kan kant klant klanten klaar klopt
    komen komt kon krijg krijgen krijgt kun kunnen kunt laat laatste langer leest liever ligt maar
    maak maakt maken mag makkelijk meer meestal meneer mensen mij mijn minder misschien moeilijk
    moet moeten mogelijk mogen na naar nadat natuurlijk nee neem nemen net niet niets nieuw nieuwe
    niks nodig nog nooit nou nu ofwel ohne om omdat onder ons onze ook op opgeef paar precies
    probleem productie reden redelijk samen schrijft sinds slecht snel soms soort staan staat
    steeds stuk tegen tijd toch toen tot tussen twee u uit uw vanaf vandaag veel verder
    verschillende verkeerd vind voldoende volgens volgende voor vooral vraag vragen waar waarom
    waarvoor wanneer wat weer weet weken weten welke wel werk werken werkt wij wil willen wilt
    worden wordt zal ze zeer zeggen zegt zelf zelfs zeker zetten zie zien ziet zij zijn zit zo
    zoals zodat zonder zou zouden zoveel werkplaats bedoelen bedoelt bedoeld
"""
