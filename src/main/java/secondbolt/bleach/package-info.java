/**
 * Bleaching and taking colour out: what may be done to which fibre, how, and what it ruins. Start
 * at {@link secondbolt.bleach.BleachTopic}.
 */
package secondbolt.bleach;
