package secondbolt.app.run;

/** The memory that Java was given, in words for who has too little of it. */
public final class Memory {
    private static final long MEGABYTE = 1L << 20;

    private Memory() {}

    /** What to do where it is too little. */
    public static final String MORE = "`java -Xmx1g -jar secondbolt.jar …`";

    /** How much it is at the most. */
    public static String given() {
        return Runtime.getRuntime().maxMemory() / MEGABYTE + " MB";
    }
}
