package secondbolt.app.run;

/** The memory that Java was given, in words for who has too little of it. */
public final class Memory {
    private static final long MEGABYTE = 1L << 20;

    private Memory() {}

    /** What to do where it is too little. */
    public static final String MORE = "`java -Xmx1g -jar secondbolt.jar …`";

    /** How much it is at the most. */
    private static String given() {
        return Runtime.getRuntime().maxMemory() / MEGABYTE + " MB";
    }

    /** What is found where there is too little. */
    public static String exceeded() {
        return "more to work out than Java's memory holds (" + given() + ")";
    }

    /** What is said where there is too little for what was asked. */
    public static String tooLittle() {
        return "secondbolt: "
                + exceeded()
                + "; with more, as by "
                + MORE
                + ", it may do. Nothing of the last good notebook was lost.";
    }
}
