"""Words that ask for something else than any answer without them tells: to buy, to repair, to pay.

Written without accents, in small letters.
"""

from __future__ import annotations

APART = """
    sell sells selling sold verkaufen verkauft verkaufst vendez vend venden vende vendete vendono
    verkopen verkoopt seller buy buying kaufen acheter comprar comprare kopen clean cleaning
    cleaner reinigen nettoyer limpiar pulire schoonmaken polish polishing polieren polir pulir
    lucidare polijsten sharpen sharpening resharpen regrind regrinding grind grinding straighten
    straightening richten redresser enderezar raddrizzare repair repairs repaired reparieren
    reparatur reparer reparation reparar riparare repareren rebuild refurbish refurbished rechrome
    weigh weighs weight wiegt gewicht schwer pese poids lourd pesa pesan peso pesante weegt zwaar
    kilo kilos kg photo photos picture pictures foto fotos video videos brochure tensile yield
    torque tonnage electrode paint painted painting powder galvanize galvanized galvanised zinc
    warranty warranties rent rental renting hire lease leasing mieten louer alquilar noleggiare
    huren invoice invoices rechnung facture factura fattura factuur catalogue catalog katalog
    catalogo catalogus discount discounts rabatt remise descuento sconto korting cancel stornieren
    annuler cancelar annullare annuleren swage notch notching cope coping drill drilling bohren
    percer refund showroom visit besuchen visiter visitar visitare bezoeken warehouse factory
    located address adresse telephone phone telefon telefono telefoon whatsapp fax website hours
    saturday saturdays sunday weekend christmas holiday holidays offnungszeiten horaires horario
    orari openingstijden hiring job jobs apprentice apprenticeship vacancy training course courses
    schulung formation formacion formazione corso corsi cursus opleiding tax taxes vat mwst tva iva
    btw paypal card cards visa mastercard payment payments pay zahlung zahlen bezahlen paiement
    payer pago pagar pagamento pagare betalen betaling deposit credit debit bank iban net30 customs
    duty tariff zoll douane aduana dogana freight fracht porto versand versenden versandkosten
    shipping shipped ships postage courier ups fedex dhl tracking track spedizione spedite envio
    envios verzending verzenden pallet packaging packed packing verpackung emballage embalaje
    imballaggio verpakking insured incoterms incoterm exw ddp distributor distributors dealer
    dealers reseller handler revendeur distribuidor distributore rivenditore dealerschap agent
    country countries origin herkunft colour color colours colors farbe couleur colore kleur
    engrave engraved engraving logo stamp laser saw sawing sawed cutting trim deburr deburring nda
    patent patents name names owner owned employees staff founded reference references referenz
    melt melting rust rusting rostet rouille storage store stored lagern stocker shelf recycle
    recycling scrap used gebraucht gebrauchte occasion usado usados usato usati tweedehands
    tolerances tolerance toleranz tolerancia tolleranza tolerantie speed speeds rpm geschwindigkeit
    vitesse velocidad velocita snelheid feed noise voltage electric motor pump hydraulics cylinder
    cylinders psi bar bars tonne tonnes software program programming step dxf dwg cad file files
    format license licence spare spares ersatzteil ersatzteile repuesto repuestos ricambio ricambi
    reserve onderdelen onderdeel moq valid gultig valide valido geldig validity safety gloves
    goggles fume fumes toxic dangerous hazard flammable msds tig mig welder welders welding
    schweissen souder soldar saldare lassen brazing braze solder glue rivet tap taps heater torch
    flame heat heating sand sable arena sabbia zand ice cerrobend induction rolling press brake
    shear waterjet plasma fixture jig collet collets sample samples muster echantillon muestra
    muestras campione campioni monster book books guide manual youtube mill hs zipcode rfid barcode
    stickers label labels weather football lunch competitor competitors cheaper loyalty voucher
    coupon newsletter unsubscribe password login portal app account longest heaviest biggest
    strongest fatigue strength corrosion corrosive pickling passivate passivation anodize anodise
    anodized anodised plating electroplating chroming hone honing ream reaming burr burrs ends
    endforming flare flaring beading expander expand reducing reducer flange flanges fittings bolt
    bolts nut nuts washer washers bearing bearings expanding lathe drehbank tour holding holesaw
    notcher notchers flakes flake sheet largest leak leaks leaking valve valves oven model models
    render mailing bill billed zeugnis prufzeugnis abnahmeprufzeugnis werkszeugnis rates billing
    recut blunt filler fragt swaging swaged swager rents brinell rockwell hrc groove grooves wood
    plastic pvc hose rope wire wires rebar
"""
