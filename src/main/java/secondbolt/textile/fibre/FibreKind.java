package secondbolt.textile.fibre;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * A fibre by its trade name.
 *
 * <p>Source of the names: Regulation (EU) No 1007/2011, Annex I, from memory; the other names are
 * those of the US trade and of everyday speech, common practice, no source.
 */
public enum FibreKind {
    /** The seed hair. */
    COTTON("cotton", Family.PLANT, "Baumwolle", "coton", "algodón", "cotone", "katoen", "bomull"),
    /** Flax. */
    LINEN("linen", Family.PLANT, "flax", "Leinen", "Leinwand", "lin", "lino", "linnen", "linne"),
    /** The bast fibre. */
    HEMP("hemp", Family.PLANT, "Hanf", "chanvre", "cáñamo", "canapa", "hennep"),
    /** The bast fibre of a nettle. */
    RAMIE("ramie", Family.PLANT, "Ramie"),
    /** The coarse bast fibre. */
    JUTE("jute", Family.PLANT, "Jute"),
    /** Regenerated cellulose. */
    VISCOSE(
            "viscose",
            Family.REGENERATED,
            "rayon",
            "Viskose",
            "viscosa",
            "bamboo viscose",
            "bamboo",
            "cupro"),
    /** The same, stronger when wet. */
    MODAL("modal", Family.REGENERATED, "Modal"),
    /** Regenerated from a solvent. */
    LYOCELL("lyocell", Family.REGENERATED, "Lyocell"),
    /** The thread of the silkworm. */
    SILK("silk", Family.SILK, "Seide", "soie", "seda", "seta", "zijde", "silke"),
    /** Of sheep. */
    WOOL(
            "wool",
            Family.HAIR,
            "Wolle",
            "Schurwolle",
            "laine",
            "lana",
            "wol",
            "ull",
            "merino",
            "lambswool"),
    /** Of the angora goat. */
    MOHAIR("mohair", Family.HAIR, "Mohair"),
    /** Of the cashmere goat. */
    CASHMERE("cashmere", Family.HAIR, "Kaschmir", "cachemire"),
    /** Of the alpaca. */
    ALPACA("alpaca", Family.HAIR, "Alpaka"),
    /** Of the angora rabbit. */
    ANGORA("angora", Family.HAIR, "Angora"),
    /** Nylon. */
    POLYAMIDE("polyamide", Family.POLYAMIDE, "nylon", "Polyamid", "poliamida", "poliammide"),
    /** The commonest synthetic. */
    POLYESTER("polyester", Family.POLYESTER, "poliéster", "poliestere"),
    /** Cellulose acetate, and triacetate. */
    ACETATE("acetate", Family.ACETATE, "triacetate", "Acetat", "acétate"),
    /** And modacrylic. */
    ACRYLIC("acrylic", Family.ACRYLIC, "modacrylic", "Polyacryl", "acrylique", "acrílico"),
    /** Spandex. */
    ELASTANE("elastane", Family.ELASTANE, "spandex", "Elastan", "élasthanne", "elastano"),
    /** Light and waxy. */
    POLYPROPYLENE("polypropylene", Family.POLYPROPYLENE, "Polypropylen", "olefin"),
    /** What a label does not name. */
    OTHER("other fibres", Family.OTHER, "other", "other fibers", "other fibre", "metal");

    private final String word;
    private final Family family;
    private final String alsoCalled;

    FibreKind(String word, Family family, String... alsoCalled) {
        this.word = word;
        this.family = family;
        this.alsoCalled = String.join(Names.BETWEEN, alsoCalled);
    }

    /** What fibres are made of; dye, heat and bleach go by it. */
    public enum Family {
        /** Cellulose as it grows. */
        PLANT,
        /** Cellulose that was dissolved and spun. */
        REGENERATED,
        /** Wool and other hair. */
        HAIR,
        /** Silk. */
        SILK,
        /** Nylon. */
        POLYAMIDE,
        /** Polyester. */
        POLYESTER,
        /** Acetate and triacetate. */
        ACETATE,
        /** Acrylic and modacrylic. */
        ACRYLIC,
        /** Elastane. */
        ELASTANE,
        /** Polypropylene. */
        POLYPROPYLENE,
        /** Not known. */
        OTHER
    }

    /** As written. */
    public String word() {
        return word;
    }

    /** What it is made of. */
    public Family family() {
        return family;
    }

    /** Whether it is wool or other hair, or silk. */
    public boolean isProtein() {
        return family == Family.HAIR || family == Family.SILK;
    }

    /** All names it is told by, its own first. */
    List<String> names() {
        return Stream.concat(Stream.of(word), Stream.of(alsoCalled.split(Names.BETWEEN)))
                .filter(name -> !name.isEmpty())
                .toList();
    }

    boolean isCalled(String name) {
        String lower = name.strip().toLowerCase(Locale.ROOT);
        return names().stream().anyMatch(n -> n.toLowerCase(Locale.ROOT).equals(lower));
    }

    /** A constant cannot use one of its own enum that is declared after it. */
    private static final class Names {
        static final String BETWEEN = "/";

        private Names() {}
    }
}
