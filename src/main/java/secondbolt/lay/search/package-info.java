/**
 * The search for a lay: shapes without names are put on ground with bounds and flaws, so that none
 * lies on another. What a shape is, which cloth the ground stands for and what a maker is told
 * belong in {@code lay}. Everything is in millimetres; effort is counted in steps, never in
 * seconds, and the same input gives the same lay on every machine and with any number of workers.
 */
package secondbolt.lay.search;
