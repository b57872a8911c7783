package secondbolt.bleach.recipe;

/** Why a treatment is not worked out. */
public enum Refusal {
    /** She has not chosen what to take. */
    UNDECIDED,
    /** Nobody knows what the cloth is made of. */
    FIBRE_UNKNOWN,
    /** A fibre of it is not named. */
    FIBRE_NOT_NAMED,
    /** A fibre of it is ruined. */
    FIBRE_RUINED,
    /** Its care label forbids it. */
    LABEL_FORBIDS,
    /** It tore when it was pulled. */
    TOO_WEAK,
    /** It would take the colour of its checks or print. */
    TAKES_PATTERN
}
