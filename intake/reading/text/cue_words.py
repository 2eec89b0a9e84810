"""Every word that says what size a number beside it is, in the languages that customers write.

A notation is added by adding its word to the right list: phrases are written with bars between
them, casefolded; plurals in -s are found by themselves. 'before' means that the word stands before
its number ('wall .095'), 'after' behind it ('.095 thick').
"""

from __future__ import annotations

from typing import Literal

from .centre_cues import TO_MIDDLE_OF_TUBE
from .centre_cues_abroad import OTHER_RADII, RADII_TO_CENTRE
from .roles import Role
from .side_cues import TO_INSIDE, TO_OUTSIDE

Side = Literal["before", "after", "both"]
CueWords = tuple[tuple[Role, Side, str], ...]

# What measures a tube or its bend.
SIZE_CUES: CueWords = (
    ("od", "both", """
        od | ods | tubeod | pipeod | o ds | o d | outside diameters |
        outside diameter | outside dia |
        outer diameter | outer dia | outside diam |
        outer diam | outside diametre | outside size | on the caliper | on the calipers |
        by the caliper | by calipers | tube od | buisdiameter | buismaat |
        o diameter | external diameter | external dia |
        ext dia | overall diameter | tube diameter | pipe diameter | tube dia | pipe dia |
        aussendurchmesser | außendurchmesser | aussen Ø | außen Ø | aussen durchmesser |
        rohraussendurchmesser | rohrdurchmesser | rohr Ø | rohrØ | aussen dm | aussend | ad |
        aØ | diametre exterieur | diamètre extérieur | diamètre ext | diametre ext | Ø ext |
        Ø extérieur | Ø exterieur | diam ext | Ø exterior | Ø esterno | Ø est | Ø buiten |
        Øext | diam extérieur | diámetro exterior | diametro exterior | diámetro ext |
        diam exterior | diametro esterno | diam esterno | diametro est | d esterno |
        buisdiameter | pijpdiameter | diametro tubo | diametro del tubo | diámetro tubo |
        diámetro del tubo | diamètre tube | diamètre du tube | diamètre de tube |
        buitendiameter | uitwendige diameter | uitwendig | buitenmaat | ytterdiameter |
        utvändig diameter | udvendig diameter | utvendig diameter | średnica zewnętrzna |
        srednica zewnetrzna | średnica | diâmetro externo | diametro externo | vnější průměr |
        diám ext | diám exterior | diam ext | durchm außen | durchm aussen | außendurchm |
        aussendurchm | diam buiten | diam uitw | diam est |
        külső átmérő | dış çap | dış çapı | ulkohalkaisija | halkaisija | diametru exterior |
        d ext | d est | d außen | d aussen | d buiten |
        diametru | наружный диаметр | диаметр | fi | 外径 | パイプ径 | 管外径
    """),
    ("od", "both", "outside | outer"),
    ("od", "after", """
        o dia | across the outside | across | outside measurement | extérieur | exterieur |
        exterior | esterno | aussen | außen | buiten
    """),
    ("od", "both", """
        diameter | dia | diam | diametre | diamètre | diámetro | diametro | durchmesser | dmr |
        doorsnede | doorsnee | diametern | Ø | diâmetro | diám | durchm
    """),
    ("id", "both", """
        id | i d | inside diameter | inside dia | inner diameter | inner dia | inside diam |
        internal diameter | internal dia | bore | bore size | clear bore | inside bore |
        innendurchmesser | rohrinnendurchmesser | rohrinnen Ø | innendurchm |
        rohr innendurchmesser | tubo interno | diametro interno tubo | buisbinnendiameter |
        tubo interior | tube intérieur |
        diamètre intérieur du tube | innen Ø | innen durchmesser | lichte weite | Ø int |
        Ø intérieur |
        Ø interieur | diamètre intérieur | diametre interieur | diam int | diametro interno |
        diámetro interior | diametro interior | diam interno | diám int |
        diám interior | durchm innen | diam binnen | diam inw | Ø interno | Ø interior |
        Ø binnen | binnendiameter | inwendige diameter | innerdiameter | indvendig diameter |
        średnica wewnętrzna | 内径 | hole in the tube | inside of the tube | bohrung | alésage |
        foro | lichter durchmesser | lichter weite | lichten weite | lichtweite |
        lichtem durchmesser | lichten durchmesser | de luz | di luce | luce interna |
        luce netta | dagmaat | binnenmaat | inwendig | clear inside | passage libre
    """),
    ("id", "both", "inside"),
    ("id", "after", """
        interior | inner | intern | innen | intérieur | interieur | interno | binnen
    """),
    ("wall", "both", """
        wall | walls | th | wall thickness | wall thk | wall thick | tube wall | wallthickness |
        wt | w t | wth | thickness | thk | nominal wall | wandst | wdst | wandstärke |
        mindestwandstärke | mindestwanddicke | mindestwand |
        wandstaerke | wandstarke | wanddicke | wanddick | wand | wandst | ws | wandung |
        materialstärke | dicke | rohrwand | épaisseur | epaisseur | ép | ep | paroi |
        épaisseur paroi | épaisseur de paroi | epaisseur de paroi | épais | epais | espesor |
        espes | espesor de pared | pared | esp | grosor | grueso | spessore | spess | sp |
        spessore parete | parete | wd | spessore di parete | wanddikte | wanddik | dikte |
        muurdikte | wandd | wandstärken | wandstaerken | wanddicken | wände | épaisseurs |
        epaisseurs | parois | espesores | paredes | grosores | gruesa | spessori | pareti |
        spesso | spessa | wanddiktes | wanddikten | wanden | wandje | wandjes |
        väggtjocklek | godstjocklek | gods | godstykkelse | vægtykkelse | veggtykkelse |
        grubość ścianki | grubosc scianki | ścianka | scianka | grubość | espessura | parede |
        tloušťka stěny | stěna | falvastagság | et kalınlığı | seinämä | seinämänvahvuus |
        seinämäpaksuus | perete | grosime perete | grosime | стенка | толщина стенки | толщина |
        肉厚 | 板厚 | 厚み | 厚さ | 管厚
    """),
    ("wall", "both", """
        thick | dick | dik | w | d'épaisseur | d'epaisseur | de pared | di spessore |
        d epaisseur | tykk
    """),
    ("clr", "both", """
        clr | c l r | clrs | cl | centers radius | centres radius | mittelradius | achsradius |
        bogenradius mitte | centre line radius | center line radius | centreline radius |
        centerline radius | centre-line radius | cl radius | c l | c l radius | c l rad |
        cl rad | centerline rad | centreline rad | center line rad | centre line rad |
        centreline bend radius | centerline bend radius | centre line bend radius |
        center line bend radius | centreline bending radius | mean radius | mean bend radius |
        mean bending radius | radius at the centreline | radius at centre line |
        radius at the centerline | radius at centerline | radius at the center line |
        radius at center line | neutral axis radius | radius centerline | radius centreline |
        bend center line | bend centre line | bend centerline | bend centreline |
        bending center line | bending centre line | bending centerline | bending centreline |
        ctr line radius | ctr line rad | ctr radius | ctr rad | ctr line |
        c line | bend c line | c line radius | c line rad | c line bend radius |
        radius center line | radius centre line | r at center | r at centre | r center |
        r centre | neutral radius | mittlerer biegeradius | mittlere radien | mittlerer radius |
        mittenradien | mittelradien | mittenradius |
        hartradius | middenradius | biegeradius mitte | radius mitte |
        biegeradius neutrale faser |
        biegeradius rohrmitte | radius rohrmitte | rm | biegeradius auf rohrmitte |
        rayon moyen | rayons moyens | rayon à l'axe | rayon a l'axe | rayon axe |
        rayon à la fibre neutre | rayon à la ligne neutre | rayon ligne neutre |
        rayon de cintrage moyen | rayon de cintrage à l'axe |
        rayon à l'axe neutre | rayon neutre | raggio medio | raggi medi | raggio in asse |
        raggio all'asse | raggio asse | raggio neutro | raggio di curvatura medio |
        raggio medio di curvatura | radios medios | radio medio | radio al eje | radio eje |
        radio de curvatura medio | radio medio de curvatura | eje de la curva |
        eje de la curva va a | radio medio de curvado |
        radio de curvado medio | radio a eje | radio neutro |
        hartlijnradius | hartlijnradii | hartlijnstralen |
        radius op hartlijn | radius op de hartlijn | straal op hartlijn |
        hartlijn radius | radius hartlijn | straal hartlijn | hartlijnstraal |
        hart op hart radius | middellijnradius | radius hart buis | centrumradie |
        centreradius | promień osiowy | promień w osi | promień gięcia w osi | promień w osi rury |
        promień do osi | promień gięcia do osi | średni promień | średni promień gięcia |
        promień średni | promien w osi | promien giecia w osi | raio médio | radius to the centre |
        radius to centre | radius to the center | radius to center | radius to centre line |
        radius to center line | radius to centreline | radius to centerline |
        radius to the centre line | radius to the center line | radius to the centreline |
        radius to the centerline | 中心半径 | 中心R
    """),
    ("clr", "after", """
        centre line | center line | centreline | centerline | centrelines | centerlines |
        ctr | to ctr | on ctr | centrline | centerlien | centreilne |
        on the centreline | to the centre | to the center | to centre | to center |
        to the tube centre | to the tube center | to tube centre | to tube center |
        to centre line | to center line | to the centre line | to the center line |
        to centreline | to centerline | to the centreline | to the centerline | to axis |
        to the axis | to the middle | to middle | to the middle of the tube |
        to the middle of the pipe | to mid | to the mid line | on centre | on center |
        from centre | from center | at the centre | at center | center | centre | al centro |
        a centro | au centre | sur l'axe | sull'asse | sur l'axe du tube | mittig | zur mitte |
        in het hart | middle axis | in mezzeria |
        eje | eksen | eksende | merkez | keskilinja | keskilinjalla | pe ax | na osu | na ose |
        po osi | по оси | w osi rury |
        al centro del tubo | hart buis | hart van de buis |
         mitte | rohrmitte | à l'axe | all'asse | al eje |
        à la fibre neutre | a la fibre neutre | sur la fibre neutre | à la ligne neutre |
        alla fibra neutra | sulla fibra neutra | alla linea neutra | a la fibra neutra |
        a la línea neutra | to the neutral axis | on the neutral axis | at the neutral axis |
        zur neutralen faser | in der neutralen faser | auf der neutralen faser |
        op de neutrale lijn | in de neutrale lijn | in the neutral axis | in neutral axis |
        on the neutral line | at the neutral line | in the neutral line | auf der neutralen achse |
        in der neutralen achse | zur neutralen achse | sull'asse neutro | all'asse neutro |
        in asse neutro | en el eje neutro | al eje neutro | sur l'axe neutre | à l'axe neutre |
        op de neutrale as | in de neutrale as | in the middle of the tube |
        at the middle of the tube | in der rohrmitte | au milieu du tube | nel centro del tubo |
        en el centro del tubo | in het hart van de buis | in het midden van de buis
    """),
    ("clr", "after", TO_MIDDLE_OF_TUBE),
    ("clr", "before", "cr | c radius"),
    ("clr", "both", "clbr | cbr"),
    ("clr", "both", "hartstraal | hartlijnstraal | straal hart | radius hart | buigstraal hart"),
    ("clr", "before", """
        fibre neutre | ligne neutre | fibra neutra | linea neutra | línea neutra | hart op |
        hartlijn | neutrale lijn | curva al eje | curva a eje | curva in asse | curva all'asse |
        centro curva | centro de la curva | centro della curva | cintre à l'axe |
        coude à l'axe | hartmaat | bogen mitte | bocht hart |
        mittellinie | mittelachse | rohrachse | biegeradius mittellinie | neutrale faser |
        neutrale achse | centerline | centreline | center line | centre line | centrelines |
        centerlines
    """),
    ("radius", "both", """
        biegerad | bieger | br |
        radius | radii | raduis | radious | radus | raidus | redius | radias |
        bend raduis | radiuses | rad | rads | r | bend radius | bend rad | bending radius |
        bend radii | bending radii |
        radius of bend | radius of curving | ray of bending | ray of bend | ray of the bend |
        ray of curvature | ray of curve | ray of the curve | ray of curving | bending ray |
        bend ray | curvature ray | curving ray | curve ray | the ray is | ray at the axis |
        ray on axis | ray to the axis | die radius | former radius | formers | die rad |
        tool radius |
        biegeradius | biegeradien | bogenradius | radien | rayon | rayons | rayon de cintrage |
        rayon de courbure | rayon de pliage | raggio | raggi | raggio di curvatura |
        raggio di piega | raggio curva | radio | radios | radio de curvatura | radio de curva |
        radio de doblado | radio de curvado | radio curvatura | rayon de cintre | rayon cintrage |
        raggio di piegatura | raggio curvatura | raggio piega | biegehalbmesser |
        buigradius | scheibenradius | rollenradius | plooistraal |
        plooiradius | kromtestraal | buigstraal | straal | bochtstraal | bochtradius |
        radie | bockradie | bockningsradie | bøjeradius | bøyeradius | promień |
        promień gięcia | promien | promien giecia | raio | raio de curvatura | poloměr |
        hajlítási sugár | yarıçap | yarıçapı | büküm yarıçapı | taivutussäde | säde | rază |
        rază de îndoire | raza | raza de indoire | polumer | радиус | радиус гиба | радиус гибки |
        polumjer | polmer | lenkimo spindulys | ακτίνα | 曲げ半径 | 曲げR | 曲率半径
    """),
    ("inside_r", "both", """
        intrados radius | inside radius | inner radius | inside rad | inside bend radius |
        inner bend radius | isr | radius inside | radius to the inside | rad to the inside |
        internal radius | radius on the inside | inside r | innenradius | innerer radius |
        biegeradius innen | innerer biegeradius | radius innen | ri | rayon intérieur |
        rayon interieur | rayon int | rayon de cintrage intérieur | raggio interno |
        raggio int | radio int | radio interior | radio interno | inwendige straal |
        binnenradius | binnenstraal | innerradie |
        内R | 内側R | throat radius | throat rad | throat r | radius at the throat |
        radius in the throat | radius of the throat | radius to the throat |
        radius to the bottom of the groove | radius at the bottom of the groove |
        radius in the bottom of the groove | rad to the bottom of the groove |
        bend radius to the inside | bend radius to inside | bend radius inside |
        radius to inside | radius to inside edge | radius to the inside edge |
        bend radius on the inside | bend radius at the inside | radius at the inside |
        bending radius inside | bending radius to the inside | rad to inside |
        rayon à l'intérieur | rayon à l intérieur | rayon côté intérieur |
        rayon de cintrage à l'intérieur | radio por dentro | radio al interior |
        radio de curvado interior | raggio all'interno | raggio all interno |
        raggio di curvatura interno | straal binnenkant | straal aan de binnenkant |
        radius binnenkant | radius aan de binnenkant | radius binnenzijde |
        straal binnen | bochtstraal binnen | buigstraal binnen | bochtstraal binnenkant |
        radius an der innenseite | biegeradius an der innenseite
    """),
    ("clr", "both", RADII_TO_CENTRE),
    ("radius", "both", OTHER_RADII),
    ("inside_r", "both", TO_INSIDE),
    ("outside_r", "both", TO_OUTSIDE),
    ("inside_r", "before", """
        innen am bogen | am bogen innen | innen im bogen | im bogen innen | innen in der biegung |
        à l'intérieur du coude | à l intérieur du coude | à l'intérieur de la courbe |
        all'interno della curva | all interno della curva | en el interior de la curva |
        al interior de la curva | por dentro de la curva | binnenkant bocht |
        binnenkant van de bocht | binnenkant van de boog
    """),
    ("outside_r", "before", """
        außen am bogen | am bogen außen | außen im bogen | à l'extérieur du coude |
        à l extérieur du coude | all'esterno della curva | all esterno della curva |
        en el exterior de la curva | por fuera de la curva | buitenkant bocht |
        buitenkant van de bocht
    """),
    ("inside_r", "after", """
        ir | i r | to the bottom of the groove | at the bottom of the groove | to the throat |
        at the throat | in the throat | to the groove bottom
    """),
    ("outside_r", "both", """
        bend radius to the outside | bend radius to outside | bend radius outside |
        radius to outside | radius to outside edge | radius to the outside edge |
        bend radius on the outside | bend radius at the outside | radius at the outside |
        rayon à l'extérieur | rayon à l extérieur | rayon côté extérieur | radio por fuera |
        radio al exterior | raggio all'esterno | raggio all esterno | straal buitenkant |
        straal aan de buitenkant | straal buiten | bochtstraal buiten | buigstraal buiten |
        radius an der außenseite | biegeradius an der außenseite |
        extrados radius | outside radius | outer radius | outside rad | outside bend radius |
        outer bend radius | osr | radius outside | radius to the outside | external radius |
        radius on the outside | outside r | aussenradius | außenradius | äusserer radius |
        biegeradius aussen | radius aussen | rayon extérieur | rayon exterieur | rayon ext |
        raggio esterno | radio exterior | radio externo | buitenradius | buitenstraal |
        ytterradie | 外R | 外側R | heel radius | heel rad | radius at the heel |
        radius along the heel | radius over the heel | radius at the back of the bend |
        radius at the back of the elbow | radius on the back of the bend |
        radius over the back of the bend |
        radius of the heel | radius to the heel
    """),
    ("bend_dia", "both", """
        bend diameter | bend dia | bending diameter | hoop diameter | circle diameter |
        coil diameter | mean coil diameter | biegedurchmesser | diamètre de cintrage |
        cintré au diamètre | cintrés au diamètre | cintrage au diamètre | gebogen auf durchmesser |
        auf durchmesser gebogen | curvato a diametro | curvado a diámetro | doblado a diámetro |
        gebogen op diameter |
        diametro di curvatura | ring diameter | diameter of the bend | diameter of bend |
        diameter bend | centreline diameter | centerline diameter | mean diameter |
        centre diameter | center diameter | centre dia | center dia | centreline dia |
        centerline dia | mean dia | ctr dia | c l dia | c l diameter | cl dia | cl diameter
    """),
    ("bend_dia", "both", "circle | half circle"),
    ("bend_dia", "after", """
        diameter measured to the middle of the groove | diameter to the middle of the groove |
        diameter to the centre of the groove | diameter to the center of the groove |
        diameter measured to the centre of the groove |
        diameter measured to the center of the groove | diameter at the middle of the groove |
        diameter at the centre of the groove | diameter at the center of the groove |
        diameter in the groove centre | diameter to groove centre | diameter to groove center |
        diameter at groove centre | dia to groove centre | durchmesser bis rillenmitte |
        durchmesser bis mitte rille | durchmesser auf rillenmitte | durchmesser rillenmitte |
        diamètre à mi gorge | diamètre au milieu de la gorge | diamètre au centre de la gorge |
        diametro al centro della gola | diámetro al centro de la garganta |
        diámetro al centro de la ranura | diameter tot hart groef
    """),
    ("bend_dia", "after", """
        diameter half circle | diameter half circles | diameter arc | hoop |
        diameter hoop | dia hoop | diameter circle | dia circle | diameter ring |
        diameter u bend | dia u bend
    """),
    ("centres", "both", """
        between centres | between centers | between the centres | between the centers |
        leg centres | leg centers | centre to centre | center to center | centre to center |
        ctr to ctr | ctr ctr | ctrs | between ctrs |
        centres | c c | c to c | ctc | centre distance | center distance | leg centre distance |
        between axis | between axes | between the axes | between axis of the legs |
        axis distance | between leg centres | between leg centers | leg spacing |
        mittenabstand | achsabstand | schenkelabstand | entraxe | interasse | entre ejes |
        distancia entre ejes | hart op hart | hartafstand
    """),
    ("centres", "after", "centers | centres"),
    ("times_d", "before", """
        radius ratio | radius factor | clr ratio | clr factor | r factor |
        d of bend | d ratio | bend ratio | d bend | r d ratio | clr od ratio | d factor |
        bend factor
    """),
    ("nps", "before", """
        nps | ips | nominal pipe size | nominal size | pipe size | nominal bore | nom bore |
        nominal pipe
    """),
    ("nps", "after", """
        nps | nb | ips | nominal | nominal bore | nominal pipe | inch nominal | npt pipe |
        nom bore | pipe size
    """),
    ("dn", "before", "dn | nw"),
)  # fmt: skip
