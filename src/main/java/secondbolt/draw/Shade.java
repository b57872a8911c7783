package secondbolt.draw;

/** How dark a filled shape is; each stays apart from the others in black and white. */
public enum Shade {
    /** Paper white, to keep a label clear of what lies under it. */
    WHITE(1.0),
    /** A light tint that takes little ink. */
    TINT(0.9),
    /** A grey that still shows lines drawn over it. */
    GREY(0.75),
    /** Full black. */
    BLACK(0.0);

    private final double lightness;

    Shade(double lightness) {
        this.lightness = lightness;
    }

    /** From 0, black, to 1, white. */
    public double lightness() {
        return lightness;
    }
}
