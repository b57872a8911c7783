package secondbolt.bleach.plan;

/** What takes colour or stains out of cloth. */
public enum Agent {
    /** Sodium hypochlorite, an oxidant. */
    CHLORINE("chlorine bleach"),
    /** A powder or liquid that sets peroxide free, alkaline, an oxidant. */
    OXYGEN("oxygen bleach"),
    /** As a pharmacy sells it, an oxidant. */
    PEROXIDE("hydrogen peroxide"),
    /** A reducing powder in a hot bath, for dye. */
    REMOVER("colour remover");

    private final String word;

    Agent(String word) {
        this.word = word;
    }

    /** As written. */
    public String word() {
        return word;
    }

    /** Whether it whitens; a remover takes out dye. */
    public boolean isBleach() {
        return this != REMOVER;
    }
}
