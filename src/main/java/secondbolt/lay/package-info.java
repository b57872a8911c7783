/**
 * Cutting plans: which piece goes where on the maker's cloths round their flaws, what stays over,
 * which design fits, and how long a cloth from the bolt would have to be. How places are found is
 * in {@code lay.search}; what the cutting lines are, in {@code cutting}; what a cloth yields, in
 * {@code cloth}. It reads and writes no files: what is kept between runs it hands to a {@link
 * secondbolt.lay.LayKeeper}.
 */
package secondbolt.lay;
