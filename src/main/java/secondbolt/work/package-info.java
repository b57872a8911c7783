/**
 * The steps of all topics and of the maker in one order, with what they wait for and where they can
 * hurt. Start at {@link secondbolt.work.WorkTopic}.
 */
package secondbolt.work;
